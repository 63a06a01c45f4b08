import { firstOutside, holds, type Outcome } from '../outcome.ts';
import { type MilliequivalentPerL, milliequivalentPerL } from '../units/concentration.ts';
import type { Celsius } from '../units/temperature.ts';
import { alkalinityUnderAirEqPerL } from './carbonate-alkalinity.ts';
import { carbonateConstants } from './carbonate-constants.ts';
import { alkalinity, carbonDioxide } from './ranges.ts';

/** The pH that water comes to rest at under air lies between these. */
const LOWEST_PH = 3;
const HIGHEST_PH = 11;
const HALVINGS = 60;

/**
 * pH that water of a given alkalinity comes to when it has stood under air long enough.
 *
 *     ALK = KH pCO₂ (K1/H + 2 K1 K2/H²) + Kw/H − H      solved for H
 *
 * Alkalinity −0.5 to 10 meq/L, 100 to 5000 ppm, 0 to 50 °C, at one atmosphere.
 *
 * Source: Stumm and Morgan, Aquatic Chemistry, open carbonate system.
 * @example phUnderAir({ alkalinityMeqPerL: milliequivalentPerL(3), carbonDioxidePpm: 420,
 *   waterCelsius: celsius(25) }) // 8.65
 */
export function phUnderAir(water: {
  readonly alkalinityMeqPerL: MilliequivalentPerL;
  readonly carbonDioxidePpm: number;
  readonly waterCelsius: Celsius;
}): Outcome<number> {
  const outside = firstOutside(
    [water.alkalinityMeqPerL, alkalinity],
    [water.carbonDioxidePpm, carbonDioxide],
  );
  if (outside) return outside;
  const constants = carbonateConstants(water.waterCelsius);
  if (!constants.ok) return constants;
  const wanted = water.alkalinityMeqPerL / 1000;
  const gasAtm = water.carbonDioxidePpm / 1e6;
  let low = LOWEST_PH;
  let high = HIGHEST_PH;
  // Alkalinity rises with pH throughout, so halving the span cannot miss.
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    if (alkalinityUnderAirEqPerL(gasAtm, middle, constants.value) < wanted) low = middle;
    else high = middle;
  }
  return holds((low + high) / 2);
}

/**
 * pH of clean rain, which holds nothing but the carbon dioxide of the air.
 *
 *     the open carbonate system with no alkalinity
 *
 * Source: Stumm and Morgan, Aquatic Chemistry.
 * @example rainPh({ carbonDioxidePpm: 420, waterCelsius: celsius(25) }) // 5.60
 */
export const rainPh = (rain: {
  readonly carbonDioxidePpm: number;
  readonly waterCelsius: Celsius;
}): Outcome<number> => phUnderAir({ ...rain, alkalinityMeqPerL: milliequivalentPerL(0) });
