import type { Entry } from '../../greenhouse/entry.ts';
import type { Assumption } from '../../understanding/statement.ts';
import { clipped, mostQuoted } from '../spoken/clipped.ts';
import { partsPerMillion } from '../spoken/conductivity.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { volumeNames } from './names.ts';
import { valueText } from './value-text.ts';

/** What was taken for granted, in a sentence. `logged`: the entries that it was taken for. */
export function assumptionText(
  assumption: Assumption,
  logged: readonly Entry[],
  s: Speaker,
): string {
  switch (assumption.kind) {
    case 'system-from-conversation':
      return `Taken as ${s.system(assumption.system).name}, from your last message.`;
    case 'bare-volume':
      return `The amount was read in ${volumeNames[assumption.unit]}.`;
    case 'bare-conductivity':
      return `EC was read in ${assumption.unit}.`;
    case 'tds-factor':
      return factorText(assumption.factor, logged, s);
    case 'shorthand':
      return `Read in the order ${shorthandOrder(logged)}.`;
    case 'brim-volume':
      return 'No amount given, so taken as filled to the brim.';
    case 'slip-in-name':
      return `“${clipped(assumption.written, mostQuoted)}” taken as ${s.system(assumption.system).name}.`;
  }
}

/** With one EC in the message it is plain what was read; with several, only by which factor. */
function factorText(factor: number, logged: readonly Entry[], s: Speaker): string {
  const [first, second] = logged.filter(({ quantity }) => quantity === 'ec');
  if (!first || second || s.units.conductivity === 'ppm') return `ppm read with factor ${factor}.`;
  const read = s.amount(partsPerMillion(first.value, factor));
  return `${valueText('ec', first.value, s)} from ${read}, factor ${factor}.`;
}

function shorthandOrder(logged: readonly Entry[]): string {
  const hasTemperature = logged.some(({ quantity }) => quantity === 'water-temperature');
  return hasTemperature ? 'pH, EC, water temperature' : 'pH, EC';
}
