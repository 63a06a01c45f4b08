import { explainedVariance } from './explained-variance.ts';
import { normalCdf, normalPdf } from './normal.ts';
import type { MovingState } from './water-advance.ts';
import { ANCHOR, LOST, STATE_SIZE } from './water-belief.ts';

/** Rounds of relinearising; the log of a loss is nearly linear after three. */
const ITERATIONS = 5;
/** One iteration may not change the loss by more than this factor, ln. */
const LARGEST_STEP_LN = 1.5;
/** Below this variance nothing has been lost since the anchor that could be learned from. */
const NO_LOSS_VAR_L2 = 1e-9;

/**
 * Learns from "the level is `levelL`, give or take `sdL`": an iterated Kalman update with the loss in
 * logarithms, where it is Gaussian together with the rest. Changes `state` in place and returns the
 * log density of the reading as it was foreseen.
 */
export function learnLevel(state: MovingState, levelL: number, sdL: number): number {
  const { mean, cov } = state;
  const lossLogged = cov[LOST * STATE_SIZE + LOST]! > NO_LOSS_VAR_L2 && mean[LOST]! > 0;
  if (lossLogged) toLog(state);
  const n = STATE_SIZE;
  const noise = sdL * sdL;
  const prior = mean.slice();
  const gain = new Array<number>(n).fill(0);
  let foreseenVar = noise;
  let pull = 0;
  let at = prior[LOST]!;
  let atAnchor = prior[ANCHOR]!;
  for (let round = 0; round < (lossLogged ? ITERATIONS : 1); round += 1) {
    const lost = lossLogged ? Math.exp(at) : prior[LOST]!;
    const slope = lossLogged ? -lost : 0;
    for (let i = 0; i < n; i += 1) gain[i] = cov[i * n + ANCHOR]! + slope * cov[i * n + LOST]!;
    foreseenVar = gain[ANCHOR]! + slope * gain[LOST]! + noise;
    const expected = atAnchor - lost + (prior[ANCHOR]! - atAnchor) + slope * (prior[LOST]! - at);
    pull = (levelL - expected) / foreseenVar;
    const next = prior[LOST]! + gain[LOST]! * pull;
    at += Math.min(LARGEST_STEP_LN, Math.max(-LARGEST_STEP_LN, lossLogged ? next - at : 0));
    atAnchor = prior[ANCHOR]! + gain[ANCHOR]! * pull;
  }
  for (let i = 0; i < n; i += 1) mean[i] = prior[i]! + gain[i]! * pull;
  const lostNow = lossLogged ? Math.exp(mean[LOST]!) : mean[LOST]!;
  const misfit = levelL - (mean[ANCHOR]! - lostNow);
  // Laplace: misfit at the mode, what moving there cost, and the spread it was foreseen with.
  const cost = pull * pull * (foreseenVar - noise);
  const logDensity =
    -0.5 * (Math.log(2 * Math.PI * foreseenVar) + (misfit * misfit) / noise + cost);
  for (let i = 0; i < n; i += 1) {
    for (let j = 0; j < n; j += 1) {
      cov[i * n + j] = cov[i * n + j]! - (gain[i]! * gain[j]!) / foreseenVar;
    }
  }
  if (lossLogged) fromLog(state);
  return logDensity;
}

/** A loss may share at most this much of its variance with the rest of the state. */
const MOST_SHARED = 0.98;

/**
 * LOST from litres to ln litres, log-normal by its moments. A long or very uncertain loss is only
 * roughly log-normal, and its covariances can come out larger than its variance allows: they are
 * shrunk then.
 */
function toLog({ mean, cov }: MovingState): void {
  const lost = mean[LOST]!;
  const variance = Math.log1p(cov[LOST * STATE_SIZE + LOST]! / (lost * lost));
  scaleLost(cov, 1 / lost);
  cov[LOST * STATE_SIZE + LOST] = variance;
  mean[LOST] = Math.log(lost) - variance / 2;
  const shared = explainedVariance(cov, LOST);
  if (shared > MOST_SHARED * variance) scaleLost(cov, Math.sqrt((MOST_SHARED * variance) / shared));
}

