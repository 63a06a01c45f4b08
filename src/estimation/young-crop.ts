import type { MovingState } from './water-advance.ts';
import { GROWN, GROWTH, RATE, STATE_SIZE } from './water-belief.ts';

/** Crops start small: ln of the share of their grown use, and how far that may be off. */
export const YOUNG_LN = -1.7;
export const YOUNG_SD = 0.6;
/** Growth differs this much from its usual course at first, ln per day. */
export const GROWTH_SD = 0.015;

/** A young crop takes the place of what grew: the grown use stays as known, the rate starts anew. */
export function replant({ mean, cov }: MovingState): void {
  const n = STATE_SIZE;
  mean[RATE] = mean[GROWN]! + YOUNG_LN;
  mean[GROWTH] = 0;
  for (let i = 0; i < n; i += 1) {
    const shared = cov[i * n + GROWN]!;
    cov[i * n + RATE] = shared;
    cov[RATE * n + i] = shared;
    cov[i * n + GROWTH] = 0;
    cov[GROWTH * n + i] = 0;
  }
  cov[RATE * n + RATE] = cov[GROWN * n + GROWN]! + YOUNG_SD * YOUNG_SD;
  cov[RATE * n + GROWTH] = 0;
  cov[GROWTH * n + RATE] = 0;
  cov[GROWTH * n + GROWTH] = GROWTH_SD * GROWTH_SD;
}
