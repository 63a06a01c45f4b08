import type { Unit } from './unit.ts';

/** Amount of a substance in a litre, mmol/L. */
export type MillimolePerL = Unit<'mmol/L'>;
/** Charge or acid-binding capacity in a litre, meq/L. */
export type MilliequivalentPerL = Unit<'meq/L'>;
/** Mass in a litre, mg/L; in thin solutions the same as parts per million by mass. */
export type MilligramPerL = Unit<'mg/L'>;

export const millimolePerL = (value: number): MillimolePerL => value as MillimolePerL;
export const milliequivalentPerL = (value: number): MilliequivalentPerL =>
  value as MilliequivalentPerL;
export const milligramPerL = (value: number): MilligramPerL => value as MilligramPerL;

/** Calcium carbonate binds two acids: half its molar mass of 100.09 g/mol, mg/meq. */
const CALCIUM_CARBONATE_MG_PER_MEQ = 50.04;
/** One German degree is 10 mg/L of CaO (56.08 g/mol, two acids), meq/L. */
const MEQ_PER_L_PER_GERMAN_DEGREE = 10 / (56.08 / 2);

/** @example milligramPerLFromMillimole(millimolePerL(0.2), 32) // 6.4 */
export const milligramPerLFromMillimole = (
  amountMmolPerL: MillimolePerL,
  molarMassGPerMol: number,
): MilligramPerL => milligramPerL(amountMmolPerL * molarMassGPerMol);

/** @example milliequivalentPerLFromCalciumCarbonate(milligramPerL(150)) // 3.00 */
export const milliequivalentPerLFromCalciumCarbonate = (
  alkalinityMgCaco3PerL: MilligramPerL,
): MilliequivalentPerL => milliequivalentPerL(alkalinityMgCaco3PerL / CALCIUM_CARBONATE_MG_PER_MEQ);

/**
 * Alkalinity from German degrees of carbonate hardness, the unit of drop tests.
 * @example milliequivalentPerLFromCarbonateHardness(8) // 2.85
 */
export const milliequivalentPerLFromCarbonateHardness = (
  hardnessGermanDegrees: number,
): MilliequivalentPerL => milliequivalentPerL(hardnessGermanDegrees * MEQ_PER_L_PER_GERMAN_DEGREE);
