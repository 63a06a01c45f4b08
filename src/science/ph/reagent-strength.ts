import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';

const massShare: ValidRange = { quantity: 'mass share', unit: '1', from: 0, to: 1 };
const density: ValidRange = { quantity: 'density', unit: 'kg/L', from: 0.8, to: 2 };

/**
 * Strength of a reagent from its label.
 *
 *     c = w · d · 1000 / M      mol/L; w mass share 0 to 1, d in kg/L, M in g/mol
 *
 * Source: definition of amount concentration.
 * @example reagentStrengthMolPerL(REAGENTS['phosphoric acid 85 %']) // 14.6
 */
export function reagentStrengthMolPerL(reagent: {
  readonly massShare: number;
  readonly densityKgPerL: number;
  readonly molarMassGPerMol: number;
}): Outcome<number> {
  const outside = firstOutside(
    [reagent.massShare, massShare],
    [reagent.densityKgPerL, density],
    [reagent.molarMassGPerMol, { quantity: 'molar mass', unit: 'g/mol', from: 1, to: 1000 }],
  );
  if (outside) return outside;
  return holds((reagent.massShare * reagent.densityKgPerL * 1000) / reagent.molarMassGPerMol);
}
