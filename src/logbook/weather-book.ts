import { type LocalDate, localDateOf } from '../greenhouse/local-time.ts';
import type { WeatherDay } from '../greenhouse/weather.ts';

/** The weather as last told, by date: an observation stands before any forecast. */
export type WeatherBook = ReadonlyMap<LocalDate, WeatherDay>;

export function withWeather(book: WeatherBook, days: readonly WeatherDay[]): WeatherBook {
  if (days.length === 0) return book;
  const next = new Map(book);
  for (const day of days) {
    const known = next.get(day.date);
    if (known?.observed && !day.observed) continue;
    next.set(day.date, day);
  }
  return next;
}

/** Days before the local date of `nowMs` are observed, the others forecast. */
export function isObserved(date: LocalDate, nowMs: number, timeZone: string): boolean {
  return date < localDateOf(nowMs, timeZone);
}
