import type { Entry } from '../../greenhouse/entry.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { latestEntry, liveEntries } from '../../logbook/logbook.ts';
import { isLevelKnown } from '../../planning/level-known.ts';
import { waterOutlooks } from '../../planning/water-outlooks.ts';
import type { HowFull } from '../replies/answer.ts';
import type { Standing } from '../standing.ts';

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
    .map(({ id }): HowFull => {
      if (!isLevelKnown(logbook, id)) return { system: id, now: null, last: null, topUps: [] };
      const { lowL, likelyL, highL } = outlooks.get(id)!.band;
      const [last = null] = (['level', 'reservoir-change'] as const)
        .flatMap((quantity) => latestEntry(logbook, id, quantity) ?? [])
        .toSorted((one, other) => other.atMs - one.atMs || other.no - one.no);
      const isSince = ({ atMs, no }: Entry): boolean =>
        last === null || atMs > last.atMs || (atMs === last.atMs && no > last.no);
      return {
        system: id,
        now: { litres: likelyL, leastL: lowL, mostL: highL },
        last,
        topUps: liveEntries(logbook, id, 'top-up').filter(isSince),
      };
    });
}
