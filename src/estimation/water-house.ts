import { useModels } from './use-model.ts';
import type { WaterBelief } from './water-belief.ts';

/**
 * How much a system's evidence for a use model counts for the others of its greenhouse, as a power of
 * it: they share a roof and a gardener, not their roots. Tuned by `npm run bench:season`.
 */
const SHARED = 0.3;
/** A model that a system has as good as ruled out is not ruled out for the others. */
const LEAST_EVIDENCE = 1e-3;

/**
 * The belief of one system with its use models weighed by what the others of the greenhouse show too
 * (how noisy days are, how fast crops grow): each learns from some dozen fills a season, all of them
 * from many. The belief itself stays the system's own, so that no system's log is counted twice.
 */
export function amongOthers(belief: WaterBelief, others: readonly WaterBelief[]): WaterBelief {
  if (others.length === 0) return belief;
  const factors = useModels.map(() => 1);
  for (const other of others) {
    const weights = modelWeights(other);
    for (const [model, { prior }] of useModels.entries()) {
      factors[model]! *= Math.max(LEAST_EVIDENCE, weights[model]! / prior) ** SHARED;
    }
  }
  const parts = belief.parts.map((part) => ({
    ...part,
    weight: part.weight * factors[part.model]!,
  }));
  const total = parts.reduce((sum, { weight }) => sum + weight, 0);
  return { ...belief, parts: parts.map((part) => ({ ...part, weight: part.weight / total })) };
}

function modelWeights({ parts }: WaterBelief): readonly number[] {
  const weights = useModels.map(() => 0);
  for (const { model, weight } of parts) weights[model]! += weight;
  return weights;
}
