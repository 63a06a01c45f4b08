import type { WaterSystem } from './water-system.ts';

/** How closely people meet the brim, as a share of it. */
export const FILL_SLOP_SHARE = 0.005;
/** A dipstick or a mark on the wall. */
const LEVEL_READ_SHARE = 0.012;
/** "About half full." */
const ROUGH_LEVEL_SHARE = 0.07;
/** Jugs and cans are not laboratory glass. */
const AMOUNT_SHARE = 0.015;
const ROUGH_AMOUNT_SHARE = 0.12;
/** A round number this many times its rounding step is taken as rounded to that step. */
const ROUNDED_FROM_STEPS = 4;

/** How far a level reading may be off, sd in litres. */
export function readingSdL(litres: number, approximate: boolean, system: WaterSystem): number {
  const share = approximate ? ROUGH_LEVEL_SHARE : LEVEL_READ_SHARE;
  return Math.hypot(share * system.brimL, roundingSdL(litres));
}

/** How far a reported amount may be off, sd in litres. */
export function amountSdL(litres: number, approximate: boolean, system: WaterSystem): number {
  const share = approximate ? ROUGH_AMOUNT_SHARE : AMOUNT_SHARE;
  return Math.hypot(share * litres, FILL_SLOP_SHARE * system.brimL, roundingSdL(litres));
}

/** A number rounded to a step is uniform over it: sd = step / √12. */
function roundingSdL(litres: number): number {
  return roundingStepL(litres) / Math.sqrt(12);
}

/** The coarsest usual step that the number is a multiple of: 10, 5, 1 or 0.1 L. */
function roundingStepL(litres: number): number {
  for (const step of [10, 5, 1]) {
    if (litres % step === 0 && litres >= step * ROUNDED_FROM_STEPS) return step;
  }
  return litres % 1 === 0 ? 1 : 0.1;
}
