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
      return `Als ${s.system(assumption.system).name} verstanden, aus deiner letzten Nachricht.`;
    case 'bare-volume':
      return `Menge in ${volumeNames[assumption.unit]}${assumption.unit === 'L' ? 'n' : ''} gelesen.`;
    case 'bare-conductivity':
      return `EC in ${assumption.unit} gelesen.`;
    case 'tds-factor':
      return factorText(assumption.factor, logged, s);
    case 'shorthand':
      return `Gelesen in der Reihenfolge ${shorthandOrder(logged)}.`;
    case 'brim-volume':
      return 'Ohne Menge, daher als bis zum Rand gefüllt genommen.';
    case 'slip-in-name':
      return `„${clipped(assumption.written, mostQuoted)}“ als ${s.system(assumption.system).name} gelesen.`;
  }
}

/** With one EC in the message it is plain what was read; with several, only by which factor. */
function factorText(factor: number, logged: readonly Entry[], s: Speaker): string {
  const [first, second] = logged.filter(({ quantity }) => quantity === 'ec');
  if (!first || second || s.units.conductivity === 'ppm') {
    return `ppm mit Faktor ${factor} gelesen.`;
  }
  const read = s.amount(partsPerMillion(first.value, factor));
  return `${valueText('ec', first.value, s)} aus ${read}, Faktor ${factor}.`;
}

function shorthandOrder(logged: readonly Entry[]): string {
  const hasTemperature = logged.some(({ quantity }) => quantity === 'water-temperature');
  return hasTemperature ? 'pH, EC, Wassertemperatur' : 'pH, EC';
}
