import { DateTime } from 'luxon';

/** A local calendar date, `2027-05-04`. */
export type LocalDate = string & { readonly __brand: 'LocalDate' };
/** A local time of day, `07:00`. */
export type LocalTime = string & { readonly __brand: 'LocalTime' };

const MINUTE_MS = 60_000;
const HOUR_MS = 3_600_000;
const DAY_MS = 86_400_000;
const FIRST_OF_1970 = '1970-01-01' as LocalDate;
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
  const last = lastDays.get(timeZone);
  if (last && isOn(last, atMs)) return last.date;
  const near = plusDays(FIRST_OF_1970, Math.floor(atMs / DAY_MS));
  const known = [0, -1, 1]
    .map((days) => knownDays.get(`${timeZone} ${plusDays(near, days)}`))
    .find((day) => day && isOn(day, atMs));
  const day = known ?? dayOf(localTimeOf(atMs, timeZone).toISODate() as LocalDate, timeZone);
  lastDays.set(timeZone, day);
  return day.date;
}

/** A day on the wall clock: an hour shorter or longer where the clock changes. */
export interface LocalDay {
  readonly date: LocalDate;
  readonly fromMs: number;
  readonly toMs: number;
}

// Days are asked for again and again, and are slow to work out.
const lastDays = new Map<string, LocalDay>();
const knownDays = new Map<string, LocalDay>();
const mostKnownDays = 1000;

/** The day of an instant, from its first to the next day's. */
export function localDayOf(atMs: number, timeZone: string): LocalDay {
  return dayOf(localDateOf(atMs, timeZone), timeZone);
}

/** The day that begins where one ends. */
export function nextDay({ date, toMs }: LocalDay, timeZone: string): LocalDay {
  const next = dayOf(plusDays(date, 1), timeZone);
  // Where a date is left out, or cannot be written any more, it is not the one after by its number.
  return next.fromMs === toMs ? next : localDayOf(toMs, timeZone);
}

function dayOf(date: LocalDate, timeZone: string): LocalDay {
  const key = `${timeZone} ${date}`;
  const known = knownDays.get(key);
  if (known) return known;
  const start = DateTime.fromISO(date, { zone: timeZone }).startOf('day');
  const day = {
    // A date that a zone left out, moving across the date line, is the one after it.
    date: start.toISODate() as LocalDate,
    fromMs: start.toMillis(),
    toMs: start.plus({ days: 1 }).startOf('day').toMillis(),
  };
  if (knownDays.size >= mostKnownDays) knownDays.clear();
  knownDays.set(key, day);
  return day;
}

function isOn({ fromMs, toMs }: LocalDay, atMs: number): boolean {
  return atMs >= fromMs && atMs < toMs;
}

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
  const { fromMs, toMs } = dayOf(date, timeZone);
  if (toMs - fromMs === DAY_MS) return fromMs + msAfterMidnight(time);
  const wanted = DateTime.fromISO(`${date}T${time}`, { zone: timeZone });
  // luxon moves a skipped time forward by the gap's length: 02:30 becomes 03:30, not 03:00.
  if (wanted.toFormat('HH:mm') === time) return earlierOfTwo(wanted).toMillis();
  return firstInstantAfterGap(wanted).toMillis();
}

function msAfterMidnight(time: LocalTime): number {
  const [hours, minutes] = time.split(':').map(Number);
  return hours! * HOUR_MS + minutes! * MINUTE_MS;
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
