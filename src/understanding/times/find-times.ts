import { DateTime } from 'luxon';
import { type LocalDate, localDateOf, localTimeOf, plusDays } from '../../greenhouse/local-time.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import { unitIs } from '../numbers/quantity-of-measure.ts';
import { type Clause, type Frame, isMeasure, takeTime } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import { type DayPart, type SaidTime, smallHoursEnd, workOut } from './day-time.ts';
import type { TimeMark } from './time-mark.ts';

const msPer = { second: 1000, minute: 60_000, hour: 3_600_000 };
const nothingSaid: SaidTime = {
  day: null,
  part: null,
  minutes: null,
  eitherHalf: false,
  meridiem: null,
  lastNight: false,
  weekdayOfToday: false,
};

/** Every time that the message speaks of; their terms are taken. */
export function findTimes(frame: Frame): TimeMark[] {
  const marks: TimeMark[] = [];
  let i = 0;
  while (i < frame.terms.length) {
    const mark = agoAt(frame, i) ?? expressionAt(frame, i);
    if (mark) {
      takeTime(frame, mark.from, mark.to + 1);
      marks.push(mark);
      i = mark.to + 1;
    } else i++;
  }
  return marks;
}

/** `an hour ago`, `10 min ago`, `vor einer Stunde`, `for 2 hours`. */
function agoAt(frame: Frame, i: number): TimeMark | null {
  let start = i;
  const before = frame.terms[i];
  const goesBefore = means(before, 'ago-before');
  const forSoLong = means(before, 'for-so-long') && isOutageSentence(frame, i);
  if (goesBefore || forSoLong) start++;
  while (means(frame.terms[start], 'about', 'ish') && start < i + 3) start++;
  const term = frame.terms[start];
  if (!isMeasure(term)) return null;
  let end = start;
  if (!goesBefore && !forSoLong) {
    if (means(frame.terms[end + 1], 'ish')) end++;
    if (!means(frame.terms[end + 1], 'ago')) return null;
    end++;
  }
  const { measure } = term;
  const { writtenAtMs, greenhouse } = frame.context;
  const base = {
    from: i,
    to: end,
    clause: frame.clauseOf[i]!,
    since: forSoLong,
    until: false,
    askFrom: null,
    written: frame.folded.text.slice(before!.from, frame.terms[end]!.to),
  };
  for (const unit of ['second', 'minute', 'hour'] as const) {
    if (unitIs(measure, unit))
      return {
        ...base,
        atMs: writtenAtMs - measure.values[0]! * msPer[unit],
        vague: measure.approximate || isAbout(frame, start),
      };
  }
  const days = unitIs(measure, 'day') ? 1 : unitIs(measure, 'week') ? 7 : 0;
  if (days === 0) return null;
  const day = plusDays(
    localDateOf(writtenAtMs, greenhouse.timeZone),
    -Math.round(measure.values[0]! * days),
  );
  return { ...base, ...workOut({ ...nothingSaid, day }, greenhouse, writtenAtMs) };
}

function isAbout(frame: Frame, i: number): boolean {
  return means(frame.terms[i - 1], 'about');
}

function isOutageSentence(frame: Frame, i: number): boolean {
  const { sentence } = frame.clauses[frame.clauseOf[i]!]!;
  return frame.terms.some(
    (term, j) =>
      frame.clauses[frame.clauseOf[j]!]!.sentence === sentence &&
      means(term, 'broken', 'no-power', 'no-bubbles', 'working'),
  );
}

interface Building {
  said: SaidTime;
  from: number;
  to: number;
  since: boolean;
  until: boolean;
  earlier: boolean;
}

/** Day, part of day and clock time, in any order, with small words between. */
function expressionAt(frame: Frame, start: number): TimeMark | null {
  const clause = frame.clauseOf[start]!;
  const building: Building = {
    said: nothingSaid,
    from: start,
    to: start - 1,
    since: false,
    until: false,
    earlier: false,
  };
  let found = false;
  let i = start;
  while (
    i < frame.terms.length &&
    frame.clauseOf[i] === clause &&
    frame.terms[i]!.kind !== 'stop'
  ) {
    const length = partAt(frame, i, building);
    if (length === 0) {
      if (!found && i > start) break;
      if (!isSmall(frame.terms[i])) break;
      i++;
      if (!found && i - start > 2) break;
      continue;
    }
    found = true;
    building.to = i + length - 1;
    i += length;
  }
  if (!found) return null;
  for (let j = start; j <= building.to; j++) {
    const begins = means(frame.terms[j], 'since') || (means(frame.terms[j], 'from') && isOutageSentence(frame, j));
    if (begins) building.since = true;
    if (means(frame.terms[j], 'until') && !means(frame.terms[j], 'since')) building.until = true;
  }
  return finished(frame, building, clause);
}

