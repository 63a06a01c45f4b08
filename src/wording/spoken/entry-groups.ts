import type { Entry } from '../../greenhouse/entry.ts';
import type { SystemId } from '../../greenhouse/system.ts';

/** Entries that are told on one line. */
export interface EntryGroup {
  readonly system: SystemId | null;
  /** null: just now, not worth saying. */
  readonly atMs: number | null;
  readonly entries: readonly Entry[];
}

/** What was said within so short a time is as good as now. */
const justNowMs = 5 * 60_000;
const minuteMs = 60_000;

/** Parts entries by system and by the time that has to be told, in the order in which they came. */
export function entryGroups(entries: readonly Entry[], nowMs: number): readonly EntryGroup[] {
  const groups: { system: SystemId | null; atMs: number | null; entries: Entry[] }[] = [];
  for (const entry of entries) {
    const atMs = Math.abs(nowMs - entry.atMs) <= justNowMs ? null : toTheMinute(entry.atMs);
    const group = groups.find((other) => other.system === entry.system && other.atMs === atMs);
    if (group) group.entries.push(entry);
    else groups.push({ system: entry.system, atMs, entries: [entry] });
  }
  return groups;
}

function toTheMinute(atMs: number): number {
  return Math.floor(atMs / minuteMs) * minuteMs;
}
