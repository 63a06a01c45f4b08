import type { DayDriver } from '../estimation/day-driver.ts';
import { dayDrivers } from '../estimation/day-drivers.ts';
import type { WaterBelief } from '../estimation/water-belief.ts';
import type { WaterEvent } from '../estimation/water-event.ts';
import { observe } from '../estimation/water-observe.ts';
import { startBelief } from '../estimation/water-start.ts';
import type { WaterSystem } from '../estimation/water-system.ts';
import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import { daysBetween } from '../greenhouse/local-time.ts';
import type { System, SystemId } from '../greenhouse/system.ts';
import { type Calendar, calendarUntil } from './calendar.ts';
import type { Logbook } from './logbook.ts';
import type { PastRound } from './rounds.ts';
import { waterEventsOf } from './water-events.ts';
import type { WeatherBook } from './weather-book.ts';

/** What is believed of every system's water: folded from the log, and made again from it at will. */
export interface WaterFold {
  readonly greenhouse: Greenhouse | null;
  readonly weather: WeatherBook;
  readonly calendar: Calendar;
  readonly drivers: readonly DayDriver[];
  readonly systems: ReadonlyMap<SystemId, SystemFold>;
}

interface SystemFold {
  readonly system: System;
  readonly logbook: Logbook;
  readonly rounds: readonly PastRound[];
  readonly events: readonly WaterEvent[];
  /** The belief before any event, then one after each event that is still kept, earliest first. */
  readonly checkpoints: readonly Checkpoint[];
}

interface Checkpoint {
  readonly eventsFolded: number;
  readonly belief: WaterBelief;
}

export interface WaterSources {
  readonly greenhouse: Greenhouse;
  readonly createdAtMs: number;
  readonly logbook: Logbook;
  readonly rounds: readonly PastRound[];
  readonly weather: WeatherBook;
}

export const emptyWaterFold: WaterFold = {
  greenhouse: null,
  weather: new Map(),
  calendar: [],
  drivers: [],
  systems: new Map(),
};

const dayMs = 86_400_000;
/** The weather's spell is known from the weeks before. */
const daysBefore = 21;
export const horizonDays = 62;
/** Beliefs are kept after each of the latest events, and after every tenth before. */
const checkpointsKeptWhole = 30;
const sparseEvery = 10;

/** The fold brought up to its sources at `nowMs`: from the last checkpoint that still holds. */
export function refolded(fold: WaterFold, sources: WaterSources, nowMs: number): WaterFold {
  const { greenhouse, createdAtMs, weather, logbook, rounds } = sources;
  const calendar = calendarUntil(
    fold.calendar,
    greenhouse.timeZone,
    startOf(logbook, createdAtMs) - daysBefore * dayMs,
    nowMs + horizonDays * dayMs,
  );
  const isWeatherTheSame =
    calendar === fold.calendar && weather === fold.weather && greenhouse === fold.greenhouse;
  const drivers = isWeatherTheSame ? fold.drivers : driversOf(calendar, greenhouse, weather);
  const changedFromMs = drivers === fold.drivers ? Infinity : firstChangeMs(fold.drivers, drivers);
  const systems = new Map(
    greenhouse.systems.map((system): [SystemId, SystemFold] => {
      const before = fold.systems.get(system.id);
      const known = before?.system === system ? before : undefined;
      const isLogTheSame = known?.logbook === logbook && known.rounds === rounds;
      const events = isLogTheSame ? known.events : waterEventsOf(logbook, rounds, system.id);
      const startMs = Math.min(createdAtMs, events[0]?.atMs ?? createdAtMs);
      const checkpoints = foldOn(known, system, events, drivers, startMs, changedFromMs);
      return [system.id, { system, logbook, rounds, events, checkpoints }];
    }),
  );
  return { greenhouse, weather, calendar, drivers, systems };
}

/** The earliest instant that anything is told of. */
function startOf(logbook: Logbook, createdAtMs: number): number {
  let earliestMs = createdAtMs;
  for (const [first] of logbook.shelves.values()) {
    if (first && first.atMs < earliestMs) earliestMs = first.atMs;
  }
  return earliestMs;
}

