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
/** A reservoir is built to last a grown crop some days: its usable litres over this. */
const GROWN_DAYS_A_FILL = 6;

/**
 * What a system is guessed to lose a day when its crop is grown, L: the guess by crop and the guess by
 * size, halfway between on a scale of factors; evaporation where nothing grows.
 */
export function guessedGrownUseLPerDay(system: WaterSystem): number {
  if (system.plants === 0) return Math.max(LEAST_L_PER_DAY, BARE_SHARE_OF_BRIM * system.brimL);
  const eachL = GROWN_PLANT_L_PER_DAY[(system.crop ?? '').toLowerCase()] ?? ANY_PLANT_L_PER_DAY;
  const bySize = (system.brimL - system.lowL) / GROWN_DAYS_A_FILL;
  return Math.max(LEAST_L_PER_DAY, Math.sqrt(eachL * system.plants * bySize));
}
