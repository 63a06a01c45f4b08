import { firstOutside, holds, type Outcome, outsideOf } from '../outcome.ts';
import type { MilliequivalentPerL } from '../units/concentration.ts';
import type { Celsius } from '../units/temperature.ts';
import { alkalinityOfCarbonEqPerL, carbonOfAlkalinityMolPerL } from './carbonate-alkalinity.ts';
import { carbonateConstants } from './carbonate-constants.ts';
import { doseFor, type PhDose } from './dose.ts';
import { alkalinity, waterPh } from './ranges.ts';

/**
 * Acid or alkali that moves the pH at once, before any carbon dioxide has come or gone.
 *
 *     CT = (ALK₀ − Kw/H₀ + H₀)/(α₁ + 2 α₂)   stays;   dose = ALK₀ − ALK(CT, pH target)      meq/L
 *
 * After acid the pH climbs again within hours to a day as the gas leaves, faster with air stones: dose
 * in parts and measure again. It counts carbonate only; phosphate adds `phosphateAlkaliMeqPerL`.
 * pH 3.5 to 10, alkalinity −0.5 to 10 meq/L and not below what the pH itself allows, 0 to 50 °C.
 *
 * Source: Stumm and Morgan, Aquatic Chemistry, closed carbonate system.
 * @example closedDose({ alkalinityMeqPerL: milliequivalentPerL(3), presentPh: 7.6, targetPh: 5.8,
 *   waterCelsius: celsius(25) }) // acid, 2.308 meq/L: 77 % of the alkalinity
 */
export function closedDose(water: {
  readonly alkalinityMeqPerL: MilliequivalentPerL;
  readonly presentPh: number;
  readonly targetPh: number;
  readonly waterCelsius: Celsius;
}): Outcome<PhDose> {
  const outside = firstOutside(
    [water.alkalinityMeqPerL, alkalinity],
    [water.presentPh, waterPh],
    [water.targetPh, waterPh],
  );
  if (outside) return outside;
  const constants = carbonateConstants(water.waterCelsius);
  if (!constants.ok) return constants;
  const before = water.alkalinityMeqPerL / 1000;
  const carbon = carbonOfAlkalinityMolPerL(before, water.presentPh, constants.value);
  if (carbon < 0) {
    const least = alkalinityOfCarbonEqPerL(0, water.presentPh, constants.value) * 1000;
    return outsideOf({ ...alkalinity, from: least }, water.alkalinityMeqPerL);
  }
  return holds(doseFor(before, alkalinityOfCarbonEqPerL(carbon, water.targetPh, constants.value)));
}
