import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import { daysBetween, instantOf, type LocalDate, plusDays } from '../../greenhouse/local-time.ts';
import type { Absence, Roster } from '../../planning/roster.ts';

/** So long after its end somebody still says to be back. */
const SAID_WITHIN_DAYS = 14;

/** The absence that "I am back" is about: the present one, or the last, or the next; null: none. */
export function absenceToEnd(roster: Roster, handle: string, today: LocalDate): Absence | null {
  const own = roster.absences.filter((each) => each.handle === handle);
  return (
    roster.absenceOn(handle, today) ??
    own.findLast(({ until }) => until < today && daysBetween(until, today) <= SAID_WITHIN_DAYS) ??
    own.find(({ from }) => from > today) ??
    null
  );
}

/** What there is to tell of: from the departure to the return, or to now. */
export function spanOf(
  absence: Absence,
  { morning, timeZone }: Greenhouse,
  nowMs: number,
): { readonly fromMs: number; readonly untilMs: number } {
  const fromMs = Math.max(absence.toldAtMs, instantOf(absence.from, morning, timeZone));
  const endMs = Math.min(nowMs, instantOf(plusDays(absence.until, 1), morning, timeZone));
  return { fromMs, untilMs: Math.max(fromMs, endMs) };
}
