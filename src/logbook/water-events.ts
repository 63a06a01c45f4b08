import type { WaterEvent } from '../estimation/water-event.ts';
import type { Entry } from '../greenhouse/entry.ts';
import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import { instantOf, type LocalTime } from '../greenhouse/local-time.ts';
import type { System, SystemId } from '../greenhouse/system.ts';
import { type Logbook, liveEntries } from './logbook.ts';
import type { PastRound } from './rounds.ts';
import { unreportedTopUps } from './unreported-top-ups.ts';

const dayMs = 86_400_000;

/** Everything that is known of each system's water, earliest first. */
export function waterEventsOf(
  logbook: Logbook,
  rounds: readonly PastRound[],
  greenhouse: Greenhouse,
  createdAtMs: number,
  nowMs: number,
): ReadonlyMap<SystemId, readonly WaterEvent[]> {
  const { systems, timeZone } = greenhouse;
  const said = new Map(systems.map(({ id }) => [id, saidOf(logbook, id)]));
  const refused = new Map(systems.map(({ id }) => [id, refusedAtMs(logbook, id)]));
  const unsaid = unreportedTopUps(said, refused, rounds, nowMs);
  return new Map(
    systems.map((system) => {
      const { id } = system;
      const events = said.get(id)!;
      const more = [...(unsaid.get(id) ?? []), ...plantings(system, timeZone, createdAtMs)];
      const all = more.length > 0 ? [...events, ...more].toSorted(byTime) : events;
      return [id, all];
    }),
  );
}

function byTime(one: WaterEvent, other: WaterEvent): number {
  return one.atMs - other.atMs;
}

/** "Couldn't do the jars": no top-up then, whatever the round had asked. */
function refusedAtMs(logbook: Logbook, system: SystemId): readonly number[] {
  return liveEntries(logbook, system, 'duty-failed')
    .filter(({ duty }) => duty === 'top-up')
    .map(({ atMs }) => atMs);
}

/** A crop planted this long before the greenhouse was set up is as good as grown by then. */
const grownWithinDays = 90;
const noon = '12:00' as LocalTime;

function plantings(
  { plantedOn, grown = [] }: System,
  timeZone: string,
  createdAtMs: number,
): readonly WaterEvent[] {
  return [...grown.map(({ from }) => from), plantedOn]
    .filter((date) => typeof date === 'string')
    .map((date) => ({
      kind: 'planted',
      atMs: Math.max(instantOf(date, noon, timeZone), createdAtMs - grownWithinDays * dayMs),
    }));
}

function saidOf(logbook: Logbook, system: SystemId): readonly WaterEvent[] {
  return (['level', 'top-up', 'reservoir-change', 'harvest', 'duty-done'] as const)
    .flatMap((quantity) => liveEntries(logbook, system, quantity))
    .toSorted((one, other) => one.atMs - other.atMs || one.no - other.no)
    .flatMap(waterEvent)
    .map(withLevelRead);
}

/** Within this of reading the level off, somebody is still there. */
const sameVisitMs = 3_600_000;

/** A top-up told with what was read off before it and on the same visit, where that was. */
function withLevelRead(event: WaterEvent, i: number, all: readonly WaterEvent[]): WaterEvent {
  if (event.kind !== 'top-up' || event.litres === null) return event;
  let addedL = 0;
  for (let j = i - 1; j >= 0; j -= 1) {
    const earlier = all[j]!;
    if (event.atMs - earlier.atMs > sameVisitMs) return event;
    switch (earlier.kind) {
      case 'level': {
        const { litres, approximate } = earlier;
        return { ...event, read: { litres: litres + addedL, approximate } };
      }
      case 'top-up':
        if (earlier.litres === null) return event;
        addedL += earlier.litres;
        break;
      case 'cut':
        break;
      default:
        return event;
    }
  }
  return event;
}

function waterEvent(entry: Entry): WaterEvent[] {
  const { atMs, value } = entry;
  const approximate = entry.approximate ?? false;
  switch (entry.quantity) {
    case 'level':
      return [{ kind: 'level', atMs, litres: value, approximate }];
    case 'top-up':
      return [{ kind: 'top-up', atMs, litres: value, approximate, askedL: entry.askedL ?? null }];
    case 'reservoir-change':
      return [{ kind: 'reservoir-change', atMs, litres: value }];
    case 'harvest':
      return [{ kind: 'cut', atMs }];
    case 'duty-done':
      return entry.duty === 'top-up'
        ? [{ kind: 'top-up', atMs, litres: null, approximate: true, askedL: entry.askedL ?? null }]
        : [];
    default:
      return [];
  }
}
