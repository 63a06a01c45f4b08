import { type LocalDate, localDateOf, localTimeOf } from '../greenhouse/local-time.ts';

const dayMs = 86_400_000;
const minuteMs = 60_000;
/** More days than this side by side run into each other on a phone. */
const mostTicks = 5;

/**
 * An instant as the greenhouse's wall clock shows it, put where a time axis in UTC expects it: the
 * axis has 24 hours a day, and the hour that comes twice in autumn lies over itself.
 */
export function onWall(atMs: number, timeZone: string): Date {
  return new Date(atMs + localTimeOf(atMs, timeZone).offset * minuteMs);
}

export interface DayTick {
  /** Local midnight, as on the wall. */
  readonly at: Date;
  readonly date: LocalDate;
}

/** Midnights to be named under an axis, evenly apart and few enough to be read. */
export function dayTicks(fromMs: number, toMs: number, timeZone: string): readonly DayTick[] {
  const first = Date.parse(localDateOf(fromMs, timeZone));
  const last = Date.parse(localDateOf(toMs, timeZone));
  const days = (last - first) / dayMs;
  const step = Math.max(1, Math.ceil(days / mostTicks));
  const ticks: DayTick[] = [];
  for (let day = first + step * dayMs; day <= last; day += step * dayMs) {
    const at = new Date(day);
    ticks.push({ at, date: at.toISOString().slice(0, 10) as LocalDate });
  }
  return ticks;
}
