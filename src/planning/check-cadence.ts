import {
  chanceOutside,
  type Drift,
  type DriftPrior,
  type DriftReading,
  daysUntilCheck,
  driftIn,
  driftOf,
} from '../estimation/reading-drift.ts';
import type { Method, Range, System } from '../greenhouse/system.ts';
import { type Logbook, liveEntries } from '../logbook/logbook.ts';
import { harmlessRange } from './slightly-out.ts';

/** What a check reads. */
export type CheckedQuantity = 'ph' | 'ec';
export const checkedQuantities: readonly CheckedQuantity[] = ['ph', 'ec'];

/** How long a reading of one quantity stands, and what it is expected to do meanwhile. */
export interface CheckCadence {
  readonly quantity: CheckedQuantity;
  readonly everyDays: number;
  /** By then somebody goes for it alone, where no trip came before. */
  readonly aloneAfterDays: number;
  /** Null: too few readings to know a drift. */
  readonly drift: {
    readonly perDay: number;
    /** Where it is expected when the check is due, and the chance that it is out of range then. */
    readonly expected: number;
    readonly chanceOut: number;
  } | null;
}

/**
 * Common practice: hand meters repeat to about this, and solutions wander and drift about so much in a
 * day; pH of a fed crop goes a tenth a day one way or the other.
 */
const priors: Readonly<Record<CheckedQuantity, DriftPrior>> = {
  ph: {
    readingSd: 0.07,
    wanderSdPerDay: 0.06,
    slopeTurnSdPerDay: 0.02,
    disturbanceSd: 0.4,
    slopeSd: 0.08,
  },
  ec: {
    readingSd: 0.05,
    wanderSdPerDay: 0.04,
    slopeTurnSdPerDay: 0.015,
    disturbanceSd: 0.3,
    slopeSd: 0.06,
  },
};

/**
 * Common practice: however steady, a solution is not left unmeasured for longer than this; the less
 * water a plant has, the sooner it may turn.
 */
const longestDays: Readonly<Record<Method, number>> = {
  'deep-water-culture': 5,
  'nutrient-film': 5,
  aeroponic: 4,
  drip: 7,
  'flood-and-drain': 7,
  'non-circulating': 10,
};
const soonestDays = 1;
/** A check is worth a look once the quantity is out of its range with this chance. */
export const worthALookChance = 0.25;
/** A trip of its own it is worth when harm is more likely than not, or it has waited so many times as long. */
const worthATripChance = 0.6;
export const aloneAfterTimes = 2;
/** One reading shows no drift; what is usual stands in for it. */
const fewestForDrift = 3;
/** Readings from further back say nothing of the drift now. */
const readingsUsed = 30;

/** How often one quantity of a system wants measuring, learned from how steady it has been. */
export function checkCadence(
  system: System,
  quantity: CheckedQuantity,
  logbook: Logbook,
): CheckCadence {
  const readings = driftReadings(system, quantity, logbook);
  const last = readings.at(-1);
  const drift = last ? driftOf(readings, priors[quantity], last.atMs) : null;
  if (!drift) return { quantity, everyDays: soonestDays, aloneAfterDays: soonestDays, drift: null };
  const range = rangeOf(system, quantity);
  const longest = longestDays[system.method];
  const everyDays = daysUntilCheck(drift, range, worthALookChance, [soonestDays, longest]);
  // What is known to be out is waited for or dosed, and measured then; to look again changes nothing.
  const isOut = chanceOutside(drift, range, 0) > worthATripChance;
  const aloneAfterDays = isOut
    ? Math.max(everyDays, Math.ceil(longest / 2))
    : daysUntilCheck(drift, harmlessRange(quantity, range), worthATripChance, [
        everyDays,
        aloneAfterTimes * longest,
      ]);
  const isShown = readings.length >= fewestForDrift;
  return {
    quantity,
    everyDays,
    aloneAfterDays,
    drift: isShown ? prospect(drift, range, everyDays) : null,
  };
}

/** Said to be done without a reading: how long that is taken to stand. */
export function daysWithoutReading(system: System): number {
  return Math.ceil(longestDays[system.method] / 2);
}

function prospect(drift: Drift, range: Range, days: number): CheckCadence['drift'] {
  const { mean, slopePerDay } = driftIn(drift, days);
  return { perDay: slopePerDay, expected: mean, chanceOut: chanceOutside(drift, range, days) };
}

/** The range that a system is kept in. */
export function rangeOf(system: System, quantity: CheckedQuantity): Range {
  return quantity === 'ph' ? system.ph : system.ecMsPerCm;
}

function driftReadings(
  system: System,
  quantity: CheckedQuantity,
  logbook: Logbook,
): readonly DriftReading[] {
  const entries = liveEntries(logbook, system.id, quantity).slice(-readingsUsed);
  const stirredMs = (['dose', 'top-up', 'reservoir-change'] as const)
    .flatMap((stirring) => liveEntries(logbook, system.id, stirring))
    .map(({ atMs }) => atMs);
  return entries.map(({ atMs, value }, position) => {
    const before = entries[position - 1]?.atMs ?? Number.NEGATIVE_INFINITY;
    const disturbed = stirredMs.some((stirMs) => stirMs > before && stirMs <= atMs);
    return { atMs, value, disturbed };
  });
}