function finished(
  frame: Frame,
  { said, from, to, since, until, earlier }: Building,
  clause: number,
): TimeMark {
  const { writtenAtMs, greenhouse } = frame.context;
  const written = frame.folded.text.slice(frame.terms[from]!.from, frame.terms[to]!.to);
  const base = { from, to, clause, since, until, written };
  if (earlier) return { ...base, atMs: writtenAtMs, vague: true, askFrom: null };
  return { ...base, ...workOut(said, greenhouse, writtenAtMs) };
}

function isSmall(term: Term | undefined): boolean {
  return means(
    term,
    'at-hour',
    'on-day',
    'place',
    'article',
    'at',
    'since',
    'from',
    'about',
    'until',
  );
}

/** Reads one part of a time expression into `building`; returns how many terms it took. */
function partAt(frame: Frame, i: number, building: Building): number {
  const term = frame.terms[i]!;
  if (frame.taken[i]) return 0;
  return (
    dayAt(frame, i, term, building) ||
    partOfDayAt(frame, i, term, building) ||
    clockAt(frame, i, term, building)
  );
}

function dayAt(frame: Frame, i: number, term: Term, building: Building): number {
  const { greenhouse, writtenAtMs } = frame.context;
  const today = localDateOf(writtenAtMs, greenhouse.timeZone);
  const set = (day: LocalDate, length = 1) => {
    building.said = { ...building.said, day };
    return length;
  };
  if (means(term, 'day-before-yesterday')) return set(plusDays(today, -2));
  if (means(term, 'yesterday')) return set(plusDays(today, -1));
  if (means(term, 'earlier') && !isDuration(frame.terms[i - 1])) {
    building.earlier = true;
    return 1;
  }
  if (means(term, 'today')) return set(today);
  if (means(term, 'tonight')) {
    building.said = { ...building.said, day: today, part: 'night' };
    return 1;
  }
  if (means(term, 'this-night')) {
    const isPast = localTimeOf(writtenAtMs, greenhouse.timeZone).hour < 12;
    building.said = isPast
      ? { ...building.said, part: 'night', lastNight: true }
      : { ...building.said, day: today, part: 'night' };
    return 1;
  }
  if (term.kind === 'word' && term.word.weekday !== null && isWeekday(frame, i, term.text)) {
    const back =
      (localTimeOf(writtenAtMs, greenhouse.timeZone).weekday - term.word.weekday + 7) % 7;
    const said = means(frame.terms[i - 1], 'last');
    building.said = {
      ...building.said,
      weekdayOfToday: back === 0 && !said && !means(frame.terms[i - 1], 'this'),
    };
    return set(plusDays(today, -(back === 0 && said ? 7 : back)));
  }
  return dateAt(frame, i, set);
}

function isDuration(term: Term | undefined): boolean {
  return isMeasure(term) && unitIs(term.measure, 'second', 'minute', 'hour', 'day', 'week');
}

/** `sun` and `sat` are other words too: short forms need something beside them. */
function isWeekday(frame: Frame, i: number, text: string): boolean {
  if (text.length > 4) return true;
  return (
    means(frame.terms[i - 1], 'on-day', 'last', 'this', 'since') ||
    means(frame.terms[i + 1], 'morning', 'evening', 'afternoon', 'night', 'noon', 'at-hour') ||
    frame.terms[i + 1]?.kind === 'clock'
  );
}

/** `3 May`, `May 3rd`, `2027-05-03`, `3.5.2027`. */
function dateAt(frame: Frame, i: number, set: (day: LocalDate, length?: number) => number): number {
  const term = frame.terms[i]!;
  if (term.kind === 'digits') {
    const iso = /^(\d{4})-(\d{2})-(\d{2})$/.exec(term.text);
    const pointed = /^(\d{1,2})\.(\d{1,2})\.(\d{4})$/.exec(term.text);
    const date = iso
      ? term.text
      : pointed
        ? `${pointed[3]!}-${pointed[2]!.padStart(2, '0')}-${pointed[1]!.padStart(2, '0')}`
        : null;
    return date !== null && DateTime.fromISO(date, { zone: 'utc' }).isValid
      ? set(date as LocalDate)
      : 0;
  }
  const [month, number, length] = monthAndDay(frame, i);
  if (month === null || number === null) return 0;
  const year = yearAt(frame, i + length);
  const date = year === null ? latestDate(frame, month, number) : dateOf(year, month, number);
  return DateTime.fromISO(date, { zone: 'utc' }).isValid
    ? set(date, length + (year === null ? 0 : 1))
    : 0;
}

