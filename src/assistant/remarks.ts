import type { Entry } from '../greenhouse/entry.ts';
import type { System } from '../greenhouse/system.ts';
import { liveEntries } from '../logbook/logbook.ts';
import type { Remark } from './replies/reply.ts';
import type { Standing } from './standing.ts';
import { wantedRange } from './wanted-range.ts';

/** What a receipt adds about what was just logged. */
export function remarksOn(
  logged: readonly Entry[],
  before: Standing,
  after: Standing,
): readonly Remark[] {
  return logged.flatMap((entry) => {
    const system = after.greenhouse.systems.find(({ id }) => id === entry.system);
    if (!system) return [];
    return [...outsideRange(entry, system), ...farFromExpected(entry, system, before)];
  });
}

function outsideRange(entry: Entry, system: System): Remark[] {
  const range = entry.quantity === 'level' ? null : wantedRange(system, entry.quantity);
  if (!range || (entry.value >= range[0] && entry.value <= range[1])) return [];
  return [{ kind: 'outside-range', entry, lowest: range[0], highest: range[1] }];
}

/** Common practice: how far a reading may move in a day, and however short the time between. */
const usualMove: Partial<Record<Entry['quantity'], { perDay: number; atOnce: number }>> = {
  ph: { perDay: 0.6, atOnce: 0.6 },
  ec: { perDay: 0.5, atOnce: 0.5 },
  'water-temperature': { perDay: 6, atOnce: 8 },
};
const dayMs = 86_400_000;

function farFromExpected(entry: Entry, _system: System, before: Standing): Remark[] {
  const usual = usualMove[entry.quantity];
  if (!usual) return [];
  const earlier = liveEntries(before.logbook, entry.system, entry.quantity).findLast(
    (other) => other.atMs <= entry.atMs,
  );
  if (!earlier || wasDosedBetween(before, entry, earlier.atMs)) return [];
  const allowed = usual.atOnce + (usual.perDay * (entry.atMs - earlier.atMs)) / dayMs;
  if (Math.abs(entry.value - earlier.value) <= allowed) return [];
  return [{ kind: 'far-from-expected', entry, expected: earlier.value }];
}

function wasDosedBetween(before: Standing, entry: Entry, sinceMs: number): boolean {
  return (['dose', 'reservoir-change', 'top-up'] as const).some((quantity) =>
    liveEntries(before.logbook, entry.system, quantity).some(
      (other) => other.atMs >= sinceMs && other.atMs <= entry.atMs,
    ),
  );
}
