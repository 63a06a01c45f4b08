import type { DayDriver } from './day-driver.ts';
import { shareOfDay } from './day-driver.ts';
import {
  GROWN_WANDER_SD,
  GROWTH_MEMORY,
  RATE_WANDER_SD,
  type UseModel,
  useModels,
  YOUNG_TURN_SD,
} from './use-model.ts';
import {
  DRIVER,
  GROWN,
  GROWTH,
  LOST,
  NOISE,
  RATE,
  REFERENCE_ETO_MM,
  STATE_SIZE,
  type WaterBelief,
} from './water-belief.ts';

/** A part's numbers while they are being moved on; owned by whoever made them. */
export interface MovingState {
  readonly mean: number[];
  readonly cov: number[];
}

/** One stretch of time inside one local day. */
export interface Stretch {
  readonly lnDriver: number;
  readonly lnDriverVar: number;
  /** Share of the day's loss that falls into it. */
  readonly share: number;
  /** It ends with the day, so the night turns over. */
  readonly endsDay: boolean;
}

/**
 * The belief moved on to `toMs`. `drivers` are local days without gaps that span the time between;
 * an earlier `toMs` returns the belief as it is.
 */
export function advanceBelief(
  belief: WaterBelief,
  toMs: number,
  drivers: readonly DayDriver[],
): WaterBelief {
  if (toMs <= belief.atMs) return belief;
  const stretches = stretchesBetween(belief.atMs, toMs, drivers);
  const parts = belief.parts.map((part) => {
    const state = { mean: part.mean.slice(), cov: part.cov.slice() };
    for (const stretch of stretches) moveOn(state, stretch, useModels[part.model]!);
    return { ...part, ...state };
  });
  return { ...belief, atMs: toMs, parts };
}

/** The time between two instants cut at local midnights. */
export function stretchesBetween(
  fromMs: number,
  toMs: number,
  drivers: readonly DayDriver[],
): Stretch[] {
  const stretches: Stretch[] = [];
  for (let i = firstDayAfter(fromMs, drivers); i < drivers.length; i += 1) {
    const day = drivers[i]!;
    if (day.startMs >= toMs) break;
    const lengthMs = day.endMs - day.startMs;
    const from = Math.max(0, (fromMs - day.startMs) / lengthMs);
    const to = Math.min(1, (toMs - day.startMs) / lengthMs);
    stretches.push({
      lnDriver: Math.log(day.etoMm / REFERENCE_ETO_MM),
      lnDriverVar: day.etoLogSd * day.etoLogSd,
      share: shareOfDay(from, to),
      endsDay: to === 1,
    });
  }
  return stretches;
}

function firstDayAfter(ms: number, drivers: readonly DayDriver[]): number {
  let low = 0;
  let high = drivers.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (drivers[middle]!.endMs <= ms) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Moves a state over one stretch, in place: the day's loss, then the night's turn. */
export function moveOn(state: MovingState, stretch: Stretch, model: UseModel): void {
  loseWater(state, stretch);
  if (stretch.endsDay) turnNight(state, model);
}

/** Above this ln, a day's use is beyond any greenhouse; keeps exp finite under wild beliefs. */
const LARGEST_LN_USE = 12;

/**
 * Adds the stretch's use, share · exp(RATE + NOISE + DRIVER · lnDriver), to LOST. Use is log-normal
 * and the rest Gaussian, so the moments are exact: Cov(exp x, y) = E[exp x] · Cov(x, y).
 */
function loseWater({ mean, cov }: MovingState, stretch: Stretch): void {
  const n = STATE_SIZE;
  const z = stretch.lnDriver;
  const withX = new Array<number>(n);
  for (let i = 0; i < n; i += 1) {
    withX[i] = cov[i * n + RATE]! + cov[i * n + NOISE]! + z * cov[i * n + DRIVER]!;
  }
  const exponent = mean[DRIVER]!;
  const varX =
    withX[RATE]! + withX[NOISE]! + z * withX[DRIVER]! + exponent * exponent * stretch.lnDriverVar;
  const lnMean = mean[RATE]! + mean[NOISE]! + exponent * z + varX / 2;
  const used = stretch.share * Math.exp(Math.min(lnMean, LARGEST_LN_USE));
  mean[LOST] = mean[LOST]! + used;
  const usedVar = used * used * Math.expm1(Math.min(varX, 4));
  for (let i = 0; i < n; i += 1) {
    if (i === LOST) continue;
    const shared = cov[i * n + LOST]! + used * withX[i]!;
    cov[i * n + LOST] = shared;
    cov[LOST * n + i] = shared;
  }
  cov[LOST * n + LOST] = cov[LOST * n + LOST]! + 2 * used * withX[LOST]! + usedVar;
}

/** Overnight: the rate grows, growth itself turns, the day's departure fades and is drawn anew. */
function turnNight({ mean, cov }: MovingState, model: UseModel): void {
  const n = STATE_SIZE;
  const pull = model.growthPull;
  const youth = Math.max(0, mean[GROWN]! - mean[RATE]!);
  mean[RATE] = (1 - pull) * mean[RATE]! + pull * mean[GROWN]! + mean[GROWTH]!;
  mean[GROWTH] = mean[GROWTH]! * GROWTH_MEMORY;
  mean[NOISE] = mean[NOISE]! * model.noiseMemory;
  for (let j = 0; j < n; j += 1) {
    cov[RATE * n + j] =
      (1 - pull) * cov[RATE * n + j]! + pull * cov[GROWN * n + j]! + cov[GROWTH * n + j]!;
  }
  for (let j = 0; j < n; j += 1) {
    cov[j * n + RATE] =
      (1 - pull) * cov[j * n + RATE]! + pull * cov[j * n + GROWN]! + cov[j * n + GROWTH]!;
  }
  scale(cov, GROWTH, GROWTH_MEMORY);
  scale(cov, NOISE, model.noiseMemory);
  const drawn = model.noiseSd * model.noiseSd * (1 - model.noiseMemory * model.noiseMemory);
  addVariance(cov, RATE, RATE_WANDER_SD * RATE_WANDER_SD);
  addVariance(cov, GROWN, GROWN_WANDER_SD * GROWN_WANDER_SD);
  const turnSd = model.growthTurnSd + YOUNG_TURN_SD * youth;
  addVariance(cov, GROWTH, turnSd * turnSd);
  addVariance(cov, NOISE, drawn);
}

function scale(cov: number[], which: number, factor: number): void {
  for (let j = 0; j < STATE_SIZE; j += 1) {
    cov[which * STATE_SIZE + j] = cov[which * STATE_SIZE + j]! * factor;
    cov[j * STATE_SIZE + which] = cov[j * STATE_SIZE + which]! * factor;
  }
}

function addVariance(cov: number[], which: number, variance: number): void {
  const at = which * STATE_SIZE + which;
  cov[at] = cov[at]! + variance;
}