/** `3 May 2027`: a year said after a date. */
function yearAt(frame: Frame, i: number): number | null {
  const term = frame.terms[i];
  if (!isMeasure(term) || term.measure.unit !== null || !term.measure.whole) return null;
  const year = term.measure.values[0]!;
  return year >= 1900 && year < 2200 ? year : null;
}

function dateOf(year: number, month: number, day: number): LocalDate {
  return `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}` as LocalDate;
}

function monthAndDay(frame: Frame, i: number): readonly [number | null, number | null, number] {
  const term = frame.terms[i]!;
  if (isMeasure(term) && term.measure.unit === null && term.measure.whole) {
    let j = i + 1;
    while (j < i + 3 && (isOrdinalMark(frame, j) || means(frame.terms[j], 'of'))) j++;
    const month = frame.terms[j];
    if (month?.kind === 'word' && month.word.month !== null)
      return [month.word.month, term.measure.values[0]!, j - i + 1];
  }
  // `am 6.4.`: the point after it closes no sentence.
  const pointed = isMeasure(term) ? /^(\d{1,2})\.(\d{1,2})$/.exec(term.text) : null;
  if (pointed && means(frame.terms[i - 1], 'on-day') && frame.folded.text[term.to] === '.')
    return [Number(pointed[2]), Number(pointed[1]), 1];
  if (term.kind === 'word' && term.word.month !== null) {
    let j = i + 1;
    if (means(frame.terms[j], 'article')) j++;
    const day = frame.terms[j];
    if (
      isMeasure(day) &&
      day.measure.unit === null &&
      day.measure.whole &&
      day.measure.values[0]! <= 31
    ) {
      return [
        term.word.month,
        day.measure.values[0]!,
        j - i + 1 + (isOrdinalMark(frame, j + 1) ? 1 : 0),
      ];
    }
  }
  return [null, null, 0];
}

function isOrdinalMark(frame: Frame, i: number): boolean {
  const term = frame.terms[i];
  return (
    term?.kind === 'word' &&
    term.glued &&
    frame.lexicon.own.vocabulary.ordinalMarks.includes(term.text)
  );
}

/** The latest such date that has come. */
function latestDate(frame: Frame, month: number, day: number): LocalDate {
  const { greenhouse, writtenAtMs } = frame.context;
  const today = localDateOf(writtenAtMs, greenhouse.timeZone);
  const year = Number(today.slice(0, 4));
  const thisYear = dateOf(year, month, day);
  return thisYear <= today ? thisYear : dateOf(year - 1, month, day);
}

const parts: readonly DayPart[] = ['morning', 'noon', 'afternoon', 'evening', 'night', 'midnight'];

function partOfDayAt(frame: Frame, i: number, term: Term, building: Building): number {
  const part = parts.find((candidate) => means(term, candidate));
  if (!part) return 0;
  const before = frame.terms[i - 1];
  const isLast = means(before, 'last', 'yesterday') && part === 'night';
  const hasDay =
    building.said.day !== null || building.said.minutes !== null || means(before, 'this', 'last');
  const standsAlone =
    part === 'noon' ||
    part === 'midnight' ||
    (term.text.includes(' ') && !means(term, 'greeting', 'filler'));
  if (!hasDay && !standsAlone) return 0;
  if (means(before, 'last') && part !== 'night') {
    const today = localDateOf(frame.context.writtenAtMs, frame.context.greenhouse.timeZone);
    building.said = { ...building.said, part, day: plusDays(today, -1) };
  } else building.said = { ...building.said, part, lastNight: isLast };
  if (building.from === i && means(before, 'this', 'last')) building.from = i - 1;
  return 1;
}

function clockAt(frame: Frame, i: number, term: Term, building: Building): number {
  if (building.said.minutes !== null) return 0;
  const turn = term.kind === 'word' ? term.word.clockTurn : null;
  if (turn !== null) {
    const hour = frame.terms[i + 1];
    if (!isMeasure(hour) || !isHour(hour.measure.values[0]!, hour.measure.whole)) return 0;
    if (hour.measure.unit !== null) return 0;
    return settle(
      frame,
      i,
      2,
      hour.measure.values[0]! * 60 + turn,
      hour.measure.values[0]! <= 12,
      building,
    );
  }
  if (term.kind === 'clock') return settle(frame, i, 1, term.minutes, false, building);
  if (
    term.kind === 'digits' &&
    /^0\d{3}$/.test(term.text) &&
    means(frame.terms[i - 1], 'at-hour')
  ) {
    return settle(
      frame,
      i,
      1,
      Number(term.text.slice(0, 2)) * 60 + Number(term.text.slice(2)),
      false,
      building,
    );
  }
  if (!isMeasure(term)) return 0;
  const { measure } = term;
  const value = measure.values[0]!;
  const marked =
    means(frame.terms[i + 1], 'am', 'pm', 'o-clock') && !means(frame.terms[i + 1], 'ish', 'this');
  const asHour =
    unitIs(measure, 'hour') &&
    term.text.endsWith('h') &&
    means(frame.terms[i - 1], 'at-hour') &&
    value > 0;
  if (measure.unit !== null && !asHour) return 0;
  if (measure.decimals === 2 && (marked || asksForClock(frame, i))) {
    const minute = Math.round((value % 1) * 100);
    if (value >= 0 && value < 24 && minute < 60)
      return settle(frame, i, 1, Math.floor(value) * 60 + minute, false, building);
  }
  if (!isHour(value, measure.whole)) return 0;
  if (!marked && !asHour && !asksForClock(frame, i)) return 0;
  // `18 Uhr` is said by the clock; a bare 18 is the latest that has passed.
  const byClock = value > 12 && means(frame.terms[i + 1], 'o-clock');
  return settle(frame, i, 1, value * 60, !byClock, building);
}

