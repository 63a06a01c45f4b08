/** One guess at how lively a system's use is; the bank of them is what gets learned over. */
export interface UseModel {
  /** Stationary sd of the day's own departure, ln. */
  readonly noiseSd: number;
  /** Its memory from day to day, 0..1. */
  readonly noiseMemory: number;
  /** sd of the daily change of growth, ln per day². */
  readonly growthTurnSd: number;
  /** Share of the way to the grown rate that a crop goes in a day, in ln: Gompertz growth. */
  readonly growthPull: number;
  /** How likely it is before anything was logged; over the whole bank they add up to 1. */
  readonly prior: number;
}

/** A growth spurt is forgotten over about a month. */
export const GROWTH_MEMORY = 0.95;
/** A crop that grows for months, and one that is grown in one. */
const GROWTH_PULLS = [0.01, 0.04];
/** What a grown crop would lose drifts as fruit sets and leaves age; ln per √day. */
export const GROWN_WANDER_SD = 0.01;
/** A young crop may spurt: this much more turn of growth for each unit of ln it is from grown. */
export const YOUNG_TURN_SD = 0.009;
/** The rate wanders by itself: roots, pests, a door left open; ln per √day. */
export const RATE_WANDER_SD = 0.012;

/** Days are rarely as uneven as the last, and that one alone makes a fill last a third less. */
const NOISES: readonly { readonly sd: number; readonly prior: number }[] = [
  { sd: 0.1, prior: 0.36 },
  { sd: 0.18, prior: 0.55 },
  { sd: 0.32, prior: 0.09 },
];
const NOISE_MEMORY = 0.5;
const GROWTH_TURN_SD = 0.0005;

export const useModels: readonly UseModel[] = NOISES.flatMap(({ sd, prior }) =>
  GROWTH_PULLS.map(
    (growthPull): UseModel => ({
      noiseSd: sd,
      noiseMemory: NOISE_MEMORY,
      growthTurnSd: GROWTH_TURN_SD,
      growthPull,
      prior: prior / GROWTH_PULLS.length,
    }),
  ),
);