/** The latest belief of a system that holds at `atMs`: all that was observed before it. */
export function beliefOf(fold: WaterFold, system: SystemId): WaterBelief {
  const latest = fold.systems.get(system)?.checkpoints.at(-1);
  if (!latest) throw new RangeError(`no water is folded for system ${system}`);
  return latest.belief;
}

/** The latest events of a system, each with what was believed before it, earliest first. */
export function latestSteps(
  fold: WaterFold,
  system: SystemId,
): readonly { readonly before: WaterBelief; readonly event: WaterEvent }[] {
  const { checkpoints, events } = fold.systems.get(system) ?? { checkpoints: [], events: [] };
  return checkpoints.flatMap(({ eventsFolded, belief }, i) => {
    const isNext = checkpoints[i + 1]?.eventsFolded === eventsFolded + 1;
    return isNext ? [{ before: belief, event: events[eventsFolded]! }] : [];
  });
}

/** What the estimate needs to know of a system. */
export function waterSystemOf(system: System): WaterSystem {
  const { brimL, lowL, crop, plants, method } = system;
  return { brimL, lowL, crop, plants, filledToBrim: method !== 'non-circulating' };
}

function driversOf(
  calendar: Calendar,
  greenhouse: Greenhouse,
  weather: WeatherBook,
): readonly DayDriver[] {
  const days = calendar.map(({ date, startMs, endMs, dayOfYear }) => {
    const told = weather.get(date);
    return {
      startMs,
      endMs,
      dayOfYear,
      weather: told
        ? {
            tMinC: told.tMinC,
            tMaxC: told.tMaxC,
            leadDays: told.observed ? null : daysBetween(told.toldOn, date),
          }
        : null,
    };
  });
  return dayDrivers(greenhouse.latitude, days);
}

function firstChangeMs(before: readonly DayDriver[], after: readonly DayDriver[]): number {
  for (const [position, driver] of after.entries()) {
    const known = before[position];
    if (known?.etoMm !== driver.etoMm || known.etoLogSd !== driver.etoLogSd) return driver.startMs;
  }
  return Number.POSITIVE_INFINITY;
}

function foldOn(
  known: SystemFold | undefined,
  system: System,
  events: readonly WaterEvent[],
  drivers: readonly DayDriver[],
  startMs: number,
  changedFromMs: number,
): readonly Checkpoint[] {
  const waterSystem = waterSystemOf(system);
  const start: Checkpoint = { eventsFolded: 0, belief: startBelief(waterSystem, startMs) };
  const same = sameEvents(known?.events ?? [], events);
  const holding = (known?.checkpoints ?? []).filter(
    ({ eventsFolded, belief }) => eventsFolded <= same && belief.atMs <= changedFromMs,
  );
  const isFromStart = holding[0] !== undefined && holding[0].belief.atMs <= startMs;
  const checkpoints = isFromStart ? holding : [start];
  let { eventsFolded, belief } = checkpoints.at(-1)!;
  while (eventsFolded < events.length) {
    belief = observe(waterSystem, belief, events[eventsFolded]!, drivers);
    eventsFolded += 1;
    checkpoints.push({ eventsFolded, belief });
  }
  return thinned(checkpoints);
}

/** How many events at the start are the same in both. */
function sameEvents(before: readonly WaterEvent[], after: readonly WaterEvent[]): number {
  let same = 0;
  while (same < before.length && same < after.length && isSame(before[same]!, after[same]!)) {
    same += 1;
  }
  return same;
}

function isSame(one: WaterEvent, other: WaterEvent): boolean {
  if (one.kind !== other.kind || one.atMs !== other.atMs) return false;
  if (one.kind === 'cut' || other.kind === 'cut') return true;
  if (one.kind === 'unreported-top-up' || other.kind === 'unreported-top-up') {
    return 'chance' in one && 'chance' in other && one.chance === other.chance;
  }
  if (one.litres !== other.litres) return false;
  if (one.kind === 'reservoir-change' || other.kind === 'reservoir-change') return true;
  if (one.approximate !== other.approximate) return false;
  return one.kind === 'level' || (other.kind === 'top-up' && one.askedL === other.askedL);
}

function thinned(checkpoints: readonly Checkpoint[]): readonly Checkpoint[] {
  const old = checkpoints.length - checkpointsKeptWhole;
  return checkpoints.filter(
    ({ eventsFolded }, position) => position >= old || eventsFolded % sparseEvery === 0,
  );
}