function isHour(value: number, whole: boolean): boolean {
  return whole && value >= 0 && value <= 24;
}

/** `at 8`: a number after such a word is an hour unless a quantity or a name stands before it. */
function asksForClock(frame: Frame, i: number): boolean {
  const before = frame.terms[i - 1];
  // `from 2 to 4`: the end of a time that began.
  if (means(before, 'until') && frame.taken[i - 2] === true && !means(before, 'at-hour'))
    return true;
  if (means(before, 'from') && isOutageSentence(frame, i)) return true;
  if (!means(before, 'at-hour')) return false;
  if (means(before, 'since') && !means(before, 'from')) return true;
  const after = frame.terms[i + 1];
  if (after?.kind === 'measure' && frame.terms[i + 1]!.glued) return false;
  const clause = frame.clauses[frame.clauseOf[i]!]!;
  if (after?.kind === 'mark' && (after.text === '/' || after.text === '-')) return false;
  const subject = frame.terms[i - 2];
  if (i - 2 >= clause.from && (isLabel(subject) || means(subject, 'was', 'now'))) return false;
  const otherNumbers = frame.terms
    .slice(clause.from, clause.to)
    .filter((term, n) => isMeasure(term) && clause.from + n !== i).length;
  if (i - 2 >= clause.from && subject?.kind === 'name' && otherNumbers === 0)
    return saysDeed(frame, clause.from, i);
  // `around 8` is a time only where the amount has been told.
  if (means(before, 'about')) return frame.terms.slice(clause.from, i).some(isMeasure);
  if (isAllButEmpty(frame, clause, i)) return true;
  if (means(before, 'beyond', 'place')) return otherNumbers > 0 || saysDeed(frame, clause.from, i);
  if (means(before, 'link')) return otherNumbers > 0 || saysDeed(frame, clause.from, i);
  return true;
}

/** `…, all at 8`: nothing but the time in a clause that follows another. */
function isAllButEmpty(frame: Frame, clause: Clause, i: number): boolean {
  if (clause.from === 0) return false;
  for (let j = clause.from; j < clause.to; j++) {
    if (
      j !== i &&
      !means(frame.terms[j], 'filler', 'all', 'both', 'at', 'at-hour', 'place', 'article')
    )
      return false;
  }
  return true;
}

function saysDeed(frame: Frame, from: number, to: number): boolean {
  return frame.terms
    .slice(from, to)
    .some((term) =>
      means(
        term,
        'top-up',
        'change',
        'changed-solution',
        'calibrate',
        'broken',
        'working',
        'no-power',
        'pick',
        'did',
        'fill',
        'done',
      ),
    );
}

function settle(
  frame: Frame,
  i: number,
  length: number,
  minutes: number,
  eitherHalf: boolean,
  building: Building,
): number {
  let used = length;
  let minutesAfter = 0;
  if (means(frame.terms[i + used], 'o-clock')) {
    used++;
    // `8 Uhr 15`.
    const next = frame.terms[i + used];
    const isMinute = isMeasure(next) && next.measure.unit === null && next.measure.whole;
    if (isMinute && minutes % 60 === 0 && next.measure.values[0]! < 60) {
      minutesAfter = next.measure.values[0]!;
      used++;
    }
  }
  const after = frame.terms[i + used];
  // `2 Uhr nachts` is before dawn, `11 Uhr nachts` before midnight.
  const isSmallHour = means(after, 'night') && minutes < smallHoursEnd;
  const meridiem =
    means(after, 'am') || (isSmallHour && means(after, 'pm'))
      ? 'am'
      : means(after, 'pm')
        ? 'pm'
        : null;
  if (meridiem !== null) used++;
  building.said = {
    ...building.said,
    minutes: minutes + minutesAfter,
    eitherHalf: eitherHalf && meridiem === null,
    meridiem,
  };
  return used;
}
