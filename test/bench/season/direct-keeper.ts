import { type DayDriver } from '../../../src/estimation/day-driver.ts';
import { dayDrivers, type LocalDay } from '../../../src/estimation/day-drivers.ts';
import type { WaterBelief } from '../../../src/estimation/water-belief.ts';
import type { WaterEvent } from '../../../src/estimation/water-event.ts';
import { amongOthers } from '../../../src/estimation/water-house.ts';
import { observe } from '../../../src/estimation/water-observe.ts';
import { outlook, type WaterOutlook } from '../../../src/estimation/water-outlook.ts';
import { startBelief } from '../../../src/estimation/water-start.ts';
import type { WaterSystem } from '../../../src/estimation/water-system.ts';
import type { Duty } from '../../../src/greenhouse/duty.ts';
import type { LocalDate } from '../../../src/greenhouse/local-time.ts';
import { type SystemId, systemIdAt } from '../../../src/greenhouse/system.ts';
import type { PastRound } from '../../../src/logbook/rounds.ts';
import { unreportedTopUps } from '../../../src/logbook/unreported-top-ups.ts';
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
  const said = new Map(systems.map((_, i): [SystemId, WaterEvent[]] => [systemIdAt(i), []]));
  const rounds: PastRound[] = [];
  const learn = (system: number, event: WaterEvent, drivers: readonly DayDriver[]) => {
    watch?.(system, systems[system]!, beliefs[system]!, event, drivers);
    beliefs[system] = observe(systems[system]!, beliefs[system]!, event, drivers);
  };
  const inHouse = (system: number) =>
    amongOthers(
      beliefs[system]!,
      beliefs.filter((_, i) => i !== system),
    );
  const learnDay = (fromMs: number, nowMs: number, drivers: readonly DayDriver[]) => {
    const unsaid = unreportedTopUps(said, new Map(), rounds, nowMs);
    for (const [i] of systems.entries()) {
      const id = systemIdAt(i);
      for (const event of [...said.get(id)!, ...(unsaid.get(id) ?? [])]) {
        if (event.atMs >= fromMs) learn(i, event, drivers);
      }
    }
  };
  return {
    foreseen,
    morning(day, observed, forecast) {
      const drivers = driversOn(season, day, observed, forecast);
      const atMs = day * DAY_MS + ROUND_AT_MS;
      if (day === 0) {
        for (const [i, { brimL }] of systems.entries()) {
          learn(i, { kind: 'level', atMs, litres: brimL, approximate: false }, drivers);
        }
      }
      learnDay(atMs - DAY_MS, atMs, drivers);
      const visitsAtMs = Array.from({ length: HORIZON_DAYS }, (_, ahead) =>
        ahead === 0 ? atMs : (day + ahead) * DAY_MS + VISIT_AT_MS,
      );
      const outlooks = systems.map((system, i) =>
        outlook(system, inHouse(i), {
          atMs,
          drivers,
          visitsAtMs,
          raiseAtMostL: raiseAtMostL(season.systems[i]!),
        }),
      );
      foreseen.push(outlooks);
      asked = askedToday(season, outlooks);
      rounds.push(roundOf(season.weather[day]!.date as LocalDate, atMs, asked));
      return Promise.resolve(asked);
    },
    toppedUp(day, system, litres) {
      const atMs = day * DAY_MS + VISIT_AT_MS;
      const askedL = asked.find((duty) => duty.system === system)?.litres ?? null;
      said
        .get(systemIdAt(system))!
        .push({ kind: 'top-up', atMs, litres, approximate: false, askedL });
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

function roundOf(date: LocalDate, sentAtMs: number, asked: readonly Asked[]): PastRound {
  const duties = asked.map(
    ({ system, litres }): Duty => ({
      kind: 'top-up',
      system: systemIdAt(system),
      dueOn: date,
      litres,
    }),
  );
  return { date, sentAtMs, duties };
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
