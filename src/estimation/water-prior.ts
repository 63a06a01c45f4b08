import { guessedGrownUseLPerDay } from './grown-use.ts';
import { useModels } from './use-model.ts';
import { DRIVER, GROWN, STATE_SIZE, type WaterBelief } from './water-belief.ts';
import type { WaterSystem } from './water-system.ts';

interface Estimate {
  readonly mean: number;
  readonly variance: number;
}

/** What a new system is presumed to be like. */
export interface WaterPrior {
  /** One for each of `useModels`, adding up to 1. */
  readonly modelWeights: readonly number[];
  /** Exponent on the weather. */
  readonly driver: Estimate;
  /** ln of the grown use over what crop and size let guess. */
  readonly grownShift: Estimate;
}

/** Under glass, light and warmth count for somewhat less than on open grass. */
const DRIVER_MEAN = 0.75;
/** Systems of one greenhouse differ by this, and greenhouses from each other by as much again. */
const DRIVER_OWN_SD = 0.18;
const DRIVER_HOUSE_SD = 0.18;
/** How far crop and size lead astray: a system by itself, and a whole greenhouse (its glass, its air). */
const GROWN_OWN_SD = 0.39;
const GROWN_HOUSE_SD = 0.39;

/** Before anything was learned in this greenhouse. */
export const plainPrior: WaterPrior = {
  modelWeights: useModels.map(({ prior }) => prior),
  driver: { mean: DRIVER_MEAN, variance: DRIVER_OWN_SD ** 2 + DRIVER_HOUSE_SD ** 2 },
  grownShift: { mean: 0, variance: GROWN_OWN_SD ** 2 + GROWN_HOUSE_SD ** 2 },
};

/**
 * The prior for a new system in a greenhouse whose other systems, or last season's, are known: what
 * they have in common carries over, what is their own does not (empirical Bayes, by the usual normal
 * hierarchy: each peer tells of the house with its own variance and the spread between systems).
 */
export function priorFrom(
  peers: readonly { readonly system: WaterSystem; readonly belief: WaterBelief }[],
): WaterPrior {
  const weights = useModels.map(({ prior }, model) =>
    peers.reduce(
      (sum, { belief }) =>
        sum + belief.parts.reduce((w, part) => w + (part.model === model ? part.weight : 0), 0),
      prior,
    ),
  );
  const driver = pooled(
    peers.map(({ belief }) => estimateOf(belief, DRIVER)),
    { mean: DRIVER_MEAN, variance: DRIVER_HOUSE_SD ** 2 },
    DRIVER_OWN_SD ** 2,
  );
  const grownShift = pooled(
    peers
      .filter(({ system }) => system.plants > 0)
      .map(({ system, belief }) => {
        const { mean, variance } = estimateOf(belief, GROWN);
        return { mean: mean - Math.log(guessedGrownUseLPerDay(system)), variance };
      }),
    { mean: 0, variance: GROWN_HOUSE_SD ** 2 },
    GROWN_OWN_SD ** 2,
  );
  return { modelWeights: weights.map((w) => w / (peers.length + 1)), driver, grownShift };
}

/** The house's figure from its peers, with the new system's own spread on top. */
function pooled(peers: readonly Estimate[], house: Estimate, ownVariance: number): Estimate {
  let precision = 1 / house.variance;
  let weighted = house.mean * precision;
  for (const { mean, variance } of peers) {
    // A peer's variance already holds the prior it started from; what it learned is the rest.
    const learned = 1 / variance - 1 / (house.variance + ownVariance);
    if (learned <= 0) continue;
    const share = 1 / (1 / learned + ownVariance);
    precision += share;
    weighted += share * mean;
  }
  return { mean: weighted / precision, variance: 1 / precision + ownVariance };
}

function estimateOf({ parts }: WaterBelief, which: number): Estimate {
  let mean = 0;
  let square = 0;
  for (const part of parts) {
    const at = part.mean[which]!;
    mean += part.weight * at;
    square += part.weight * (at * at + part.cov[which * STATE_SIZE + which]!);
  }
  return { mean, variance: Math.max(1e-6, square - mean * mean) };
}
