import { levelOf } from './level-update.ts';
import { ANCHOR, type BeliefPart, LOST, STATE_SIZE } from './water-belief.ts';
import type { WaterSystem } from './water-system.ts';

/** Parts lighter than this are dropped. */
const LIGHTEST = 1e-5;
/** Levels closer than this share of the brim are one story. */
const SAME_LEVEL_SHARE = 0.03;
/** Stories kept a model. */
const MOST_STORIES = 3;

/**
 * Parts of one model that tell the same story of the level become one, with the mixture's own mean
 * and covariance; the lightest are dropped. Weights sum to 1 again.
 */
export function mergeParts(parts: readonly BeliefPart[], system: WaterSystem): BeliefPart[] {
  const kept: BeliefPart[] = [];
  const heavyFirst = parts
    .filter((part) => part.weight > LIGHTEST)
    .sort((a, b) => a.model - b.model || b.weight - a.weight);
  for (let from = 0; from < heavyFirst.length; ) {
    let to = from + 1;
    while (to < heavyFirst.length && heavyFirst[to]!.model === heavyFirst[from]!.model) to += 1;
    kept.push(...mergeStories(heavyFirst.slice(from, to), SAME_LEVEL_SHARE * system.brimL));
    from = to;
  }
  const total = kept.reduce((sum, part) => sum + part.weight, 0);
  return kept.map((part) => ({ ...part, weight: part.weight / total }));
}

function mergeStories(parts: readonly BeliefPart[], sameL: number): BeliefPart[] {
  const stories: BeliefPart[][] = [];
  for (const part of parts) {
    const level = levelOf(part).litres;
    const story = stories.find((s) => Math.abs(levelOf(s[0]!).litres - level) < sameL);
    if (story) story.push(part);
    else if (stories.length < MOST_STORIES) stories.push([part]);
  }
  return stories.map((story) => {
    if (story.length === 1) return story[0]!;
    const anchor = story[0]!.mean[ANCHOR]!;
    const oneAnchor = story.every((part) => Math.abs(part.mean[ANCHOR]! - anchor) < sameL);
    return mergeAll(oneAnchor ? story : story.map(withoutLoss));
  });
}

/** One Gaussian with the weight, mean and covariance of the mixture. */
function mergeAll(parts: readonly BeliefPart[]): BeliefPart {
  const n = STATE_SIZE;
  const weight = parts.reduce((sum, part) => sum + part.weight, 0);
  const mean = new Array<number>(n).fill(0);
  const cov = new Array<number>(n * n).fill(0);
  for (const part of parts) {
    for (let i = 0; i < n; i += 1) mean[i] = mean[i]! + (part.weight / weight) * part.mean[i]!;
  }
  for (const part of parts) {
    const share = part.weight / weight;
    for (let i = 0; i < n; i += 1) {
      const di = part.mean[i]! - mean[i]!;
      for (let j = 0; j < n; j += 1) {
        const spread = di * (part.mean[j]! - mean[j]!);
        cov[i * n + j] = cov[i * n + j]! + share * (part.cov[i * n + j]! + spread);
      }
    }
  }
  return { model: parts[0]!.model, weight, mean, cov };
}

/** The same part with the loss taken off its anchor, so that parts of different anchors can meet. */
function withoutLoss(part: BeliefPart): BeliefPart {
  if (part.mean[LOST] === 0) return part;
  const n = STATE_SIZE;
  const mean = part.mean.slice();
  const cov = part.cov.slice();
  const { litres, variance } = levelOf(part);
  mean[ANCHOR] = litres;
  mean[LOST] = 0;
  for (let i = 0; i < n; i += 1) {
    const shared = cov[i * n + ANCHOR]! - cov[i * n + LOST]!;
    cov[i * n + ANCHOR] = shared;
    cov[ANCHOR * n + i] = shared;
  }
  for (let i = 0; i < n; i += 1) {
    cov[i * n + LOST] = 0;
    cov[LOST * n + i] = 0;
  }
  cov[ANCHOR * n + ANCHOR] = variance;
  return { ...part, mean, cov };
}
