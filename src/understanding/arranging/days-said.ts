import { DateTime } from 'luxon';
import { isLocalDate, type LocalDate, plusDays } from '../../greenhouse/local-time.ts';
import { rangeJoiners } from '../vocabulary/arranging-words.ts';
import type { Days } from './arranging.ts';
import type { Piece } from './piece.ts';

export interface DaysSaid {
  readonly days: Days;
  /** The evening of the day, not the day. */
  readonly isEvening: boolean;
  /** Only the last day was said: `until the 12th`. */
  readonly isEndOnly?: true;
  /** After the last piece that it was read from. */
  readonly end: number;
}

/** The days that are spoken of from a piece on: `from Friday to the 16th`, `next week`, `for ten days`. */
export function daysAt(pieces: readonly Piece[], start: number, today: LocalDate): DaysSaid | null {
  let i = passed(pieces, start, 'from', 'on', 'this');
  const isFrom = pieces.slice(start, i).some(({ concepts }) => concepts.has('from'));
  if (pieces[start]?.concepts.has('until')) return untilAt(pieces, start, today, today);
  const long = lengthAt(pieces, start);
  if (long) {
    // `a week away from Thursday`.
    const at = passed(pieces, long.end, 'away');
    const isLater = pieces[at]?.concepts.has('from') === true;
    const start = isLater ? pointAt(pieces, at + 1, today, today) : null;
    const from = start?.days.from ?? today;
    const until = plusDays(from, long.days - 1);
    return { days: { from, until }, isEvening: false, end: start?.end ?? long.end };
  }
  const first = pointAt(pieces, i, today, today) ?? bareDay(pieces, i, today);
  if (!first) return null;
  i = first.end;
  const { from } = first.days;
  const until =
    pieces[i] &&
    (pieces[i]!.concepts.has('until') ||
      pieces[i]!.text === '-' ||
      (isFrom && rangeJoiners.has(pieces[i]!.text)))
      ? pointAt(pieces, passed(pieces, i + 1, 'on', 'this', 'until'), from, today)
      : null;
  if (until) return { days: { from, until: until.days.until }, isEvening: false, end: until.end };
  // `ab Donnerstag eine Woche`; a Friday week is no week from Friday.
  const forLong = isFrom || !isOneWeek(pieces, i) ? lengthAt(pieces, i) : null;
  if (forLong) {
    return {
      days: { from, until: plusDays(from, forLong.days - 1) },
      isEvening: false,
      end: forLong.end,
    };
  }
  return first;
}

/** The first of `12-16 July`: the month stands behind the second. */
function bareDay(pieces: readonly Piece[], i: number, today: LocalDate): DaysSaid | null {
  const day = pieces[i]?.number ?? null;
  const isRange = pieces[i + 1]?.text === '-' || pieces[i + 1]?.concepts.has('until') === true;
  const month = pieces.slice(i + 3, i + 5).find((piece) => piece.month !== null)?.month ?? null;
  if (day === null || !isRange || pieces[i + 2]?.number == null || month === null) return null;
  const from = nextDate(day, month, today);
  return from && { days: { from, until: from }, isEvening: false, end: i + 1 };
}

function untilAt(
  pieces: readonly Piece[],
  i: number,
  from: LocalDate,
  today: LocalDate,
): DaysSaid | null {
  const until = pointAt(pieces, passed(pieces, i + 1, 'on', 'this', 'until'), from, today);
  return until && { isEndOnly: true, ...until, days: { from, until: until.days.until } };
}

/** `a week`, `eine Woche`, and not this one. */
function isOneWeek(pieces: readonly Piece[], i: number): boolean {
  const article = pieces[i];
  const isOne = article?.concepts.has('filler') && !article.concepts.has('this');
  return isOne === true && pieces[i + 1]?.concepts.has('week') === true;
}

/** `for ten days`, `for a week`, `a week`, `zwei Wochen`. */
function lengthAt(pieces: readonly Piece[], start: number): { days: number; end: number } | null {
  let i = start;
  const isSaid = pieces[i]?.concepts.has('for-so-long') === true;
  if (isSaid) i += 1;
  const count = pieces[i]?.number ?? null;
  if (count !== null) i += 1;
  else if ((isSaid && pieces[i]?.concepts.has('filler')) || isOneWeek(pieces, i)) i += 1;
  const unit = pieces[i];
  if (!unit || (i === start && !isSaid)) return null;
  const many = (count ?? 1) * (unit.text === 'fortnight' ? 2 : 1);
  if (unit.concepts.has('week')) return { days: 7 * many, end: i + 1 };
  return unit.concepts.has('day') ? { days: many, end: i + 1 } : null;
}

