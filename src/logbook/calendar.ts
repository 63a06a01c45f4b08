import { daysBetween, type LocalDate, localDayOf, nextDay } from '../greenhouse/local-time.ts';

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
  let day = localDayOf(last?.endMs ?? fromMs, timeZone);
  while (day.fromMs <= toMs) {
    const { date, fromMs: startMs, toMs: endMs } = day;
    days.push({ date, startMs, endMs, dayOfYear: dayOfYearOf(date) });
    day = nextDay(day, timeZone);
  }
  return days;
}

function dayOfYearOf(date: LocalDate): number {
  return daysBetween(date.replace(/-\d\d-\d\d$/, '-01-01') as LocalDate, date) + 1;
}
