/** One guess at how lively a system's use is; the bank of them is what gets learned over. */
export interface UseModel {
  /** Stationary sd of the day's own departure, ln. */
  readonly noiseSd: number;
  /** Its memory from day to day, 0..1. */
  readonly noiseMemory: number;
  /** sd of the daily change of growth, ln per day². */
  readonly growthTurnSd: number;
}

/** A growth spurt is forgotten over about a month. */
export const GROWTH_MEMORY = 0.97;
/** The rate wanders by itself: roots, pests, a door left open; ln per √day. */
export const RATE_WANDER_SD = 0.012;

const NOISE_SDS = [0.07, 0.14, 0.24, 0.4];
const NOISE_MEMORIES = [0.3, 0.75];
const GROWTH_TURN_SDS = [0.003, 0.01];

export const useModels: readonly UseModel[] = NOISE_SDS.flatMap((noiseSd) =>
  NOISE_MEMORIES.flatMap((noiseMemory) =>
    GROWTH_TURN_SDS.map((growthTurnSd) => ({ noiseSd, noiseMemory, growthTurnSd })),
  ),
);
