import { DateTime } from 'luxon';

/** A local calendar date, `2027-05-04`. */
export type LocalDate = string & { readonly __brand: 'LocalDate' };
/** A local time of day, `07:00`. */
export type LocalTime = string & { readonly __brand: 'LocalTime' };

const DAY_MS = 86_400_000;
const FIRST_DAY_MS = Date.parse('0001-01-01');
const LAST_DAY_MS = Date.parse('9999-12-31');

export function isLocalDate(text: string): text is LocalDate {
  return /^\d{4}-\d{2}-\d{2}$/.test(text) && DateTime.fromISO(text, { zone: 'utc' }).isValid;
}

export function isLocalTime(text: string): text is LocalTime {
  return /^([01]\d|2[0-3]):[0-5]\d$/.test(text);
}

/** The greenhouse's wall clock at an instant. */
export function localTimeOf(atMs: number, timeZone: string): DateTime {
  return DateTime.fromMillis(atMs, { zone: timeZone });
}

export function localDateOf(atMs: number, timeZone: string): LocalDate {
  const known = lastDays.get(timeZone);
  if (known && atMs >= known.fromMs && atMs < known.toMs) return known.date;
  const time = localTimeOf(atMs, timeZone);
  const date = time.toISODate() as LocalDate;
  const start = time.startOf('day');
  lastDays.set(timeZone, {
    date,
    fromMs: start.toMillis(),
    toMs: start.plus({ days: 1 }).startOf('day').toMillis(),
  });
  return date;
}

/** The day last asked for in each zone: asked for again and again, and slow to work out. */
const lastDays = new Map<
  string,
  { readonly date: LocalDate; readonly fromMs: number; readonly toMs: number }
>();

/** `2027-05-04T08:20:00+01:00`: to the second, or the millisecond where there are any. */
export function isoAt(atMs: number, timeZone: string): string {
  return localTimeOf(atMs, timeZone).toISO({ suppressMilliseconds: true }) ?? '';
}

/** Whole days from one local date to another; negative if the second is earlier. */
export function daysBetween(from: LocalDate, to: LocalDate): number {
  return Math.round((Date.parse(to) - Date.parse(from)) / DAY_MS);
}

/** Never beyond the years that a date can be written in. */
export function plusDays(date: LocalDate, days: number): LocalDate {
  const wantedMs = Date.parse(date) + days * DAY_MS;
  const atMs = Math.min(LAST_DAY_MS, Math.max(FIRST_DAY_MS, wantedMs));
  return new Date(atMs).toISOString().slice(0, 10) as LocalDate;
}

/**
 * The instant of a wall-clock time on a local date. Where the clock skips it, the first instant
 * after the gap; where it comes twice, the first of the two.
 */
export function instantOf(date: LocalDate, time: LocalTime, timeZone: string): number {
  const wanted = DateTime.fromISO(`${date}T${time}`, { zone: timeZone });
  // luxon moves a skipped time forward by the gap's length: 02:30 becomes 03:30, not 03:00.
  if (wanted.toFormat('HH:mm') === time) return earlierOfTwo(wanted).toMillis();
  return firstInstantAfterGap(wanted).toMillis();
}

function earlierOfTwo(time: DateTime): DateTime {
  const [first] = time.getPossibleOffsets();
  return first ?? time;
}

function firstInstantAfterGap(movedForward: DateTime): DateTime {
  let before = movedForward.minus({ hours: 3 }).toMillis();
  let after = movedForward.toMillis();
  const zone = movedForward.zoneName ?? 'utc';
  const offsetAfter = movedForward.offset;
  while (after - before > 1) {
    const middle = Math.floor((before + after) / 2);
    if (DateTime.fromMillis(middle, { zone }).offset === offsetAfter) after = middle;
    else before = middle;
  }
  return DateTime.fromMillis(after, { zone });
}
