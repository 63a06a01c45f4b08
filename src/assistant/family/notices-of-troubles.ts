import { isDanger } from '../../greenhouse/entry.ts';
import { localDateOf } from '../../greenhouse/local-time.ts';
import { liveEntries } from '../../logbook/logbook.ts';
import type { Roster } from '../../planning/roster.ts';
import { inDaytime } from '../quiet-hours.ts';
import type { Standing } from '../standing.ts';
import { type Notice, newsHoldsMs, notice } from './notice.ts';

/**
 * What somebody saw to be wrong reaches the growers, and whoever covers, once it is kept: at once, but for
 * plants that ail, which wait for the day. Of what may hurt they heard when it was told.
 */
export function noticesOfTroubles(
  { greenhouse, logbook }: Standing,
  roster: Roster,
  nowMs: number,
): readonly Notice[] {
  const { timeZone } = greenhouse;
  const growers = greenhouse.members.filter(({ role }) => role === 'grower');
  return [null, ...greenhouse.systems.map(({ id }) => id)]
    .flatMap((place) => liveEntries(logbook, place, 'note'))
    .filter(
      ({ trouble, recordedAtMs }) =>
        trouble !== undefined && !isDanger(trouble) && nowMs - recordedAtMs < newsHoldsMs,
    )
    .flatMap((entry) => {
      const { no, recordedAtMs, source, trouble } = entry;
      const by = source.kind === 'member' ? source.handle : null;
      const covers = roster.coversOn(localDateOf(recordedAtMs, timeZone));
      const readers = new Set([...growers.map(({ handle }) => handle), ...covers]);
      const atMs = trouble === 'plants' ? inDaytime(recordedAtMs, timeZone) : recordedAtMs;
      return [...readers]
        .filter((handle) => handle !== by)
        .map((handle) =>
          notice(`trouble:${no}:${handle}`, atMs, handle, { kind: 'trouble', entry }),
        );
    });
}
