import { type LocalDate, localDateOf } from '../../greenhouse/local-time.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Answer } from '../replies/answer.ts';
import type { Standing } from '../standing.ts';

/** More than a round is of; the rest is in the logbook. */
const mostTold = 12;

/** What a member (null: anybody) has logged on a day, of these systems alone; of late, where no day is said. Latest first. */
export function loggedBy(
  { logbook, greenhouse }: Standing,
  handle: string | null,
  on: LocalDate | null,
  systems: readonly SystemId[] | null = null,
): Answer {
  const entries = logbook.all
    .filter(
      (entry) =>
        !entry.struck &&
        (handle === null || (entry.source.kind === 'member' && entry.source.handle === handle)) &&
        (systems === null || (entry.system !== null && systems.includes(entry.system))) &&
        (on === null || localDateOf(entry.atMs, greenhouse.timeZone) === on),
    )
    .toSorted((one, other) => other.atMs - one.atMs)
    .slice(0, mostTold);
  return { kind: 'who', entries, setUp: [] };
}
