import type { FillHabit } from './fill-habit.ts';

/**
 * What is believed of one system's water: a weighted bank of Gaussians, plain data.
 *
 * Each part lives under one of the `useModels` (how noisy days are, how fast growth turns), so the
 * weights learn the hyperparameters; parts also split over what may have happened (filled to the
 * brim or not, done but not reported) and are merged where they agree again.
 *
 * The state of a part, in this order:
 *   ANCHOR  litres at the last instant the level was set (a fill, a change)
 *   LOST    litres lost since; log-normal, so that a week's use has the right tail
 *   RATE    ln of L/day on a day of REFERENCE_ETO_MM
 *   GROWTH  change of RATE a day beyond that growth
 *   NOISE   the day's own departure, ln, with memory
 *   DRIVER  exponent on the weather: use ∝ (ETo / REFERENCE_ETO_MM)^DRIVER
 *   GROWN   ln of what a grown crop would lose: RATE is drawn towards it (Gompertz growth)
 * The level is ANCHOR − LOST.
 */
export interface WaterBelief {
  readonly atMs: number;
  readonly parts: readonly BeliefPart[];
  readonly habit: FillHabit;
}

export interface BeliefPart {
  /** Index into `useModels`. */
  readonly model: number;
  readonly weight: number;
  readonly mean: readonly number[];
  /** Row by row, STATE_SIZE². */
  readonly cov: readonly number[];
}

export const ANCHOR = 0;
export const LOST = 1;
export const RATE = 2;
export const GROWTH = 3;
export const NOISE = 4;
export const DRIVER = 5;
export const GROWN = 6;
export const STATE_SIZE = 7;

/** ETo at which use equals exp(RATE): a fair summer day, mm/day. */
export const REFERENCE_ETO_MM = 3;
