import { hasAirPump, hasPump } from '../greenhouse/devices.ts';
import type { Supply } from '../greenhouse/entry.ts';
import { localDateOf, localTimeOf } from '../greenhouse/local-time.ts';
import type { Method, System, SystemId } from '../greenhouse/system.ts';
import { latestEntry } from '../logbook/logbook.ts';
import type { Failure, Survival } from '../science/oxygen/outage-case.ts';
import { outageSurvival } from '../science/oxygen/outage-survival.ts';
import { litre } from '../science/units/amount.ts';
import { kilopascal, STANDARD_ATMOSPHERE_KPA } from '../science/units/pressure.ts';
import { celsius } from '../science/units/temperature.ts';
import { standardAtmosphereKpa } from '../science/weather/standard-atmosphere.ts';
import type { BoardQuestion } from './duty-board.ts';
import type { HandMeasure, OutageProspect } from './outage-prospect.ts';

const FAILURES: Readonly<Record<Supply, Failure>> = {
  power: 'power',
  pump: 'circulation',
  'air-pump': 'aeration',
};

const BY_HAND: Readonly<Record<Method, readonly HandMeasure[]>> = {
  'deep-water-culture': ['scoop-and-pour', 'battery-air', 'shade'],
  'nutrient-film': ['pour-over-roots', 'dam-the-channel', 'shade'],
  'flood-and-drain': ['water-the-pots', 'shade'],
  drip: ['water-the-pots', 'shade'],
  aeroponic: ['mist-the-roots', 'shade'],
  'non-circulating': [],
};

/** Sun counts between these hours of the local clock, unless the day is known to stay cool. */
const SUN_FROM_HOUR = 8;
const SUN_TO_HOUR = 19;
const COOL_DAY_MAX_C = 15;
const USUAL_WATER_C = 21;
const READING_HOLDS_MS = 3 * 86_400_000;
const HOUR_MS = 3_600_000;

export interface OutageOutlook {
  /** In the order in which to act: what is soonest in trouble comes first. */
  readonly systems: readonly OutageProspect[];
  readonly unaffected: readonly SystemId[];
}

/** How long each of the systems lasts from `sinceMs` on without what has failed. */
export function outageProspects(
  question: BoardQuestion,
  systems: readonly SystemId[],
  of: Supply,
  sinceMs: number,
): OutageOutlook {
  const asked = question.greenhouse.systems.filter(({ id }) => systems.includes(id));
  const prospects = asked.flatMap((system) => {
    const prospect = prospectOf(system, question, of, sinceMs);
    return prospect ? [prospect] : [];
  });
  const affected = new Set(prospects.map(({ system }) => system));
  return {
    systems: prospects.toSorted((one, other) => one.lowAtMs - other.lowAtMs),
    unaffected: asked.map(({ id }) => id).filter((id) => !affected.has(id)),
  };
}

function prospectOf(
  system: System,
  question: BoardQuestion,
  of: Supply,
  sinceMs: number,
): OutageProspect | null {
  const hours = hoursOf(system, question, of, sinceMs);
  if (!hours) return null;
  return {
    system: system.id,
    by: hours.by,
    lowHours: hours.lowHours,
    likelyHours: hours.likelyHours,
    highHours: hours.highHours,
    lowAtMs: sinceMs + hours.lowHours * HOUR_MS,
    likelyAtMs: sinceMs + hours.likelyHours * HOUR_MS,
    highAtMs: sinceMs + hours.highHours * HOUR_MS,
    byHand: BY_HAND[system.method],
  };
}

type Limited = Extract<Survival, { kind: 'limited' }>;

/** Bounds that begin in the dark end no later than the next sun would end them. */
function hoursOf(
  system: System,
  question: BoardQuestion,
  of: Supply,
  sinceMs: number,
): Limited | null {
  const { isSunny, hoursToSun } = skyAt(question, sinceMs);
  const now = survival(system, question, of, isSunny ? 'sun' : 'dull');
  if (!now || isSunny || now.by === 'oxygen') return now;
  const inSun = survival(system, question, of, 'sun');
  if (!inSun) return now;
  const capped = (dull: number, sun: number): number => Math.min(dull, hoursToSun + sun);
  return {
    ...now,
    lowHours: capped(now.lowHours, inSun.lowHours),
    likelyHours: capped(now.likelyHours, inSun.likelyHours),
    highHours: capped(now.highHours, inSun.highHours),
  };
}

function survival(
  system: System,
  question: BoardQuestion,
  of: Supply,
  sky: 'sun' | 'dull',
): Limited | null {
  const { greenhouse, logbook, outlooks, nowMs } = question;
  const reading = latestEntry(logbook, system.id, 'water-temperature');
  const isFresh = reading && nowMs - reading.atMs < READING_HOLDS_MS;
  const { litres } = outlooks.get(system.id)!;
  const pressure = standardAtmosphereKpa(greenhouse.elevationM);
  const outcome = outageSurvival({
    method: system.method,
    failure: failureOf(system, of),
    sky,
    waterL: litre(Math.max(1, litres)),
    waterDepthM: Math.max(0.01, ((system.depthCm / 100) * litres) / system.brimL),
    waterCelsius: celsius(isFresh ? reading.value : USUAL_WATER_C),
    airPressureKpa: pressure.ok ? pressure.value : kilopascal(STANDARD_ATMOSPHERE_KPA),
    plants: system.plants,
    crop: system.crop,
  });
  return outcome.ok && outcome.value.kind === 'limited' ? outcome.value : null;
}

/** `pump off` of tubs that no pump feeds: it is their air. */
function failureOf(system: System, of: Supply): Failure {
  const isItsAir = of === 'pump' && !hasPump(system) && hasAirPump(system);
  return FAILURES[isItsAir ? 'air-pump' : of];
}

function skyAt(
  { greenhouse, weather }: BoardQuestion,
  atMs: number,
): { readonly isSunny: boolean; readonly hoursToSun: number } {
  const local = localTimeOf(atMs, greenhouse.timeZone);
  const hour = local.hour + local.minute / 60;
  const day = weather?.get(localDateOf(atMs, greenhouse.timeZone));
  const isCool = day !== undefined && day.tMaxC < COOL_DAY_MAX_C;
  const isDay = hour >= SUN_FROM_HOUR && hour < SUN_TO_HOUR;
  const toMorning = hour < SUN_FROM_HOUR ? SUN_FROM_HOUR - hour : SUN_FROM_HOUR + 24 - hour;
  return { isSunny: isDay && !isCool, hoursToSun: toMorning };
}
