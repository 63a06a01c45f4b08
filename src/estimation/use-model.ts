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
}

/** A growth spurt is forgotten over about a month. */
export const GROWTH_MEMORY = 0.95;
const GROWTH_PULLS = [0.01, 0.025];
/** What a grown crop would lose drifts as fruit sets and leaves age; ln per √day. */
export const GROWN_WANDER_SD = 0.01;
/** A young crop may spurt: this much more turn of growth for each unit of ln it is from grown. */
export const YOUNG_TURN_SD = 0.006;
/** The rate wanders by itself: roots, pests, a door left open; ln per √day. */
export const RATE_WANDER_SD = 0.012;

const NOISE_SDS = [0.1, 0.18, 0.32];
const NOISE_MEMORIES = [0.5];
const GROWTH_TURN_SDS = [0.002];

export const useModels: readonly UseModel[] = NOISE_SDS.flatMap((noiseSd) =>
  NOISE_MEMORIES.flatMap((noiseMemory) =>
    GROWTH_TURN_SDS.flatMap((growthTurnSd) =>
      GROWTH_PULLS.map((growthPull) => ({ noiseSd, noiseMemory, growthTurnSd, growthPull })),
    ),
  ),
);
