import type { SystemId } from '../../greenhouse/system.ts';
import { latestEntry, liveEntries } from '../../logbook/logbook.ts';
import { isLevelKnown } from '../../planning/level-known.ts';
import { waterOutlooks } from '../../planning/water-outlooks.ts';
import type { HowFull } from '../replies/answer.ts';
import type { Standing } from '../standing.ts';

/** Standard deviations on each side of an estimate between which nine in ten lie. */
const NINE_IN_TEN_SDS = 1.645;

/** How full systems are by now, how sure that is, and what it rests on. */
export function howFull(
  standing: Standing,
  systems: readonly SystemId[],
  nowMs: number,
): readonly HowFull[] {
  const { greenhouse, water, logbook } = standing;
  const outlooks = waterOutlooks(greenhouse, water, nowMs);
  return greenhouse.systems
    .filter(({ id }) => systems.includes(id))
    .map(({ id, brimL }): HowFull => {
      if (!isLevelKnown(logbook, id)) return { system: id, now: null, last: null, topUps: [] };
      const { litres, litresSd } = outlooks.get(id)!;
      const [last = null] = (['level', 'reservoir-change'] as const)
        .flatMap((quantity) => latestEntry(logbook, id, quantity) ?? [])
        .toSorted((one, other) => other.atMs - one.atMs || other.no - one.no);
      const isSince = (atMs: number): boolean => last === null || atMs > last.atMs;
      return {
        system: id,
        now: {
          litres,
          leastL: Math.max(0, litres - NINE_IN_TEN_SDS * litresSd),
          mostL: Math.min(brimL, litres + NINE_IN_TEN_SDS * litresSd),
        },
        last,
        topUps: liveEntries(logbook, id, 'top-up').filter(({ atMs }) => isSince(atMs)),
      };
    });
}
