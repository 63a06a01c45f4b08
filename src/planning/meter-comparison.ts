import type { Entry } from '../greenhouse/entry.ts';
import { type Logbook, liveEntries } from '../logbook/logbook.ts';

/** Readings so close together were of the same water. */
const SAME_WATER_MS = 60 * 60_000;
/** How far two meters in order may be apart. Common practice. */
const ALIKE_PH = 0.3;
const ALIKE_EC_SHARE = 0.1;
const ALIKE_EC_MS_PER_CM = 0.1;

/** A reading by another meter, of the same water, that contradicts this one; null: none. */
export function contradictedBy(entry: Entry, logbook: Logbook): Entry | null {
  return otherMeters(entry, logbook).find((other) => !areAlike(entry, other)) ?? null;
}

/** A reading by another meter that bears this one out: then it is the water, not the meter. */
export function borneOutBy(entry: Entry, logbook: Logbook): Entry | null {
  if (contradictedBy(entry, logbook)) return null;
  return otherMeters(entry, logbook)[0] ?? null;
}

function otherMeters(entry: Entry, logbook: Logbook): readonly Entry[] {
  const { probe } = entry;
  if (probe === undefined) return [];
  return liveEntries(logbook, entry.system, entry.quantity).filter(
    (other) =>
      other.probe !== undefined &&
      other.probe !== probe &&
      Math.abs(other.atMs - entry.atMs) <= SAME_WATER_MS,
  );
}

function areAlike(one: Entry, other: Entry): boolean {
  const apart = Math.abs(one.value - other.value);
  if (one.quantity === 'ph') return apart <= ALIKE_PH;
  const most = Math.max(ALIKE_EC_MS_PER_CM, ALIKE_EC_SHARE * Math.max(one.value, other.value));
  return apart <= most;
}
