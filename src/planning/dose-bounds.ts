/**
 * How much may go into a system at once and in a day, mL per litre. The first is for a product that
 * nobody has seen at work here, the second once its effect is known; beyond the last nothing is told.
 * Common practice; the last is also what a logged dose is believed up to.
 */
export const DOSE_BOUNDS = {
  ph: { firstPart: 1, laterPart: 2 },
  ec: { firstPart: 4, laterPart: 4 },
  inADay: 5,
} as const;

/**
 * A syringe is read to a tenth, a measuring cup to a millilitre or five; what is less than a
 * millilitre is thinned first, and read to a hundredth. Rounded down.
 */
export function doseTold(mL: number): number {
  const step = mL < THIN_BELOW_ML ? 0.01 : mL < 5 ? 0.1 : mL < 20 ? 0.5 : mL < 100 ? 1 : 5;
  return Number((Math.floor(mL / step + 1e-9) * step).toFixed(2));
}

/** Less than this is better measured out of a hundredfold dilution. */
export const THIN_BELOW_ML = 1;
export const THINNED_TIMES = 100;

/** Less than this nobody can measure out. */
export const LEAST_DOSE_ML = 0.01;
