import type { Entry, Supply } from '../greenhouse/entry.ts';
import type { SystemId } from '../greenhouse/system.ts';
import { type Logbook, liveEntries } from '../logbook/logbook.ts';

/** Something that has failed and is not back yet. */
export interface OpenOutage {
  readonly entry: Entry;
  readonly of: Supply;
  /** null: everywhere. */
  readonly system: SystemId | null;
  readonly sinceMs: number;
}

/** What is out as the log stands, earliest first; told by several, it is one. */
export function openOutages(logbook: Logbook, systems: readonly SystemId[]): readonly OpenOutage[] {
  const all = [null, ...systems]
    .flatMap((system) => liveEntries(logbook, system, 'outage'))
    .map((entry) => ({
      entry,
      of: entry.of ?? 'power',
      system: entry.system,
      sinceMs: entry.atMs,
    }))
    .filter((outage) => !isRestored(outage, logbook))
    .toSorted((one, other) => one.sinceMs - other.sinceMs);
  return all.filter(
    (outage, i) =>
      !all.slice(0, i).some((earlier) => earlier.of === outage.of && covers(earlier, outage)),
  );
}

function covers({ system }: OpenOutage, other: OpenOutage): boolean {
  return system === null || system === other.system;
}

/** The outage that a `restored` ends; null: none was logged. */
export function endedBy(restored: Entry, logbook: Logbook): Entry | null {
  const places = restored.system === null ? [null] : [restored.system, null];
  const ended = places
    .flatMap((place) => liveEntries(logbook, place, 'outage'))
    .filter(
      (entry) => (entry.of ?? 'power') === (restored.of ?? 'power') && entry.atMs <= restored.atMs,
    )
    .toSorted((one, other) => one.atMs - other.atMs);
  // Told by several since it last came back, it began with the first.
  const backMs = places
    .flatMap((place) => liveEntries(logbook, place, 'restored'))
    .filter(({ no, of, atMs }) => no !== restored.no && of === restored.of && atMs <= restored.atMs)
    .reduce((latest, { atMs }) => Math.max(latest, atMs), Number.NEGATIVE_INFINITY);
  return ended.find(({ atMs }) => atMs > backMs) ?? ended.at(-1) ?? null;
}

function isRestored(outage: OpenOutage, logbook: Logbook): boolean {
  const places = outage.system === null ? [null] : [outage.system, null];
  return places.some((place) =>
    liveEntries(logbook, place, 'restored').some(
      (entry) => (entry.of ?? 'power') === outage.of && entry.atMs >= outage.sinceMs,
    ),
  );
}
