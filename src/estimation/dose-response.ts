import { alkaliBetweenMeqPerL, type PhBuffer, phAfterAlkali } from './ph-buffer.ts';

/**
 * How strongly a pH product acts in one system, against what its strength and the presumed buffer
 * say: a belief over ln of that factor, held on a grid. One factor stands for all that is unknown
 * together, the product's strength, the litres, what is left of the alkalinity, since they all
 * stretch the same curve.
 */
export interface DoseResponse {
  /** Chance of each of `LN_FACTORS`; they sum to 1. */
  readonly weights: readonly number[];
  /** Doses that it has learned from. */
  readonly trials: number;
}

/** A dose whose effect was measured. */
export interface DoseTrial {
  readonly buffer: PhBuffer;
  readonly fromPh: number;
  readonly toPh: number;
  /** What was given by the presumed strength, meq/L; acid is negative. */
  readonly presumedMeqPerL: number;
}

const STEP = 0.1;
const REACH = 4;
/** ln of the factors considered: from a fiftieth to fifty times as strong as presumed. */
export const LN_FACTORS: readonly number[] = Array.from(
  { length: 2 * (REACH / STEP) + 1 },
  (_, i) => -REACH + i * STEP,
);

/** Two readings of one pen, each some hundredths off, and mixing that is never perfect. */
const READING_SD = 0.08;
/** The formula's own error grows with the move. */
const MODEL_SD_SHARE = 0.2;
/** A chance in twenty that something else happened, so that one odd reading cannot take over. */
const MISHAP_CHANCE = 0.05;
const MISHAP_SD = 1;
/** Products are changed and buffers come and go: each trial counts a little less than the next. */
const KEPT_LN_SD = 0.1;

/** What is believed before any dose: the factor is 1, give or take. `lnSd` is that give or take. */
export function presumedResponse(lnSd: number): DoseResponse {
  const weights = LN_FACTORS.map((ln) => Math.exp(-(ln * ln) / (2 * lnSd * lnSd)));
  return { weights: normalised(weights), trials: 0 };
}

/** The belief after one more dose: what missed teaches as much as what met. */
export function afterTrial(before: DoseResponse, trial: DoseTrial): DoseResponse {
  const spread = blurred(before.weights);
  const weights = spread.map((weight, i) => weight * likelihood(trial, LN_FACTORS[i]!));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  if (!(total > 0)) return before;
  return { weights: normalised(weights), trials: before.trials + 1 };
}

/** The factor below which the belief lies with the given chance. */
export function factorQuantile(response: DoseResponse, chance: number): number {
  let below = 0;
  for (const [i, weight] of response.weights.entries()) {
    if (below + weight >= chance) {
      const share = weight > 0 ? (chance - below) / weight : 0.5;
      return Math.exp(LN_FACTORS[i]! + STEP * (share - 0.5));
    }
    below += weight;
  }
  return Math.exp(REACH);
}

/** Presumed meq/L that would bring the pH where it should be, if the factor were the given one. */
export function presumedMeqFor(
  buffer: PhBuffer,
  fromPh: number,
  toPh: number,
  factor: number,
): number {
  return Math.abs(alkaliBetweenMeqPerL(buffer, fromPh, toPh)) / factor;
}

function likelihood(trial: DoseTrial, lnFactor: number): number {
  const expected = phAfterAlkali(
    trial.buffer,
    trial.fromPh,
    trial.presumedMeqPerL * Math.exp(lnFactor),
  );
  const move = expected - trial.fromPh;
  const sd = Math.hypot(READING_SD, MODEL_SD_SHARE * move);
  const miss = trial.toPh - expected;
  return (1 - MISHAP_CHANCE) * density(miss, sd) + MISHAP_CHANCE * density(miss, MISHAP_SD);
}

function density(miss: number, sd: number): number {
  return Math.exp(-(miss * miss) / (2 * sd * sd)) / sd;
}

/** The weights after a small random walk of the factor. */
function blurred(weights: readonly number[]): readonly number[] {
  const share = (KEPT_LN_SD * KEPT_LN_SD) / (2 * STEP * STEP);
  return weights.map((weight, i) => {
    const left = weights[i - 1] ?? weight;
    const right = weights[i + 1] ?? weight;
    return weight + share * (left - 2 * weight + right);
  });
}

function normalised(weights: readonly number[]): readonly number[] {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / total);
}
