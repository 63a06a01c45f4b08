import type { LocalDate } from '../../greenhouse/local-time.ts';
import type { Speaker } from '../spoken/speaker.ts';

/** `heute`, `Donnerstag`, `12. Mai`. */
export function dayText(date: LocalDate, s: Speaker): string {
  switch (s.nearness(date)) {
    case 'today':
      return 'heute';
    case 'tomorrow':
      return 'morgen';
    case 'yesterday':
      return 'gestern';
    case 'weekday':
      return s.weekday(date);
    case 'date':
      return s.dayAndMonth(date);
    case 'date-and-year':
      return s.dayMonthYear(date);
  }
}

/** `heute`, `am Donnerstag`, `am 12. Mai`. */
export function onDay(date: LocalDate, s: Speaker): string {
  return isNamed(date, s) ? dayText(date, s) : `am ${dayText(date, s)}`;
}

/** `seit gestern`, `seit Samstag`, `seit dem 12. Mai`. */
export function sinceDay(date: LocalDate, s: Speaker): string {
  return isNamed(date, s) || s.nearness(date) === 'weekday'
    ? `seit ${dayText(date, s)}`
    : `seit dem ${dayText(date, s)}`;
}

/** `bis morgen`, `bis Donnerstag`, `bis zum 12. Mai`. */
export function untilDay(date: LocalDate, s: Speaker): string {
  return isNamed(date, s) || s.nearness(date) === 'weekday'
    ? `bis ${dayText(date, s)}`
    : `bis zum ${dayText(date, s)}`;
}

/** When a duty is due: `am Donnerstag`; one that is late is for today: `heute, fällig seit dem 5. Mai`. */
export function whenDue(date: LocalDate, s: Speaker): string {
  return date < s.today ? `heute, fällig ${sinceDay(date, s)}` : onDay(date, s);
}

/** `um 08:20`, `gestern um 18:00`, `am Samstag um 21:00`. */
export function atTime(atMs: number, s: Speaker): string {
  const date = s.dateOf(atMs);
  const clock = `um ${s.clock(atMs)}`;
  return date === s.today ? clock : `${onDay(date, s)} ${clock}`;
}

/** The same with `heute` said, for what stands by itself: `heute um 08:20`. */
export function dayAndTime(atMs: number, s: Speaker): string {
  return `${onDay(s.dateOf(atMs), s)} um ${s.clock(atMs)}`;
}

/** `jeden Tag`, `alle 5 Tage`. */
export function everyDays(days: number): string {
  return days === 1 ? 'jeden Tag' : `alle ${days} Tage`;
}

function isNamed(date: LocalDate, s: Speaker): boolean {
  const near = s.nearness(date);
  return near === 'today' || near === 'tomorrow' || near === 'yesterday';
}
