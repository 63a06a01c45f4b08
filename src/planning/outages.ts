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
  return allOutages(logbook, systems).filter(({ untilMs }) => untilMs === null);
}

/** An outage, over or not. */
export interface Outage extends OpenOutage {
  /** null: not back yet. */
  readonly untilMs: number | null;
}

/** Every outage of the log, earliest first; told by several, or again before it was over, it is one. */
export function allOutages(logbook: Logbook, systems: readonly SystemId[]): readonly Outage[] {
  const told = [null, ...systems]
    .flatMap((system) => liveEntries(logbook, system, 'outage'))
    .map((entry): Outage => {
      const outage = { entry, of: entry.of ?? 'power', system: entry.system, sinceMs: entry.atMs };
      return { ...outage, untilMs: restoredMs(outage, logbook) };
    })
    .toSorted((one, other) => one.sinceMs - other.sinceMs);
  return told.filter(
    (outage, i) =>
      !told
        .slice(0, i)
        .some(
          (earlier) =>
            earlier.of === outage.of &&
            covers(earlier, outage) &&
            outage.sinceMs <= (earlier.untilMs ?? Number.POSITIVE_INFINITY),
        ),
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

/** When it came back; null: not yet. */
function restoredMs(outage: OpenOutage, logbook: Logbook): number | null {
  const places = outage.system === null ? [null] : [outage.system, null];
  const back = places
    .flatMap((place) => liveEntries(logbook, place, 'restored'))
    .filter(({ of, atMs }) => (of ?? 'power') === outage.of && atMs >= outage.sinceMs);
  return back.length === 0 ? null : Math.min(...back.map(({ atMs }) => atMs));
}
