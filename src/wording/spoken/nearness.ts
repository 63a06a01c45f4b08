import { daysBetween, type LocalDate } from '../../greenhouse/local-time.ts';

/** How a day is best named from where the reader stands. */
export type Nearness = 'today' | 'tomorrow' | 'yesterday' | 'weekday' | 'date' | 'date-and-year';

/** Further off than this, the name of a weekday could mean two days. */
const weekdayWithin = 6;

export function nearness(date: LocalDate, today: LocalDate): Nearness {
  const days = daysBetween(today, date);
  if (days === 0) return 'today';
  if (days === 1) return 'tomorrow';
  if (days === -1) return 'yesterday';
  if (Math.abs(days) <= weekdayWithin) return 'weekday';
  return date.slice(0, 4) === today.slice(0, 4) ? 'date' : 'date-and-year';
}
