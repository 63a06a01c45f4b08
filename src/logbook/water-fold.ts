import type { DayDriver } from '../estimation/day-driver.ts';
import { dayDrivers } from '../estimation/day-drivers.ts';
import type { WaterBelief } from '../estimation/water-belief.ts';
import type { WaterEvent } from '../estimation/water-event.ts';
import { observe } from '../estimation/water-observe.ts';
import { plainPrior, priorFrom, type WaterPrior } from '../estimation/water-prior.ts';
import { startBelief } from '../estimation/water-start.ts';
import type { WaterSystem } from '../estimation/water-system.ts';
import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import { daysBetween } from '../greenhouse/local-time.ts';
import type { System, SystemId } from '../greenhouse/system.ts';
import { type Calendar, calendarUntil } from './calendar.ts';
import { emptyLogbook, type Logbook } from './logbook.ts';
import type { PastRound } from './rounds.ts';
import { isOver } from './unreported-top-ups.ts';
import { waterEventsOf } from './water-events.ts';
import type { WeatherBook } from './weather-book.ts';

/** What is believed of every system's water: folded from the log, and made again from it at will. */
export interface WaterFold {
  readonly greenhouse: Greenhouse | null;
  readonly weather: WeatherBook;
  readonly logbook: Logbook;
  readonly rounds: readonly PastRound[];
  /** Whether the day of the latest round was over. */
  readonly isRoundOver: boolean;
  readonly events: SystemEvents;
  readonly calendar: Calendar;
  readonly drivers: readonly DayDriver[];
  readonly systems: ReadonlyMap<SystemId, SystemFold>;
}

type SystemEvents = ReadonlyMap<SystemId, readonly WaterEvent[]>;

interface SystemFold {
  readonly system: System;
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
  logbook: emptyLogbook,
  rounds: [],
  isRoundOver: false,
  events: new Map(),
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
  const latest = rounds.at(-1);
  const isRoundOver = latest !== undefined && isOver(latest, nowMs);
  const isLogTheSame =
    greenhouse === fold.greenhouse &&
    logbook === fold.logbook &&
    rounds === fold.rounds &&
    isRoundOver === fold.isRoundOver;
  const events = isLogTheSame
    ? fold.events
    : waterEventsOf(logbook, rounds, greenhouse, createdAtMs, nowMs);
  const calendar = calendarUntil(
    fold.calendar,
    greenhouse.timeZone,
    startOf(events, createdAtMs) - daysBefore * dayMs,
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
      const systemEvents = events.get(system.id) ?? [];
      const startMs = startOfSystem(systemEvents, createdAtMs);
      const start = () =>
        startBelief(
          waterSystemOf(system),
          startMs,
          sharedPrior(greenhouse, events, drivers, createdAtMs, startMs),
        );
      const checkpoints = foldOn(
        known,
        system,
        systemEvents,
        drivers,
        startMs,
        start,
        changedFromMs,
      );
      return [system.id, { system, events: systemEvents, checkpoints }];
    }),
  );
  return { greenhouse, weather, logbook, rounds, isRoundOver, events, calendar, drivers, systems };
}

/** Of a system that was there from the first day something is heard within this time. */
const firstHeardDays = 21;

/** When the fold of a system begins: with the greenhouse, or later where it joined later. */
function startOfSystem(events: readonly WaterEvent[], createdAtMs: number): number {
  const firstMs = events[0]?.atMs ?? createdAtMs;
  const isNewcomer = firstMs > createdAtMs + firstHeardDays * dayMs;
  return isNewcomer ? firstMs : Math.min(createdAtMs, firstMs);
}

/** What the systems that were there before `startMs` had shown by then. */
function sharedPrior(
  greenhouse: Greenhouse,
  events: SystemEvents,
  drivers: readonly DayDriver[],
  createdAtMs: number,
  startMs: number,
): WaterPrior {
  if (startMs <= createdAtMs) return plainPrior;
  const peers = greenhouse.systems.flatMap((system) => {
    const own = events.get(system.id) ?? [];
    const peerStartMs = startOfSystem(own, createdAtMs);
    if (own.length === 0 || peerStartMs >= startMs) return [];
    const waterSystem = waterSystemOf(system);
    const belief = own
      .filter(({ atMs }) => atMs < startMs)
      .reduce(
        (held, event) => observe(waterSystem, held, event, drivers),
        startBelief(waterSystem, peerStartMs),
      );
    return [{ system: waterSystem, belief }];
  });
  return priorFrom(peers);
}

/** The earliest instant that anything is known of. */
function startOf(events: SystemEvents, createdAtMs: number): number {
  let earliestMs = createdAtMs;
  for (const [first] of events.values()) {
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
  start: () => WaterBelief,
  changedFromMs: number,
): readonly Checkpoint[] {
  const waterSystem = waterSystemOf(system);
  const same = sameEvents(known?.events ?? [], events);
  const holding = (known?.checkpoints ?? []).filter(
    ({ eventsFolded, belief }) => eventsFolded <= same && belief.atMs <= changedFromMs,
  );
  const isFromStart = holding[0]?.eventsFolded === 0 && holding[0].belief.atMs === startMs;
  const checkpoints = isFromStart ? holding : [{ eventsFolded: 0, belief: start() }];
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
  if (one.kind === 'planted' || other.kind === 'planted') return true;
  if (one.kind === 'unreported-top-up' || other.kind === 'unreported-top-up') {
    return (
      'chance' in one &&
      'chance' in other &&
      one.chance === other.chance &&
      one.askedL === other.askedL
    );
  }
  if (one.litres !== other.litres) return false;
  if (one.kind === 'reservoir-change' || other.kind === 'reservoir-change') return true;
  if (one.approximate !== other.approximate) return false;
  if (one.kind === 'level' || other.kind !== 'top-up') return one.kind === 'level';
  return (
    one.askedL === other.askedL &&
    one.read?.litres === other.read?.litres &&
    one.read?.approximate === other.read?.approximate
  );
}

function thinned(checkpoints: readonly Checkpoint[]): readonly Checkpoint[] {
  const old = checkpoints.length - checkpointsKeptWhole;
  return checkpoints.filter(
    ({ eventsFolded }, position) => position >= old || eventsFolded % sparseEvery === 0,
  );
}
