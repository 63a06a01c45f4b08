import { AMOUNT_ADDERS, BRIM_FILLERS } from './fill-habit.ts';
import { guessedGrownUseLPerDay } from './grown-use.ts';
import { useModels } from './use-model.ts';
import {
  ANCHOR,
  type BeliefPart,
  DRIVER,
  GROWN,
  GROWTH,
  NOISE,
  RATE,
  STATE_SIZE,
  type WaterBelief,
} from './water-belief.ts';
import { plainPrior, type WaterPrior } from './water-prior.ts';
import type { WaterSystem } from './water-system.ts';
import { GROWTH_SD, YOUNG_LN, YOUNG_SD } from './young-crop.ts';

/** Before anybody said how full it is, as shares of the brim. */
const START_LEVEL_SHARE = 0.6;
const START_LEVEL_SD_SHARE = 0.3;

/**
 * What is believed of a system nobody has said a word about: the level anywhere up to the brim, the
 * use guessed from crop and size and, through `prior`, from what the greenhouse's other systems and
 * seasons have shown.
 */
export function startBelief(
  system: WaterSystem,
  atMs: number,
  prior: WaterPrior = plainPrior,
): WaterBelief {
  const grownLn = Math.log(guessedGrownUseLPerDay(system)) + prior.grownShift.mean;
  const youngLn = system.plants > 0 ? YOUNG_LN : 0;
  const parts = useModels.map((model, index): BeliefPart => {
    const mean = new Array<number>(STATE_SIZE).fill(0);
    mean[ANCHOR] = START_LEVEL_SHARE * system.brimL;
    mean[RATE] = grownLn + youngLn;
    mean[GROWN] = grownLn;
    mean[DRIVER] = prior.driver.mean;
    const cov = new Array<number>(STATE_SIZE * STATE_SIZE).fill(0);
    const set = (a: number, b: number, value: number) => {
      cov[a * STATE_SIZE + b] = value;
      cov[b * STATE_SIZE + a] = value;
    };
    set(ANCHOR, ANCHOR, (START_LEVEL_SD_SHARE * system.brimL) ** 2);
    set(GROWN, GROWN, prior.grownShift.variance);
    set(RATE, GROWN, prior.grownShift.variance);
    set(RATE, RATE, prior.grownShift.variance + YOUNG_SD ** 2);
    set(GROWTH, GROWTH, GROWTH_SD ** 2);
    set(NOISE, NOISE, model.noiseSd ** 2);
    set(DRIVER, DRIVER, prior.driver.variance);
    return { model: index, weight: prior.modelWeights[index]!, mean, cov };
  });
  return { atMs, parts, habit: system.filledToBrim ? BRIM_FILLERS : AMOUNT_ADDERS };
}
