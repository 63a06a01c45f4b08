import type { Probe } from '../greenhouse/greenhouse.ts';
import { type LocalDate, localDateOf, plusDays } from '../greenhouse/local-time.ts';
import type { BoardQuestion } from './duty-board.ts';
import type { DutyLine } from './duty-line.ts';
import { lastSaidDoneMs } from './last-done.ts';
import { type ProbeTrust, probesFor } from './probe-trust.ts';

/** From this share of the interval on, a calibration is worth doing on a trip that is made anyway. */
const RIDES_FROM_SHARE = 0.6;

/** It may be so late, for a trip to come. */
const GRACE_DAYS = 4;

/** Each probe by its age, or by how fast it drifted; at once where its last verdict was bad. */
export function calibrationDuties(question: BoardQuestion, today: LocalDate): readonly DutyLine[] {
  return question.greenhouse.probes.flatMap((probe) => {
    const lines = probe.measures.flatMap((measures) =>
      probesFor(question.greenhouse, question.logbook, measures)
        .filter((trust) => trust.probe.name === probe.name)
        .map((trust) => calibrationOf(probe, trust, question, today)),
    );
    const [soonest] = lines.toSorted((one, other) => (one.duty.dueOn < other.duty.dueOn ? -1 : 1));
    return soonest ? [soonest] : [];
  });
}

function calibrationOf(
  probe: Probe,
  trust: ProbeTrust,
  { greenhouse, logbook }: BoardQuestion,
  today: LocalDate,
): DutyLine {
  const saidMs = lastSaidDoneMs(logbook, null, 'calibration', probe.name);
  const saidOn = saidMs === null ? null : localDateOf(saidMs, greenhouse.timeZone);
  const lastOn = latest(trust.calibratedOn, saidOn);
  const isUnfit = trust.verdict === 'unfit' && lastOn === trust.calibratedOn;
  const dueOn = lastOn === null || isUnfit ? today : plusDays(lastOn, trust.everyDays);
  return {
    duty: {
      kind: 'calibration',
      system: null,
      probe: probe.name,
      dueOn: dueOn < today ? today : dueOn,
      ...(lastOn === null ? {} : { latestOn: plusDays(lastOn, trust.trustedDays) }),
    },
    ridesFrom:
      lastOn === null ? today : plusDays(lastOn, Math.round(trust.everyDays * RIDES_FROM_SHARE)),
    ...(lastOn === null || isUnfit ? {} : { waitsUntil: plusDays(dueOn, GRACE_DAYS) }),
    reason: {
      kind: 'calibration',
      lastOn,
      everyDays: trust.everyDays,
      verdict: trust.verdict,
      isLearned: trust.isLearned,
    },
  };
}

function latest(one: LocalDate | null, other: LocalDate | null): LocalDate | null {
  if (one === null || other === null) return one ?? other;
  return one > other ? one : other;
}
