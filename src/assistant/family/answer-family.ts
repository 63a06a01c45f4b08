import { localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import type { Days } from '../../understanding/arranging/arranging.ts';
import type { Handling } from '../handling.ts';
import { rosterOf } from './roster-of.ts';

/** Further ahead nobody plans who goes. */
const daysTold = 14;
const daysUnsaid = 7;

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
