import { instantOf, type LocalTime, localDateOf, plusDays } from '../greenhouse/local-time.ts';

const DAY_BEGINS = '07:00' as LocalTime;
const DAY_ENDS = '21:30' as LocalTime;

/** In quiet hours nobody is spoken to: it waits for the morning. */
export function inDaytime(atMs: number, timeZone: string): number {
  const date = localDateOf(atMs, timeZone);
  const beginsMs = instantOf(date, DAY_BEGINS, timeZone);
  if (atMs < beginsMs) return beginsMs;
  if (atMs <= instantOf(date, DAY_ENDS, timeZone)) return atMs;
  return instantOf(plusDays(date, 1), DAY_BEGINS, timeZone);
}
