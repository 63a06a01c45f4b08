import type { LocalDate } from '../../greenhouse/local-time.ts';
import type { Speaker } from '../spoken/speaker.ts';

/** `today`, `Thursday`, `12 May`. */
export function dayText(date: LocalDate, s: Speaker): string {
  const near = s.nearness(date);
  switch (near) {
    case 'today':
    case 'tomorrow':
    case 'yesterday':
      return near;
    case 'weekday':
      return s.weekday(date);
    case 'date':
      return s.dayAndMonth(date);
    case 'date-and-year':
      return s.dayMonthYear(date);
  }
}

/** `today`, `on Thursday`, `on 12 May`. */
export function onDay(date: LocalDate, s: Speaker): string {
  const near = s.nearness(date);
  const isNamed = near === 'today' || near === 'tomorrow' || near === 'yesterday';
  return isNamed ? near : `on ${dayText(date, s)}`;
}

/** When a duty is due: `on Thursday`; one that is late is for today: `today, due since 5 May`. */
export function whenDue(date: LocalDate, s: Speaker): string {
  return date < s.today ? `today, due since ${dayText(date, s)}` : onDay(date, s);
}

/** `at 08:20`, `yesterday at 18:00`, `on Saturday at 21:00`. */
export function atTime(atMs: number, s: Speaker): string {
  const date = s.dateOf(atMs);
  const clock = `at ${s.clock(atMs)}`;
  return date === s.today ? clock : `${onDay(date, s)} ${clock}`;
}

/** The same with `today` said, for what stands by itself: `today at 08:20`. */
export function dayAndTime(atMs: number, s: Speaker): string {
  return `${onDay(s.dateOf(atMs), s)} at ${s.clock(atMs)}`;
}

/** `every day`, `every 5 days`. */
export function everyDays(days: number): string {
  return days === 1 ? 'every day' : `every ${days} days`;
}
