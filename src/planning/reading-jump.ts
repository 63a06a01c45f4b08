import type { Entry } from '../greenhouse/entry.ts';
import { type Logbook, liveEntries } from '../logbook/logbook.ts';

/** Common practice: how far a reading may move in a day, and however short the time between. */
const USUAL_MOVE: Partial<Record<Entry['quantity'], { perDay: number; atOnce: number }>> = {
  ph: { perDay: 0.6, atOnce: 0.6 },
  ec: { perDay: 0.5, atOnce: 0.5 },
  'water-temperature': { perDay: 6, atOnce: 8 },
};
const DAY_MS = 86_400_000;

/**
 * The reading before this one, where this one is farther from it than the time between allows and
 * nothing was done that would move it; null where it is credible.
 */
export function jumpedFrom(entry: Entry, logbook: Logbook): Entry | null {
  const usual = USUAL_MOVE[entry.quantity];
  if (!usual) return null;
  const earlier = liveEntries(logbook, entry.system, entry.quantity).findLast(
    (other) =>
      other.no !== entry.no &&
      (other.atMs < entry.atMs || (other.atMs === entry.atMs && other.no < entry.no)),
  );
  if (!earlier || wasWorkedOn(entry, earlier.atMs, logbook)) return null;
  const allowed = usual.atOnce + (usual.perDay * (entry.atMs - earlier.atMs)) / DAY_MS;
  return Math.abs(entry.value - earlier.value) > allowed ? earlier : null;
}

function wasWorkedOn(entry: Entry, sinceMs: number, logbook: Logbook): boolean {
  return (['dose', 'reservoir-change', 'top-up'] as const).some((quantity) =>
    liveEntries(logbook, entry.system, quantity).some(
      (other) => other.atMs >= sinceMs && other.atMs <= entry.atMs,
    ),
  );
}
