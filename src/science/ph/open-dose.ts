import { firstOutside, holds, type Outcome } from '../outcome.ts';
import type { MilliequivalentPerL } from '../units/concentration.ts';
import type { Celsius } from '../units/temperature.ts';
import { alkalinityUnderAirEqPerL } from './carbonate-alkalinity.ts';
import { carbonateConstants } from './carbonate-constants.ts';
import { doseFor, type PhDose } from './dose.ts';
import { alkalinity, carbonDioxide, waterPh } from './ranges.ts';

/**
 * Acid or alkali after which the pH rests at the target once the water is in balance with the air.
 * Given at once it would throw the pH far beyond the target: it is the sum of all parts, not a dose.
 *
 *     dose = ALK₀ − [KH pCO₂ (K1/H + 2 K1 K2/H²) + Kw/H − H] at the target      meq/L
 *
 * pH 3.5 to 10, alkalinity −0.5 to 10 meq/L, 100 to 5000 ppm, 0 to 50 °C, at one atmosphere.
 *
 * Source: Stumm and Morgan, Aquatic Chemistry, open carbonate system.
 * @example openDose({ alkalinityMeqPerL: milliequivalentPerL(3), targetPh: 5.8,
 *   carbonDioxidePpm: 420, waterCelsius: celsius(25) }) // acid, 2.998 meq/L
 */
export function openDose(water: {
  readonly alkalinityMeqPerL: MilliequivalentPerL;
  readonly targetPh: number;
  readonly carbonDioxidePpm: number;
  readonly waterCelsius: Celsius;
}): Outcome<PhDose> {
  const outside = firstOutside(
    [water.alkalinityMeqPerL, alkalinity],
    [water.targetPh, waterPh],
    [water.carbonDioxidePpm, carbonDioxide],
  );
  if (outside) return outside;
  const constants = carbonateConstants(water.waterCelsius);
  if (!constants.ok) return constants;
  const after = alkalinityUnderAirEqPerL(
    water.carbonDioxidePpm / 1e6,
    water.targetPh,
    constants.value,
  );
  return holds(doseFor(water.alkalinityMeqPerL / 1000, after));
}
