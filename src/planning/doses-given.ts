import type { Entry } from '../greenhouse/entry.ts';
import type { SystemId } from '../greenhouse/system.ts';
import { type Logbook, liveEntries } from '../logbook/logbook.ts';

/** How long a dose is left to mix before the water is measured again, minutes. Common practice. */
export const DOSE_WAIT = { fromMin: 15, toMin: 30, leastMin: 10 } as const;

export function dosesOf(logbook: Logbook, system: SystemId): readonly Entry[] {
  return liveEntries(logbook, system, 'dose');
}

/** A dose, of one product or of both concentrates, and the readings before and after it. */
export interface MeasuredDose {
  /** Of all products together. */
  readonly mL: number;
  readonly atMs: number;
  readonly before: Entry;
  readonly after: Entry;
}

/** A reading longer before a dose, or longer after it, tells of other things as well. */
const NEAR_MS = 12 * 3_600_000;

/**
 * The doses of certain products, each given, whose effect was measured, earliest first: doses between two readings count
 * as one, and nothing else may have been done in between.
 */
export function measuredDoses(
  logbook: Logbook,
  system: SystemId,
  quantity: 'ph' | 'ec',
  products: readonly string[],
): readonly MeasuredDose[] {
  const readings = liveEntries(logbook, system, quantity);
  const work = (['dose', 'top-up', 'reservoir-change'] as const)
    .flatMap((kind) => liveEntries(logbook, system, kind))
    .toSorted((one, other) => one.atMs - other.atMs || one.no - other.no);
  return readings.slice(1).flatMap((after, i): MeasuredDose[] => {
    const before = readings[i]!;
    const between = work.filter((entry) => isBetween(entry, before, after));
    const last = between.at(-1);
    const given = new Set(between.map(({ product }) => product));
    if (!last || given.size !== products.length) return [];
    if (!products.every((product) => given.has(product))) return [];
    const isNear = last.atMs - before.atMs <= NEAR_MS && after.atMs - last.atMs <= NEAR_MS;
    const isMixed = isMeasuredAfterMixing(last, after);
    if (!isNear || !isMixed) return [];
    const mL = between.reduce((sum, entry) => sum + entry.value, 0);
    return [{ mL, atMs: last.atMs, before, after }];
  });
}

/** Whoever tells dose and effect in one message has waited. */
export function isMeasuredAfterMixing(dose: Entry, reading: Entry): boolean {
  const isOneMessage = dose.source.messageId === reading.source.messageId && dose.no < reading.no;
  return isOneMessage || reading.atMs - dose.atMs >= DOSE_WAIT.leastMin * 60_000;
}

function isBetween(entry: Entry, before: Entry, after: Entry): boolean {
  const isAfter = entry.atMs > before.atMs || (entry.atMs === before.atMs && entry.no > before.no);
  const isBefore = entry.atMs < after.atMs || (entry.atMs === after.atMs && entry.no < after.no);
  return isAfter && isBefore;
}