/** One day, or a week or weekend. `notBefore`: the earliest it can be. */
function pointAt(
  pieces: readonly Piece[],
  start: number,
  notBefore: LocalDate,
  today: LocalDate,
): DaysSaid | null {
  const isNext = pieces[start]?.concepts.has('next') === true;
  const i = isNext ? start + 1 : start;
  const piece = pieces[i];
  if (!piece) return null;
  const one = (day: LocalDate, end: number, isEvening = false): DaysSaid => ({
    days: { from: day, until: day },
    isEvening: isEvening || pieces[end]?.concepts.has('evening') === true,
    end:
      pieces[end]?.concepts.has('evening') || pieces[end]?.concepts.has('day-part') ? end + 1 : end,
  });
  const { concepts } = piece;
  if (concepts.has('day-after-tomorrow')) return one(plusDays(today, 2), i + 1);
  if (concepts.has('tomorrow')) return one(plusDays(today, 1), i + 1);
  if (concepts.has('this-evening')) return one(today, i + 1, true);
  if (concepts.has('today')) return one(today, i + 1);
  const monday = plusDays(today, 1 - weekdayOf(today));
  if (concepts.has('week')) {
    const from = isNext ? plusDays(monday, 7) : today;
    return {
      days: { from, until: plusDays(isNext ? from : monday, 6) },
      isEvening: false,
      end: i + 1,
    };
  }
  if (concepts.has('weekend')) {
    const saturday = plusDays(monday, isNext && weekdayOf(today) < 6 ? 12 : isNext ? 12 : 5);
    return {
      days: { from: saturday < today ? today : saturday, until: plusDays(saturday, 1) },
      isEvening: false,
      end: i + 1,
    };
  }
  if (piece.weekday !== null && !piece.isEveryWeek) {
    const from =
      isNext && weekdayOf(today) < piece.weekday
        ? plusDays(monday, 7)
        : isNext
          ? plusDays(today, 1)
          : notBefore;
    return (
      dated(pieces, i, piece.weekday, notBefore, one) ?? one(onOrAfter(from, piece.weekday), i + 1)
    );
  }
  return dateAt(pieces, i, notBefore, one);
}

/** `Mon 22`, `Montag, den 22.`: a weekday and the date that falls on it; null: no such date is beside it. */
function dated(
  pieces: readonly Piece[],
  i: number,
  weekday: number,
  notBefore: LocalDate,
  one: (day: LocalDate, end: number) => DaysSaid,
): DaysSaid | null {
  const at = passed(pieces, i + 1, 'on', 'this');
  const piece = pieces[at];
  if (!piece || (piece.number === null && piece.date === null)) return null;
  // `ab Freitag zwei Wochen`: so long, and no day of the month.
  if (lengthAt(pieces, at)) return null;
  const ofMonth = dateAt(pieces, at, notBefore, one) ?? bareDate(piece, at, notBefore, one);
  return ofMonth && weekdayOf(ofMonth.days.from) === weekday ? ofMonth : null;
}

function bareDate(
  { number }: Piece,
  at: number,
  notBefore: LocalDate,
  one: (day: LocalDate, end: number) => DaysSaid,
): DaysSaid | null {
  const isDayOfMonth = number !== null && Number.isInteger(number) && number >= 1 && number <= 31;
  const found = isDayOfMonth ? nextDate(number, null, notBefore) : null;
  return found && one(found, at + 1);
}

/** `16th`, `16 July`, `July 16`, `16.7.`, `2027-07-16`. */
function dateAt(
  pieces: readonly Piece[],
  i: number,
  notBefore: LocalDate,
  one: (day: LocalDate, end: number) => DaysSaid,
): DaysSaid | null {
  const piece = pieces[i]!;
  if (piece.date !== null) {
    if (isLocalDate(piece.date)) return one(piece.date, i + 1);
    const [day, month] = piece.date.split('.').map(Number);
    const found = nextDate(day!, month!, notBefore);
    return found && one(found, i + 1);
  }
  if (piece.month !== null) {
    const day = pieces[i + 1]?.number ?? null;
    const found = day === null ? null : nextDate(day, piece.month, notBefore);
    return found && one(found, i + 2);
  }
  if (piece.number === null) return null;
  const at = pieces[i + 1]?.concepts.has('on') ? i + 2 : i + 1;
  const month = pieces[at]?.month ?? null;
  if (month === null && !piece.isOrdinal) return null;
  const found = nextDate(piece.number, month, notBefore);
  return found && one(found, month === null ? i + 1 : at + 1);
}

/** The first such date from `notBefore` on; month null: of any month. */
function nextDate(day: number, month: number | null, notBefore: LocalDate): LocalDate | null {
  const start = DateTime.fromISO(notBefore, { zone: 'utc' });
  for (let months = 0; months <= 12; months += 1) {
    const first = start.startOf('month').plus({ months });
    if (month !== null && first.month !== month) continue;
    const found = first.set({ day });
    if (found.month === first.month && found >= start) return found.toISODate() as LocalDate;
  }
  return null;
}

function onOrAfter(date: LocalDate, weekday: number): LocalDate {
  return plusDays(date, (weekday - weekdayOf(date) + 7) % 7);
}

function weekdayOf(date: LocalDate): number {
  // Sunday is 0 to the platform.
  return new Date(date).getUTCDay() || 7;
}

function passed(
  pieces: readonly Piece[],
  start: number,
  ...concepts: Parameters<Piece['concepts']['has']>[0][]
): number {
  let i = start;
  while (
    pieces[i] &&
    concepts.some((concept) => pieces[i]!.concepts.has(concept)) &&
    !isDay(pieces[i]!)
  )
    i += 1;
  return i;
}

function isDay({ weekday, number, month }: Piece): boolean {
  return weekday !== null || number !== null || month !== null;
}
