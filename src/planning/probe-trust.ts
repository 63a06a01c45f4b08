import type { Greenhouse, Probe } from '../greenhouse/greenhouse.ts';
import { daysBetween, type LocalDate, localDateOf, plusDays } from '../greenhouse/local-time.ts';
import type { ReferenceQuantity } from '../greenhouse/quantity.ts';
import type { Logbook } from '../logbook/logbook.ts';
import type { ProbeVerdict } from '../science/ph/probe-calibration.ts';
import { type ProbeSession, probeSessions } from './probe-history.ts';

/** How a probe stands for one quantity: when it was calibrated, and how long that holds. */
export interface ProbeTrust {
  readonly probe: Probe;
  readonly measures: ReferenceQuantity;
  readonly calibratedOn: LocalDate | null;
  readonly verdict: ProbeVerdict | null;
  readonly sessions: readonly ProbeSession[];
  /** Days from one calibration to the next. */
  readonly everyDays: number;
  readonly isLearned: boolean;
  /** After so many days its readings bear no dose. */
  readonly trustedDays: number;
}

/** Common practice: pH every two to four weeks, EC monthly. */
const USUAL_DAYS: Readonly<Record<ReferenceQuantity, number>> = {
  ph: 28,
  ec: 35,
  'dissolved-oxygen': 35,
};
/** How far a probe may have drifted by the next calibration, in its unit; EC and oxygen as a share. */
const MOST_DRIFT: Readonly<Record<ReferenceQuantity, number>> = {
  ph: 0.15,
  ec: 0.05,
  'dissolved-oxygen': 0.1,
};
const LEAST_DAYS = 7;
const MOST_DAYS = 56;
/** What is usual weighs as much as this many calibrations seen. */
const USUAL_WEIGHT = 1;
const TRUSTED_SHARE = 1.25;

/** The probes that measure a quantity, the most lately calibrated first. */
export function probesFor(
  greenhouse: Greenhouse,
  logbook: Logbook,
  measures: ReferenceQuantity,
): readonly ProbeTrust[] {
  return greenhouse.probes
    .filter((probe) => probe.measures.includes(measures))
    .map((probe) => trustOf(probe, greenhouse, logbook, measures))
    .toSorted((one, other) => ((one.calibratedOn ?? '') < (other.calibratedOn ?? '') ? 1 : -1));
}

function trustOf(
  probe: Probe,
  greenhouse: Greenhouse,
  logbook: Logbook,
  measures: ReferenceQuantity,
): ProbeTrust {
  const sessions = probeSessions(logbook, probe, measures);
  const dates = sessions.map(({ atMs }) => localDateOf(atMs, greenhouse.timeZone));
  const learned = driftPerDay(probe, measures, sessions, dates);
  const usual = USUAL_DAYS[measures];
  const everyDays =
    learned === null
      ? usual
      : Math.round(Math.min(MOST_DAYS, Math.max(LEAST_DAYS, MOST_DRIFT[measures] / learned)));
  return {
    probe,
    measures,
    calibratedOn: dates.at(-1) ?? probe.calibratedOn,
    verdict: sessions.at(-1)?.verdict ?? null,
    sessions,
    everyDays,
    isLearned: learned !== null,
    trustedDays: Math.round(everyDays * TRUSTED_SHARE),
  };
}

/** Drift a day as seen from one calibration to the next, drawn towards what is usual; null: not seen. */
function driftPerDay(
  probe: Probe,
  measures: ReferenceQuantity,
  sessions: readonly ProbeSession[],
  dates: readonly LocalDate[],
): number | null {
  let days = 0;
  let drift = 0;
  let seen = 0;
  for (const [i, session] of sessions.entries()) {
    const since = dates[i - 1] ?? probe.calibratedOn;
    if (since === null) continue;
    const between = daysBetween(since, dates[i]!);
    if (between < 1) continue;
    days += between;
    drift += measures === 'ph' ? session.worstMiss : Math.abs((session.slopeShare ?? 1) - 1);
    seen += 1;
  }
  if (seen === 0) return null;
  const usualDays = USUAL_DAYS[measures] * USUAL_WEIGHT;
  return (drift + MOST_DRIFT[measures] * USUAL_WEIGHT) / (days + usualDays);
}

/** Whether a probe's readings bear a dose on a date. */
export function isTrustedOn(trust: ProbeTrust, today: LocalDate): boolean {
  if (trust.verdict === 'unfit' || trust.calibratedOn === null) return false;
  return today <= plusDays(trust.calibratedOn, trust.trustedDays);
}
