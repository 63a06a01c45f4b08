import { localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import type { Days } from '../../understanding/arranging/arranging.ts';
import type { Handling } from '../handling.ts';
import { rosterOf } from './roster-of.ts';

/** Further ahead nobody plans who goes. */
const daysTold = 14;
const daysUnsaid = 7;

/** Until when somebody is away, if they are or will be. */
export function answerWhenBack(handling: Handling, handle: string): void {
  const { standing, nowMs } = handling;
  const today = localDateOf(nowMs, standing.greenhouse.timeZone);
  const next = rosterOf(standing)
    .absences.filter((each) => each.handle === handle && each.until >= today)
    .toSorted((one, other) => (one.from < other.from ? -1 : 1))[0];
  const until = next?.until ?? null;
  handling.say({ kind: 'answer', answer: { kind: 'back-when', handle, until } });
}

/** Who is away now, and who will be; or when one of them is. */
export function answerWhoIsAway(handling: Handling, only: string | null): void {
  const { standing, nowMs } = handling;
  const today = localDateOf(nowMs, standing.greenhouse.timeZone);
  const absences = rosterOf(standing)
    .absences.filter(({ handle, until }) => until >= today && (only === null || handle === only))
    .toSorted((one, other) => (one.from < other.from ? -1 : 1))
    .map(({ handle, from, until }) => ({ handle, from, until }));
  handling.say({ kind: 'answer', answer: { kind: 'who-is-away', absences } });
}

/** Who goes on each day, and what was taken. */
export function answerWhoGoes(handling: Handling, days: Days | null): void {
  const { standing, nowMs } = handling;
  const { greenhouse } = standing;
  const today = localDateOf(nowMs, greenhouse.timeZone);
  const roster = rosterOf(standing);
  const first = days?.from ?? today;
  const last = days?.until ?? plusDays(today, daysUnsaid - 1);
  const dates = Array.from({ length: daysTold }, (_, i) => plusDays(first, i)).filter(
    (date) => date <= last,
  );
  handling.say({
    kind: 'answer',
    answer: {
      kind: 'roster',
      days: dates.map((date) => ({ date, handles: roster.coversOn(date).slice(0, 1) })),
      claims: dates
        .flatMap((date) => roster.claimsOn(date))
        .map(({ byHandle: _by, atMs: _at, ...settled }) => ({ handle: settled.handle, settled })),
    },
  });
}
