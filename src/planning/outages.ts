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

/** What is out as the log stands, earliest first. */
export function openOutages(logbook: Logbook, systems: readonly SystemId[]): readonly OpenOutage[] {
  return [null, ...systems]
    .flatMap((system) => liveEntries(logbook, system, 'outage'))
    .map((entry) => ({
      entry,
      of: entry.of ?? 'power',
      system: entry.system,
      sinceMs: entry.atMs,
    }))
    .filter((outage) => !isRestored(outage, logbook))
    .toSorted((one, other) => one.sinceMs - other.sinceMs);
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
  return ended.at(-1) ?? null;
}

function isRestored(outage: OpenOutage, logbook: Logbook): boolean {
  const places = outage.system === null ? [null] : [outage.system, null];
  return places.some((place) =>
    liveEntries(logbook, place, 'restored').some(
      (entry) => (entry.of ?? 'power') === outage.of && entry.atMs >= outage.sinceMs,
    ),
  );
}
