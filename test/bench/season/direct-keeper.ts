import { type DayDriver } from '../../../src/estimation/day-driver.ts';
import { dayDrivers, type LocalDay } from '../../../src/estimation/day-drivers.ts';
import type { WaterBelief } from '../../../src/estimation/water-belief.ts';
import type { WaterEvent } from '../../../src/estimation/water-event.ts';
import { observe } from '../../../src/estimation/water-observe.ts';
import { outlook, type WaterOutlook } from '../../../src/estimation/water-outlook.ts';
import { startBelief } from '../../../src/estimation/water-start.ts';
import type { WaterSystem } from '../../../src/estimation/water-system.ts';
import { raiseAtMostL } from '../../../src/planning/fill-ceiling.ts';
import { planTopUps } from '../../../src/planning/trip-plan.ts';
import type { Asked, Keeper, Season } from './season.ts';
import type { DayWeather } from './season-weather.ts';

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;
const ROUND_AT_MS = 7 * HOUR_MS;
const VISIT_AT_MS = 8.5 * HOUR_MS;
const HORIZON_DAYS = 60;
/** 15 April. */
const FIRST_DAY_OF_YEAR = 105;
/** That no report means "done": one or two missing of a trip, more, or no word at all. */
const DONE_BY_MISSING: readonly number[] = [1, 0.97, 0.77];
const DONE_WITHOUT_A_WORD = 0.4;

/** The estimator and the planner without the bot around them: for the scores of what they foresee. */
export interface DirectKeeper extends Keeper {
  readonly foreseen: (readonly WaterOutlook[])[];
}

/** Told of every event before it is learned from. */
type Watch = (
  system: number,
  waterSystem: WaterSystem,
  before: WaterBelief,
  event: WaterEvent,
  drivers: readonly DayDriver[],
) => void;

export function directKeeper(season: Season, watch?: Watch): DirectKeeper {
  const systems = season.systems.map(
    ({ brimL, lowL, crop, plants, method }): WaterSystem => ({
      brimL,
      lowL,
      crop,
      plants,
      filledToBrim: method !== 'non-circulating',
    }),
  );
  const beliefs = systems.map((system) => startBelief(system, 0));
  const foreseen: (readonly WaterOutlook[])[] = [];
  let asked: readonly Asked[] = [];
  let said = new Map<number, number>();
  const learnTrip = (day: number, drivers: readonly DayDriver[]) => {
    const atMs = day * DAY_MS + VISIT_AT_MS;
    for (const { system, litres: askedL } of asked) {
      const litres = said.get(system);
      const missing = said.size > 0 ? asked.length - said.size : Infinity;
      const chance = DONE_BY_MISSING[missing] ?? DONE_WITHOUT_A_WORD;
      const event: WaterEvent =
        litres === undefined
          ? { kind: 'unreported-top-up', atMs, chance }
          : { kind: 'top-up', atMs, litres, approximate: false, askedL };
      watch?.(system, systems[system]!, beliefs[system]!, event, drivers);
      beliefs[system] = observe(systems[system]!, beliefs[system]!, event, drivers);
    }
  };
  return {
    foreseen,
    morning(day, observed, forecast) {
      const drivers = driversOn(season, day, observed, forecast);
      const atMs = day * DAY_MS + ROUND_AT_MS;
      if (day === 0) {
        for (const [i, system] of systems.entries()) {
          const full = { kind: 'level', atMs, litres: system.brimL, approximate: false } as const;
          beliefs[i] = observe(system, beliefs[i]!, full, drivers);
        }
      }
      learnTrip(day - 1, drivers);
      const visitsAtMs = Array.from({ length: HORIZON_DAYS }, (_, ahead) =>
        ahead === 0 ? atMs : (day + ahead) * DAY_MS + VISIT_AT_MS,
      );
      const outlooks = systems.map((system, i) =>
        outlook(system, beliefs[i]!, {
          atMs,
          drivers,
          visitsAtMs,
          raiseAtMostL: raiseAtMostL(season.systems[i]!),
        }),
      );
      foreseen.push(outlooks);
      asked = askedToday(season, outlooks);
      said = new Map();
      return Promise.resolve(asked);
    },
    toppedUp(_day, system, litres) {
      said.set(system, litres);
      return Promise.resolve();
    },
  };
}

function askedToday(season: Season, outlooks: readonly WaterOutlook[]): readonly Asked[] {
  const plans = planTopUps({
    systems: season.systems.map(({ method, brimL, lowL }, i) => ({
      method,
      brimL,
      lowL,
      outlook: outlooks[i]!,
    })),
    canGo: Array.from({ length: HORIZON_DAYS }, () => true),
    risk: 'normal',
  });
  return plans.flatMap(({ due, litres }, system) =>
    due === 'later' ? [] : [{ system, litres: Math.round(litres), alongside: due === 'alongside' }],
  );
}

function driversOn(
  season: Season,
  day: number,
  observed: readonly DayWeather[],
  forecast: readonly DayWeather[],
): readonly DayDriver[] {
  const days = Array.from({ length: day + HORIZON_DAYS + 2 }, (_, d): LocalDay => {
    const told = d < day ? observed[d] : forecast[d - day];
    return {
      startMs: d * DAY_MS,
      endMs: (d + 1) * DAY_MS,
      dayOfYear: FIRST_DAY_OF_YEAR + d,
      weather: told
        ? { tMinC: told.tMinC, tMaxC: told.tMaxC, leadDays: d < day ? null : d - day }
        : null,
    };
  });
  return dayDrivers(season.place.latitude, days);
}
