import { DateTime } from 'luxon';
import { type LocalDate, localDateOf, localTimeOf } from '../../greenhouse/local-time.ts';
import { type Frame, isMeasure } from '../reading/frame.ts';
import { isMark, means } from '../reading/term.ts';

/** `3 May`, `May 3rd`, `2027-05-03`, `3.5.2027`. */
export function dateAt(
  frame: Frame,
  i: number,
  set: (day: LocalDate, length?: number) => number,
): number {
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
  const longAgo = pastYearAt(frame, i);
  if (longAgo !== null) return set(dateOf(longAgo, 7, 1));
  const [month, number, length] = monthAndDay(frame, i);
  if (month === null) {
    const day = dayOfMonthAt(frame, i);
    if (day !== null) return set(day, isOrdinalMark(frame, i + 1) ? 2 : 1);
  }
  if (month === null || number === null) return 0;
  const year = yearAt(frame, i + length);
  const date = year === null ? latestDate(frame, month, number) : dateOf(year, month, number);
  return DateTime.fromISO(date, { zone: 'utc' }).isValid
    ? set(date, length + (year === null ? 0 : 1))
    : 0;
}

/** `in 1995`, `im Jahr 1995`: a year that is over, said by itself. */
function pastYearAt(frame: Frame, i: number): number | null {
  const year = yearAt(frame, i);
  if (year === null || ![i - 1, i - 2].some((j) => means(frame.terms[j], 'place'))) return null;
  const { writtenAtMs, greenhouse } = frame.context;
  return year < localTimeOf(writtenAtMs, greenhouse.timeZone).year ? year : null;
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
  const stroke = dayAndMonthByStroke(frame, i);
  if (stroke) return stroke;
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

/** `on 2/5`: the day first, as the world writes it; the month first where America does. */
function dayAndMonthByStroke(frame: Frame, i: number): readonly [number, number, number] | null {
  const [first, stroke, second] = [frame.terms[i], frame.terms[i + 1], frame.terms[i + 2]];
  if (!means(frame.terms[i - 1], 'on-day', 'since') || !isMark(stroke, '/') || !second?.glued)
    return null;
  if (!isMeasure(first) || !isMeasure(second) || !first.measure.whole || !second.measure.whole)
    return null;
  const [a, b] = [first.measure.values[0]!, second.measure.values[0]!];
  const isMonthFirst = frame.context.greenhouse.timeZone.startsWith('America/');
  const [month, day] = isMonthFirst ? [a, b] : [b, a];
  return month <= 12 && day <= 31 ? [month, day, 3] : null;
}

/** `on the 2nd`, `am 2.`: the latest such day that has come. */
function dayOfMonthAt(frame: Frame, i: number): LocalDate | null {
  const term = frame.terms[i];
  if (!isMeasure(term) || !term.measure.whole || term.measure.unit !== null) return null;
  const onThe =
    isOrdinalMark(frame, i + 1) &&
    means(frame.terms[i - 1], 'article') &&
    means(frame.terms[i - 2], 'on-day', 'since');
  if (!onThe && !isPointedDay(frame, i)) return null;
  const day = term.measure.values[0]!;
  const { greenhouse, writtenAtMs } = frame.context;
  const today = localTimeOf(writtenAtMs, greenhouse.timeZone);
  const inMonth = (back: number) => today.startOf('month').minus({ months: back });
  const month = [0, 1, 2].map(inMonth).find((start) => {
    const fits = day >= 1 && day <= (start.daysInMonth ?? 0);
    return fits && start.set({ day }).toISODate()! <= today.toISODate()!;
  });
  return month ? (month.set({ day }).toISODate() as LocalDate) : null;
}

/** `am 10.`, where a point makes an ordinal. */
function isPointedDay(frame: Frame, i: number): boolean {
  const { text, to } = frame.terms[i]!;
  return (
    frame.lexicon.own.vocabulary.ordinalMarks.includes('.') &&
    /^\d{1,2}$/.test(text) &&
    means(frame.terms[i - 1], 'on-date') &&
    frame.folded.text[to] === '.'
  );
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
