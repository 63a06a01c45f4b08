import type { AdviceRemark, Care } from '../../../assistant/replies/advice.ts';
import type { DutyLine } from '../../../planning/duty-line.ts';
import { cautionsOnce } from '../../spoken/cautions-once.ts';
import { measure } from '../../spoken/measure.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { toldDuties } from '../../spoken/told-duties.ts';
import { dayText } from '../day-text.ts';
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
      return `${s.and(what)}: that is for the grower, who has been told. Please wait, and add nothing yourself.`;
    }
    case 'dose-refused': {
      const { system, because } = remark.refused;
      return `${s.system(system).name}: ${refusedDoseText(because, s)}`;
    }
    case 'measure-after-dose':
      return `Let ${s.system(remark.system).name} mix, and measure the ${quantityNames[remark.quantity]} again in ${remark.fromMin} to ${remark.toMin} minutes.`;
    case 'probe-state':
      return probeText(remark, s);
    case 'meters-disagree': {
      const [one, other] = [remark.one, remark.other].map(
        (entry) =>
          `${entry.probe ?? 'one meter'} says ${valueText(entry.quantity, entry.value, s)}`,
      );
      return `${s.capital(one ?? '')} and ${other ?? ''} of the same water: one is off. Check both in a fresh reference before you trust either.`;
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
    'Warm water holds little oxygen: shade the tank, let the air run longer, and put in a closed bottle of ice.',
  'warm-the-water':
    'Roots hardly drink in water so cold: insulate the tank, and give the water time.',
  'more-air':
    'The roots are short of oxygen: let the air run all the time, and look at stones and hoses.',
};

const VERDICTS = { good: 'good', worn: 'worn, but still usable', unfit: 'failed' } as const;

function probeText(remark: Extract<AdviceRemark, { kind: 'probe-state' }>, s: Speaker): string {
  const { probe, slopeShare, offsetMv, verdict, suspect } = remark;
  const figures = [
    ...(slopeShare === null ? [] : [`slope ${s.amount(measure(100 * slopeShare, '%', 0, 0))}`]),
    ...(offsetMv === null
      ? []
      : [`zero point ${s.number(measure(offsetMv, 'none', 0, 0))} mV off`]),
  ];
  const state = `The ${probe}: ${VERDICTS[verdict]}${figures.length > 0 ? ` (${figures.join(', ')})` : ''}.`;
  if (verdict !== 'unfit') return state;
  const [first] = suspect;
  const back = first
    ? ` Its ${suspect.length === 1 ? 'reading' : `${suspect.length} readings`} since ${dayText(s.dateOf(first.atMs), s)} may be off; they stay in the log.`
    : '';
  return `${state} No dose rests on it until it is cleaned or replaced and calibrated again.${back}`;
}
