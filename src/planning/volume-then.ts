import type { SystemId } from '../greenhouse/system.ts';
import { type Logbook, liveEntries } from '../logbook/logbook.ts';

const DAY_MS = 86_400_000;

/**
 * Litres that were in a system some days ago: what is there now, with the days' use put back and what
 * was added since taken out. Rough, but a dose's effect is judged by it to no more than that.
 */
export function litresThen(
  system: { readonly id: SystemId; readonly brimL: number; readonly lowL: number },
  logbook: Logbook,
  present: { readonly litres: number; readonly usePerDayL: number; readonly atMs: number },
  thenMs: number,
): number {
  const change = liveEntries(logbook, system.id, 'reservoir-change').find((e) => e.atMs >= thenMs);
  if (change) return system.brimL;
  const added = liveEntries(logbook, system.id, 'top-up')
    .filter(({ atMs }) => atMs >= thenMs && atMs <= present.atMs)
    .reduce((sum, entry) => sum + entry.value, 0);
  const used = (present.usePerDayL * (present.atMs - thenMs)) / DAY_MS;
  const least = Math.min(system.lowL, present.litres);
  return Math.min(system.brimL, Math.max(least, present.litres + used - added));
}
