import { DateTime } from 'luxon';
import type { LocalDate } from '../greenhouse/local-time.ts';

/** The greenhouse's local days, without gaps: each from its first instant to the next day's. */
export interface CalendarDay {
  readonly date: LocalDate;
  readonly startMs: number;
  readonly endMs: number;
  /** 1 to 366. */
  readonly dayOfYear: number;
}

export type Calendar = readonly CalendarDay[];

/** The calendar with days added at its ends until both instants are covered; the same where they are. */
export function calendarUntil(
  calendar: Calendar,
  timeZone: string,
  fromMs: number,
  toMs: number,
): Calendar {
  const [first] = calendar;
  const last = calendar.at(-1);
  if (first && first.startMs > fromMs) return calendarUntil([], timeZone, fromMs, toMs);
  if (last && last.endMs > toMs) return calendar;
  const days = [...calendar];
  let start = DateTime.fromMillis(last?.endMs ?? fromMs, { zone: timeZone }).startOf('day');
  while (start.toMillis() <= toMs) {
    const end = start.plus({ days: 1 }).startOf('day');
    days.push({
      date: start.toISODate() as LocalDate,
      startMs: start.toMillis(),
      endMs: end.toMillis(),
      dayOfYear: start.ordinal,
    });
    start = end;
  }
  return days;
}
