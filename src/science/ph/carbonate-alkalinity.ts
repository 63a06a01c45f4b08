import type { CarbonateConstants } from './carbonate-constants.ts';

const hydrogenMolPerL = (ph: number): number => 10 ** -ph;

/** Kw/H − H: what water itself adds to alkalinity, mol/L. */
const waterShareMolPerL = (ph: number, constants: CarbonateConstants): number =>
  constants.waterMol2PerL2 / hydrogenMolPerL(ph) - hydrogenMolPerL(ph);

/** α₁ + 2 α₂: acid that a mole of carbonate binds at this pH, equivalents per mol. */
function boundPerCarbon(ph: number, { firstMolPerL, secondMolPerL }: CarbonateConstants): number {
  const hydrogen = hydrogenMolPerL(ph);
  const none = hydrogen ** 2;
  const one = firstMolPerL * hydrogen;
  const two = firstMolPerL * secondMolPerL;
  return (one + 2 * two) / (none + one + two);
}

/**
 * Alkalinity of water that holds a given amount of carbonate.
 *
 *     ALK = CT (α₁ + 2 α₂) + Kw/H − H      eq/L
 *
 * Source: Stumm and Morgan, Aquatic Chemistry.
 */
export const alkalinityOfCarbonEqPerL = (
  carbonMolPerL: number,
  ph: number,
  constants: CarbonateConstants,
): number => carbonMolPerL * boundPerCarbon(ph, constants) + waterShareMolPerL(ph, constants);

/**
 * Carbonate in water of a given alkalinity and pH; negative when the two contradict each other.
 *
 *     CT = (ALK − Kw/H + H) / (α₁ + 2 α₂)      mol/L
 */
export const carbonOfAlkalinityMolPerL = (
  alkalinityEqPerL: number,
  ph: number,
  constants: CarbonateConstants,
): number => (alkalinityEqPerL - waterShareMolPerL(ph, constants)) / boundPerCarbon(ph, constants);

/**
 * Alkalinity of water in balance with air.
 *
 *     ALK = KH pCO₂ (K1/H + 2 K1 K2/H²) + Kw/H − H      eq/L
 *
 * Source: Stumm and Morgan, Aquatic Chemistry, open system.
 */
export function alkalinityUnderAirEqPerL(
  carbonDioxideAtm: number,
  ph: number,
  constants: CarbonateConstants,
): number {
  const hydrogen = hydrogenMolPerL(ph);
  const one = constants.firstMolPerL / hydrogen;
  const two = (one * constants.secondMolPerL) / hydrogen;
  return (
    constants.gasMolPerLAtm * carbonDioxideAtm * (one + 2 * two) + waterShareMolPerL(ph, constants)
  );
}
