import type { Entry } from '../greenhouse/entry.ts';
import { localDateOf } from '../greenhouse/local-time.ts';
import type { Member } from '../greenhouse/member.ts';
import { sameData } from '../greenhouse/set-up/same-data.ts';
import type { System } from '../greenhouse/system.ts';
import { latestEntry } from '../logbook/logbook.ts';
import { cleanDuties } from '../planning/clean-duties.ts';
import { doseAdvice } from '../planning/dose-advice.ts';
import { doseLines } from '../planning/dose-duties.ts';
import { DOSE_WAIT } from '../planning/doses-given.ts';
import { dutiesForMember } from '../planning/duties-for-member.ts';
import type { BoardQuestion } from '../planning/duty-board.ts';
import { contradictedBy } from '../planning/meter-comparison.ts';
import { ROOT_OXYGEN } from '../science/oxygen/oxygen-limits.ts';
import { boardQuestion } from './board-question.ts';
import { probeRemarks } from './probe-remarks.ts';
import type { AdviceRemark, RefusedDose } from './replies/advice.ts';
import type { Standing } from './standing.ts';

/** What the entries just logged call for: the next part of a dose, a calibration's verdict, care. */
export function adviceRemarks(
  logged: readonly Entry[],
  standing: Standing,
  member: Member,
): readonly AdviceRemark[] {
  const needsPlanning = logged.some(({ quantity }) => planned.has(quantity));
  const question = needsPlanning ? boardQuestion(standing, standing.nowMs) : null;
  return [
    ...(question ? refusedOnce(logged.flatMap((entry) => onEntry(entry, question, member))) : []),
    ...logged.flatMap((entry) => care(entry, standing)),
    ...probeRemarks(logged, standing),
  ];
}

/** What keeps every dose of a system from being told, such as a level nobody knows, is told once. */
function refusedOnce(remarks: readonly AdviceRemark[]): readonly AdviceRemark[] {
  const refusals: RefusedDose[] = [];
  return remarks.filter((remark) => {
    if (remark.kind !== 'dose-refused') return true;
    const { system, because } = remark.refused;
    const isTold = refusals.some(
      (other) => other.system === system && sameData(other.because, because),
    );
    if (!isTold) refusals.push(remark.refused);
    return !isTold;
  });
}

const planned: ReadonlySet<Entry['quantity']> = new Set(['ph', 'ec', 'dose', 'fill-time']);

function onEntry(entry: Entry, question: BoardQuestion, member: Member): readonly AdviceRemark[] {
  const system = question.greenhouse.systems.find(({ id }) => id === entry.system);
  // Only what is latest calls for work; an entry about yesterday is history.
  if (!system || latestEntry(question.logbook, system.id, entry.quantity)?.no !== entry.no) {
    return [];
  }
  switch (entry.quantity) {
    case 'ph':
    case 'ec':
      return onReading(entry, entry.quantity, system, question, member);
    case 'dose':
      return afterDose(entry, system, question);
    case 'fill-time':
      return cleanDuties(question, localDateOf(question.nowMs, question.greenhouse.timeZone))
        .filter(
          ({ duty, reason }) =>
            duty.system === system.id &&
            reason.kind === 'clean' &&
            reason.because.kind === 'fill-time',
        )
        .map((line) => ({ kind: 'next-work', lines: [line] }));
    default:
      return [];
  }
}

function onReading(
  entry: Entry,
  quantity: 'ph' | 'ec',
  system: System,
  question: BoardQuestion,
  member: Member,
): readonly AdviceRemark[] {
  const other = contradictedBy(entry, question.logbook);
  if (other) return [{ kind: 'meters-disagree', one: entry, other }];
  const advice = doseAdvice(question, system, quantity);
  if (advice.kind === 'in-range') return [];
  if (advice.kind === 'refused') {
    // A jump is asked about by the remark on what was expected.
    if (!advice.entry || advice.because.kind === 'looks-like-slip') return [];
    const { because } = advice;
    const refused = { system: system.id, quantity, value: entry.value, because };
    return [{ kind: 'dose-refused', refused }];
  }
  const today = localDateOf(question.nowMs, question.greenhouse.timeZone);
  const lines = doseLines(advice.dose, system, question, today);
  const { mine, leftToGrower } = dutiesForMember(lines, member, question.greenhouse);
  return [
    ...(mine.length > 0 ? [{ kind: 'next-work', lines: mine } as const] : []),
    ...(leftToGrower.length > 0
      ? [{ kind: 'waits-for-grower', lines: leftToGrower } as const]
      : []),
  ];
}

/** A dose that was told with its effect in one message has been measured already. */
function afterDose(
  entry: Entry,
  system: System,
  { logbook }: BoardQuestion,
): readonly AdviceRemark[] {
  const quantity = /ph/i.test(entry.product ?? '') ? 'ph' : 'ec';
  const reading = latestEntry(logbook, system.id, quantity);
  const isMeasured = reading && (reading.atMs > entry.atMs || reading.no > entry.no);
  if (isMeasured) return [];
  const { fromMin, toMin } = DOSE_WAIT;
  return [{ kind: 'measure-after-dose', system: system.id, quantity, fromMin, toMin }];
}

function care(entry: Entry, { greenhouse }: Standing): readonly AdviceRemark[] {
  const system = greenhouse.systems.find(({ id }) => id === entry.system);
  if (!system) return [];
  if (entry.quantity === 'water-temperature') {
    const [lowest, highest] = system.waterTemperatureC;
    if (entry.value > highest) return [{ kind: 'care', entry, advice: 'cool-the-water' }];
    if (entry.value < lowest) return [{ kind: 'care', entry, advice: 'warm-the-water' }];
  }
  const isShort = entry.quantity === 'dissolved-oxygen' && entry.value < ROOT_OXYGEN.wantedMgPerL;
  return isShort ? [{ kind: 'care', entry, advice: 'more-air' }] : [];
}
