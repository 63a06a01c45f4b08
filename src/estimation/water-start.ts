import { AMOUNT_ADDERS, BRIM_FILLERS } from './fill-habit.ts';
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
import type { WaterSystem } from './water-system.ts';

/**
 * Litres a grown plant drinks on a fair summer day. Common practice, to a factor of two either way;
 * the spread of the start says so.
 */
const GROWN_PLANT_L_PER_DAY: Readonly<Record<string, number>> = {
  tomato: 1.2,
  cucumber: 1.5,
  pepper: 0.8,
  aubergine: 0.9,
  courgette: 1.5,
  basil: 0.15,
  lettuce: 0.1,
  strawberry: 0.15,
};
const ANY_PLANT_L_PER_DAY = 0.4;
/** Evaporation of a system without plants, as a share of its brim a day. */
const BARE_SHARE_OF_BRIM = 0.005;
const LEAST_L_PER_DAY = 0.05;
/** Before anybody said how full it is, as shares of the brim. */
const START_LEVEL_SHARE = 0.6;
const START_LEVEL_SD_SHARE = 0.3;
/** A reservoir is built to last a grown crop some days: its usable litres over this. */
const GROWN_DAYS_A_FILL = 6;
/** How far that guess may be off, ln. */
const GROWN_SD = 0.55;
/** Crops start small, ln of the share of their grown use, and how far that may be off. */
const YOUNG_LN = -1.7;
const YOUNG_SD = 0.6;

const GROWTH_SD = 0.015;
/** Under glass, light and warmth count for somewhat less than on open grass. */
const DRIVER_MEAN = 0.75;
const DRIVER_SD = 0.25;

/**
 * What is believed of a system nobody has said a word about: the level anywhere up to the brim, the
 * use guessed from crop and size.
 */
export function startBelief(system: WaterSystem, atMs: number): WaterBelief {
  const grownLn = Math.log(grownUseLPerDay(system));
  const youngLn = system.plants > 0 ? YOUNG_LN : 0;
  const parts = useModels.map((model, index): BeliefPart => {
    const mean = new Array<number>(STATE_SIZE).fill(0);
    mean[ANCHOR] = START_LEVEL_SHARE * system.brimL;
    mean[RATE] = grownLn + youngLn;
    mean[GROWN] = grownLn;
    mean[DRIVER] = DRIVER_MEAN;
    const cov = new Array<number>(STATE_SIZE * STATE_SIZE).fill(0);
    const set = (a: number, b: number, value: number) => {
      cov[a * STATE_SIZE + b] = value;
      cov[b * STATE_SIZE + a] = value;
    };
    set(ANCHOR, ANCHOR, (START_LEVEL_SD_SHARE * system.brimL) ** 2);
    set(GROWN, GROWN, GROWN_SD ** 2);
    set(RATE, GROWN, GROWN_SD ** 2);
    set(RATE, RATE, GROWN_SD ** 2 + YOUNG_SD ** 2);
    set(GROWTH, GROWTH, GROWTH_SD ** 2);
    set(NOISE, NOISE, model.noiseSd ** 2);
    set(DRIVER, DRIVER, DRIVER_SD ** 2);
    return { model: index, weight: 1 / useModels.length, mean, cov };
  });
  return { atMs, parts, habit: system.filledToBrim ? BRIM_FILLERS : AMOUNT_ADDERS };
}

/** The guess by crop and the guess by size, halfway between on a scale of factors. */
function grownUseLPerDay(system: WaterSystem): number {
  if (system.plants === 0) return Math.max(LEAST_L_PER_DAY, BARE_SHARE_OF_BRIM * system.brimL);
  const eachL = GROWN_PLANT_L_PER_DAY[(system.crop ?? '').toLowerCase()] ?? ANY_PLANT_L_PER_DAY;
  const bySize = (system.brimL - system.lowL) / GROWN_DAYS_A_FILL;
  return Math.max(LEAST_L_PER_DAY, Math.sqrt(eachL * system.plants * bySize));
}
