import { type LocalTrendModel, learn, type Trend, trendAhead } from './local-trend.ts';
import { normalCdf } from './normal.ts';

/** A reading of a quantity that drifts, pH or EC, oldest first. */
export interface DriftReading {
  readonly atMs: number;
  readonly value: number;
  /** Something was put into the solution since the reading before: a dose, a top-up, a change. */
  readonly disturbed: boolean;
}

/** What is taken for granted of a quantity before its readings say better. */
export interface DriftPrior {
  /** Error of one reading. */
  readonly readingSd: number;
  /** How far the level wanders in a day by itself. */
  readonly wanderSdPerDay: number;
  /** How much the slope a day changes in a day. */
  readonly slopeTurnSdPerDay: number;
  /** How far putting something in may move the level. */
  readonly disturbanceSd: number;
  /** Slopes a day of solutions nobody has measured twice: as often up as down, of about this size. */
  readonly slopeSd: number;
}

/** How the quantity goes on from now, as a mixture over how much it may wander. */
export interface Drift {
  readonly parts: readonly {
    readonly weight: number;
    readonly trend: Trend;
    readonly model: LocalTrendModel;
  }[];
}

const DAY_MS = 86_400_000;
/** The prior's wandering is tried at these multiples; each step is as likely a priori as said. */
const WANDER_MULTIPLES: readonly (readonly [multiple: number, weight: number])[] = [
  [0.25, 0.15],
  [0.5, 0.2],
  [1, 0.3],
  [2, 0.2],
  [4, 0.15],
];

/** What the readings say of level and slope at `nowMs`; null where there is none. */
export function driftOf(
  readings: readonly DriftReading[],
  prior: DriftPrior,
  nowMs: number,
): Drift | null {
  const [first, ...later] = readings;
  const last = readings.at(-1);
  if (!first || !last) return null;
  const tried = WANDER_MULTIPLES.map(([multiple, weight]) => {
    const model: LocalTrendModel = {
      readingVar: prior.readingSd ** 2,
      levelVarPerDay: (prior.wanderSdPerDay * multiple) ** 2,
      slopeVarPerDay: (prior.slopeTurnSdPerDay * multiple) ** 2,
    };
    let trend = startOf(first, prior, model);
    let log = Math.log(weight);
    let atMs = first.atMs;
    for (const reading of later) {
      const days = (reading.atMs - atMs) / DAY_MS;
      const foreseen = disturbedBy(trendAhead(trend, days, model), reading, prior);
      const learned = learn(foreseen, reading.value, model);
      trend = learned.trend;
      log += learned.logDensity;
      atMs = reading.atMs;
    }
    const days = Math.max(0, nowMs - last.atMs) / DAY_MS;
    return { log, trend: trendAhead(trend, days, model), model };
  });
  const best = Math.max(...tried.map(({ log }) => log));
  const total = tried.reduce((sum, { log }) => sum + Math.exp(log - best), 0);
  return {
    parts: tried.map(({ log, trend, model }) => ({
      weight: Math.exp(log - best) / total,
      trend,
      model,
    })),
  };
}

function startOf(first: DriftReading, prior: DriftPrior, model: LocalTrendModel): Trend {
  return {
    level: first.value,
    slopePerDay: 0,
    levelVar: model.readingVar,
    slopeVar: prior.slopeSd ** 2,
    covariance: 0,
  };
}

function disturbedBy(trend: Trend, { disturbed }: DriftReading, prior: DriftPrior): Trend {
  if (!disturbed) return trend;
  return { ...trend, levelVar: trend.levelVar + prior.disturbanceSd ** 2 };
}

/** Where the quantity stands `days` from now, and its slope a day. */
export function driftIn(
  drift: Drift,
  days: number,
): {
  readonly mean: number;
  readonly sd: number;
  readonly slopePerDay: number;
  readonly slopeSd: number;
} {
  let mean = 0;
  let square = 0;
  let slope = 0;
  let slopeSquare = 0;
  for (const { weight, trend, model } of drift.parts) {
    const then = trendAhead(trend, days, model);
    mean += weight * then.level;
    square += weight * (then.level ** 2 + then.levelVar);
    slope += weight * then.slopePerDay;
    slopeSquare += weight * (then.slopePerDay ** 2 + then.slopeVar);
  }
  const sd = Math.sqrt(Math.max(0, square - mean ** 2));
  return {
    mean,
    sd,
    slopePerDay: slope,
    slopeSd: Math.sqrt(Math.max(0, slopeSquare - slope ** 2)),
  };
}

/** The chance that the quantity is outside `band` (lowest, highest) `days` from now. */
export function chanceOutside(drift: Drift, band: readonly [number, number], days: number): number {
  const [low, high] = band;
  let chance = 0;
  for (const { weight, trend, model } of drift.parts) {
    const { level, levelVar } = trendAhead(trend, days, model);
    const sd = Math.sqrt(levelVar);
    const inside = normalCdf((high - level) / sd) - normalCdf((low - level) / sd);
    chance += weight * (1 - inside);
  }
  return Math.min(1, Math.max(0, chance));
}

/**
 * In how many whole days a check is worth it: when the quantity may be outside its band with more than
 * `chance`, yet within `bounds` (soonest, latest). A steady quantity is measured less.
 */
export function daysUntilCheck(
  drift: Drift,
  band: readonly [number, number],
  chance: number,
  bounds: readonly [number, number],
): number {
  const [soonest, latest] = bounds;
  for (let days = soonest; days < latest; days += 1) {
    if (chanceOutside(drift, band, days) > chance) return days;
  }
  return latest;
}
