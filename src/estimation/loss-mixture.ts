import { normalCdf } from './normal.ts';
import { ANCHOR, LOST, STATE_SIZE } from './water-belief.ts';

/** One log-normal in a mixture of losses, by its moments in litres. */
export interface LossPart {
  readonly weight: number;
  readonly lost: number;
  readonly variance: number;
}

/** The chance that more than `litres` are lost. */
export function lossChance(parts: readonly LossPart[], litres: number): number {
  let chance = 0;
  for (const part of parts) {
    chance += part.weight * logNormalTail(part.lost, part.variance, litres);
  }
  return chance;
}

/** P(X > x) of a log-normal with this mean and variance. */
function logNormalTail(mean: number, variance: number, x: number): number {
  if (x <= 0) return 1;
  if (mean <= 0) return 0;
  const lnVar = Math.log1p(variance / (mean * mean));
  if (lnVar < 1e-12) return mean > x ? 1 : 0;
  return normalCdf((Math.log(mean / x) - lnVar / 2) / Math.sqrt(lnVar));
}

/**
 * Nodes and weights that integrate a normal exactly up to the ninth power (Gauss–Hermite, five
 * points). Source: Abramowitz and Stegun 1964, table 25.10, scaled by √2 and 1/√π.
 */
const NORMAL_NODES: readonly (readonly [z: number, weight: number])[] = [
  [-2.8569700138728, 0.0112574113277],
  [-1.3556261799743, 0.2220759220056],
  [0, 0.5333333333333],
  [1.3556261799743, 0.2220759220056],
  [2.8569700138728, 0.0112574113277],
];
const CERTAIN_NODE: typeof NORMAL_NODES = [[0, 1]];
/** An anchor surer than this, litres², needs no nodes. */
const SURE_ANCHOR_VAR_L2 = 1e-6;

/** From this ratio of the anchor's variance to the loss's the five points are too far apart. */
const ANCHOR_RULES = 2;

/** The chance that the level, anchor less loss, is at or below `lowL`. */
export function belowChance(
  parts: readonly {
    readonly weight: number;
    readonly mean: readonly number[];
    readonly cov: readonly number[];
  }[],
  lowL: number,
): number {
  let chance = 0;
  for (const { weight, mean, cov } of parts) {
    const anchor = mean[ANCHOR]!;
    const anchorVar = cov[ANCHOR * STATE_SIZE + ANCHOR]!;
    const lost = mean[LOST]!;
    const lostVar = cov[LOST * STATE_SIZE + LOST]!;
    const shared = cov[ANCHOR * STATE_SIZE + LOST]!;
    const sure = anchorVar < SURE_ANCHOR_VAR_L2;
    const slope = sure ? 0 : shared / anchorVar;
    const restVar = Math.max(0, lostVar - slope * shared);
    if (!sure && anchorVar > ANCHOR_RULES * restVar) {
      // Nearly all doubt is about where the level started, and that is Gaussian.
      const sd = Math.sqrt(Math.max(SURE_ANCHOR_VAR_L2, anchorVar + lostVar - 2 * shared));
      chance += weight * normalCdf((lowL - anchor + lost) / sd);
      continue;
    }
    for (const [z, share] of sure ? CERTAIN_NODE : NORMAL_NODES) {
      const off = z * Math.sqrt(anchorVar);
      chance +=
        weight *
        share *
        logNormalTail(Math.max(0, lost + slope * off), restVar, anchor + off - lowL);
    }
  }
  // Weights add up to one but for a last bit.
  return Math.min(1, chance);
}