function fromLog({ mean, cov }: MovingState): void {
  const variance = Math.max(0, cov[LOST * STATE_SIZE + LOST]!);
  const lost = Math.exp(mean[LOST]! + variance / 2);
  scaleLost(cov, lost);
  cov[LOST * STATE_SIZE + LOST] = lost * lost * Math.expm1(variance);
  mean[LOST] = lost;
}

function scaleLost(cov: number[], factor: number): void {
  for (let i = 0; i < STATE_SIZE; i += 1) {
    if (i === LOST) continue;
    cov[i * STATE_SIZE + LOST] = cov[i * STATE_SIZE + LOST]! * factor;
    cov[LOST * STATE_SIZE + i] = cov[i * STATE_SIZE + LOST]!;
  }
}

/** Sets the level: `litres` give or take `sdL`, whatever was lost before. */
export function anchorAt({ mean, cov }: MovingState, litres: number, sdL: number): void {
  forget(cov, ANCHOR);
  forget(cov, LOST);
  mean[ANCHOR] = litres;
  mean[LOST] = 0;
  cov[ANCHOR * STATE_SIZE + ANCHOR] = sdL * sdL;
}

function forget(cov: number[], which: number): void {
  for (let i = 0; i < STATE_SIZE; i += 1) {
    cov[which * STATE_SIZE + i] = 0;
    cov[i * STATE_SIZE + which] = 0;
  }
}

/** Beyond this many standard deviations the tail is as good as empty. */
const FARTHEST_SDS = 5;
const LEAST_CHANCE = 1e-6;

/**
 * Learns from "the level is no higher than `mostL`": the level's normal distribution is cut off there
 * and taken by its mean and variance, and the rest of the state moves along with it. Changes `state`
 * in place and returns the chance that the level was no higher.
 *
 * Source: Johnson, Kotz and Balakrishnan 1994, Continuous univariate distributions 1, section 13.10.1
 * (moments of the truncated normal), from memory.
 */
export function keepUnder(state: MovingState, mostL: number): number {
  return cutOff(state, mostL, 1);
}

/** The same of "the level is no lower than `leastL`". */
export function keepAbove(state: MovingState, leastL: number): number {
  return cutOff(state, leastL, -1);
}

/** Keeps the side below the limit (1) or the one above it (-1). */
function cutOff(state: MovingState, limitL: number, side: 1 | -1): number {
  const { litres, variance } = levelOf(state);
  const room = side * (limitL - litres);
  if (variance <= 0) return room >= 0 ? 1 : LEAST_CHANCE;
  const sd = Math.sqrt(variance);
  const z = Math.max(-FARTHEST_SDS, room / sd);
  if (z > FARTHEST_SDS) return 1;
  const chance = normalCdf(z);
  const hazard = normalPdf(z) / chance;
  const { mean, cov } = state;
  const n = STATE_SIZE;
  const along = Array.from(mean, (_, i) => cov[i * n + ANCHOR]! - cov[i * n + LOST]!);
  const shift = -side * sd * hazard;
  const shrunk = (hazard * (z + hazard)) / variance;
  for (let i = 0; i < n; i += 1) mean[i] = mean[i]! + (along[i]! * shift) / variance;
  for (let i = 0; i < n; i += 1) {
    for (let j = 0; j < n; j += 1) {
      cov[i * n + j] = cov[i * n + j]! - along[i]! * along[j]! * shrunk;
    }
  }
  return Math.max(LEAST_CHANCE, chance);
}

/** Mean and variance of the level of a state. */
export function levelOf(state: {
  readonly mean: readonly number[];
  readonly cov: readonly number[];
}): { readonly litres: number; readonly variance: number } {
  const { mean, cov } = state;
  const variance =
    cov[ANCHOR * STATE_SIZE + ANCHOR]! +
    cov[LOST * STATE_SIZE + LOST]! -
    2 * cov[ANCHOR * STATE_SIZE + LOST]!;
  return { litres: mean[ANCHOR]! - mean[LOST]!, variance: Math.max(0, variance) };
}
