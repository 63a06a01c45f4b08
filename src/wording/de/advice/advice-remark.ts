import type { AdviceRemark, Care } from '../../../assistant/replies/advice.ts';
import type { DutyLine } from '../../../planning/duty-line.ts';
import { cautionsOnce } from '../../spoken/cautions-once.ts';
import { measure } from '../../spoken/measure.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { toldDuties } from '../../spoken/told-duties.ts';
import { sinceDay } from '../day-text.ts';
import { dutyText } from '../duty-text.ts';
import { quantityNames } from '../names.ts';
import { valueText } from '../value-text.ts';
import { whyText } from '../why.ts';
import { howText } from './how-text.ts';
import { refusedDoseText } from './refused-dose.ts';

export function adviceRemark(remark: AdviceRemark, s: Speaker): string {
  switch (remark.kind) {
    case 'next-work':
      return workText(remark.lines, s);
    case 'waits-for-grower': {
      const what = remark.lines.map((line) => dutyText([line], s));
      return `${what.join('; ')}: das ist Sache der Gärtnerin oder des Gärtners und schon gemeldet. Bitte warten und selbst nichts zugeben.`;
    }
    case 'dose-refused': {
      const { system, because } = remark.refused;
      return `${s.system(system).name}: ${refusedDoseText(because, s)}`;
    }
    case 'measure-after-dose':
      return `${s.system(remark.system).name}: mischen lassen und in ${remark.fromMin} bis ${remark.toMin} Minuten ${quantityNames[remark.quantity]} neu messen.`;
    case 'probe-state':
      return probeText(remark, s);
    case 'meters-disagree': {
      const [one, other] = [remark.one, remark.other].map(
        (entry) =>
          `${entry.probe ?? 'ein Messgerät'} zeigt ${valueText(entry.quantity, entry.value, s)}`,
      );
      return `${s.capital(one ?? '')} und ${other ?? ''}, im selben Wasser: eines liegt daneben. Erst beide in frischer Referenz prüfen, dann einem trauen.`;
    }
    case 'care':
      return CARE[remark.advice];
  }
}

/** Work with its reason, its steps and its cautions, each caution once. */
export function workText(lines: readonly DutyLine[], s: Speaker): string {
  return toldDuties(cautionsOnce(lines))
    .map((told) => `${dutyText(told.lines, s)}. ${whyText(told.line, s)}${howText(told.line, s)}`)
    .join('\n');
}

export const CARE: Readonly<Record<Care, string>> = {
  'cool-the-water':
    'Warmes Wasser hält wenig Sauerstoff: Behälter beschatten, Luft länger laufen lassen, eine verschlossene Flasche Eis hineinlegen.',
  'warm-the-water':
    'In so kaltem Wasser trinken Wurzeln kaum: Behälter dämmen und dem Wasser Zeit lassen.',
  'more-air':
    'Den Wurzeln fehlt Sauerstoff: Luft ständig laufen lassen, Steine und Schläuche ansehen.',
};

const VERDICTS = { good: 'gut', worn: 'abgenutzt, aber noch brauchbar', unfit: 'durchgefallen' };

function probeText(remark: Extract<AdviceRemark, { kind: 'probe-state' }>, s: Speaker): string {
  const { probe, slopeShare, offsetMv, verdict, suspect } = remark;
  const figures = [
    ...(slopeShare === null ? [] : [`Steilheit ${s.amount(measure(100 * slopeShare, '%', 0, 0))}`]),
    ...(offsetMv === null
      ? []
      : [`Nullpunkt ${s.number(measure(offsetMv, 'none', 0, 0))} mV daneben`]),
  ];
  const state = `${probe}: ${VERDICTS[verdict]}${figures.length > 0 ? ` (${figures.join(', ')})` : ''}.`;
  if (verdict !== 'unfit') return state;
  const [first] = suspect;
  const back = first
    ? ` ${suspect.length === 1 ? 'Ein Wert' : `${suspect.length} Werte`} ${sinceDay(s.dateOf(first.atMs), s)} können falsch sein; sie bleiben eingetragen.`
    : '';
  return `${state} Danach wird nicht dosiert, bis es gereinigt oder ersetzt und neu kalibriert ist.${back}`;
}
