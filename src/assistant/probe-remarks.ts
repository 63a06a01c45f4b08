import type { Entry } from '../greenhouse/entry.ts';
import { isReading } from '../greenhouse/quantity.ts';
import { type ProbeSession, probeSessions, referenceOf } from '../planning/probe-history.ts';
import type { AdviceRemark } from './replies/advice.ts';
import type { Standing } from './standing.ts';

/** What a calibration just logged says of its probe, and of the readings before it. */
export function probeRemarks(
  logged: readonly Entry[],
  standing: Standing,
): readonly AdviceRemark[] {
  const { greenhouse, logbook } = standing;
  return greenhouse.probes.flatMap((probe) => {
    const own = logged.filter(
      (entry) => entry.quantity === 'calibration' && entry.probe === probe.name,
    );
    const kinds = [...new Set(own.map((entry) => referenceOf(entry, probe)))];
    return kinds.flatMap((measures): AdviceRemark[] => {
      const sessions = probeSessions(logbook, probe, measures);
      const session = sessions.find(({ entries }) =>
        entries.some(({ no }) => no === own.at(-1)!.no),
      );
      if (!session) return [];
      const { slopeShare, offsetMv, verdict } = session;
      const suspect = verdict === 'unfit' ? suspectReadings(session, sessions, standing) : [];
      return [
        {
          kind: 'probe-state',
          probe: probe.name,
          measures,
          slopeShare,
          offsetMv,
          verdict,
          suspect,
        },
      ];
    });
  });
}

/** Readings of the probe since it was last found good: they stay in the log, and may be off. */
function suspectReadings(
  session: ProbeSession,
  sessions: readonly ProbeSession[],
  { logbook, greenhouse }: Standing,
): readonly Entry[] {
  const good = sessions.findLast((other) => other.atMs < session.atMs && other.verdict === 'good');
  const fromMs = good?.atMs ?? Number.NEGATIVE_INFINITY;
  const others = greenhouse.probes.filter(
    ({ name, measures }) => name !== session.probe && measures.includes(session.measures),
  );
  return logbook.all
    .filter(
      (entry) =>
        !entry.struck &&
        isReading(entry.quantity) &&
        entry.quantity === session.measures &&
        entry.source.kind === 'member' &&
        entry.atMs > fromMs &&
        entry.atMs < session.atMs &&
        (entry.probe === session.probe || (entry.probe === undefined && others.length === 0)),
    )
    .toSorted((one, other) => one.atMs - other.atMs);
}
