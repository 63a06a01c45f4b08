import { belowChance } from './loss-mixture.ts';
import type { WaterBelief } from './water-belief.ts';

/** Where a level lies: below `lowL` with chance 5 %, below `likelyL` 50 %, below `highL` 95 %. Litres. */
export interface LevelBand {
  readonly atMs: number;
  readonly lowL: number;
  readonly likelyL: number;
  readonly highL: number;
}

/** Bisection steps: a brim of 1000 L is cut to a tenth of a litre. */
const BISECTIONS = 14;

/** The level that a belief speaks of at its own instant, between empty and the brim. */
export function levelBand({ atMs, parts }: WaterBelief, brimL: number): LevelBand {
  const quantile = (p: number): number => {
    let low = 0;
    let high = brimL;
    for (let i = 0; i < BISECTIONS; i += 1) {
      const middle = (low + high) / 2;
      if (belowChance(parts, middle) < p) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  return { atMs, lowL: quantile(0.05), likelyL: quantile(0.5), highL: quantile(0.95) };
}
