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

/** A syringe is read to a tenth, a measuring cup to a millilitre or five. Rounded down. */
export function doseTold(mL: number): number {
  const step = mL < 5 ? 0.1 : mL < 20 ? 0.5 : mL < 100 ? 1 : 5;
  return Number((Math.floor(mL / step + 1e-9) * step).toFixed(1));
}

/** Less than this nobody can measure out. */
export const LEAST_DOSE_ML = 0.1;
