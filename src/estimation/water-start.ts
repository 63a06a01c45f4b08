import { useModels } from './use-model.ts';
import { type BeliefPart, STATE_SIZE, type WaterBelief } from './water-belief.ts';
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
/** Crops start small. */
const START_SHARE_OF_GROWN = 0.4;
/** A reservoir is built to last some days: its usable litres over this are a second opinion. */
const USUAL_DAYS_A_FILL = 6;

/** What is presumed of people's way of topping up weighs as much as this many top-ups seen. */
const HABIT_COUNTS = 10;
const RATE_SD = 0.8;
const GROWTH_MEAN = 0.012;
const GROWTH_SD = 0.025;
const DRIVER_MEAN = 0.75;
const DRIVER_SD = 0.3;

/**
 * What is believed of a system nobody has said a word about: the level anywhere up to the brim, the
 * use guessed from crop and size.
 */
export function startBelief(system: WaterSystem, atMs: number): WaterBelief {
  const parts = useModels.map((model, index): BeliefPart => {
    const sds = [system.brimL * 0.3, 0, RATE_SD, GROWTH_SD, model.noiseSd, DRIVER_SD];
    const cov = new Array<number>(STATE_SIZE * STATE_SIZE).fill(0);
    for (const [i, sd] of sds.entries()) cov[i * STATE_SIZE + i] = sd * sd;
    return {
      model: index,
      weight: 1 / useModels.length,
      mean: [
        system.brimL * 0.6,
        0,
        Math.log(guessedUseLPerDay(system)),
        GROWTH_MEAN,
        0,
        DRIVER_MEAN,
      ],
      cov,
    };
  });
  const filledShare = system.filledToBrim ? 0.9 : 0.3;
  return {
    atMs,
    parts,
    filledCount: HABIT_COUNTS * filledShare,
    addedCount: HABIT_COUNTS * (1 - filledShare),
  };
}

function guessedUseLPerDay(system: WaterSystem): number {
  if (system.plants === 0) return Math.max(0.05, BARE_SHARE_OF_BRIM * system.brimL);
  const grown = GROWN_PLANT_L_PER_DAY[(system.crop ?? '').toLowerCase()] ?? ANY_PLANT_L_PER_DAY;
  const byCrop = grown * START_SHARE_OF_GROWN * system.plants;
  const bySize = (system.brimL - system.lowL) / USUAL_DAYS_A_FILL;
  return Math.sqrt(byCrop * bySize);
}
