import { firstOutside, holds, type Outcome } from '../outcome.ts';
import {
  type MilliequivalentPerL,
  type MillimolePerL,
  milliequivalentPerL,
} from '../units/concentration.ts';
import { waterPh } from './ranges.ts';
import { PHOSPHORIC_ACID, type Protons } from './reagents.ts';

/** Mean number of protons that a weak acid has given away at a pH. */
function protonsGiven(pKa: readonly number[], ph: number): number {
  // Relative amounts of the forms that have given 0, 1, 2 … protons.
  let weight = 1;
  let total = 1;
  let given = 0;
  pKa.forEach((step, index) => {
    weight *= 10 ** (ph - step);
    total += weight;
    given += (index + 1) * weight;
  });
  return given / total;
}

/**
 * Protons that a mole of a reagent gives (an alkali: takes) when the water ends at a pH. A weak acid
 * keeps some of its own.
 *
 *     n = Σ i αᵢ(pH),  αᵢ from the pKa at 25 °C      eq/mol, pH 3.5 to 10
 *
 * Source: acid-base equilibria, Stumm and Morgan, Aquatic Chemistry; pKa in `reagents.ts`.
 * @example protonYieldEqPerMol(PHOSPHORIC_ACID, 5.8) // 1.038
 */
export function protonYieldEqPerMol(protons: Protons, finalPh: number): Outcome<number> {
  const outside = firstOutside([finalPh, waterPh]);
  if (outside) return outside;
  return holds(protons.kind === 'strong' ? protons.perMol : protonsGiven(protons.pKa, finalPh));
}

/**
 * Alkali (negative: acid) that the phosphate in a nutrient solution takes up on the way between two
 * pH; it comes on top of the carbonate's dose.
 *
 *     dose = P · (n(pH target) − n(pH present))      meq/L, P in mmol/L
 *
 * Source: as `protonYieldEqPerMol`.
 * @example phosphateAlkaliMeqPerL({ phosphateMmolPerL: millimolePerL(1), presentPh: 5.4,
 *   targetPh: 6.2 }) // 0.076
 */
export function phosphateAlkaliMeqPerL(solution: {
  readonly phosphateMmolPerL: MillimolePerL;
  readonly presentPh: number;
  readonly targetPh: number;
}): Outcome<MilliequivalentPerL> {
  const outside = firstOutside([
    solution.phosphateMmolPerL,
    { quantity: 'phosphate', unit: 'mmol/L', from: 0, to: 10 },
  ]);
  if (outside) return outside;
  const before = protonYieldEqPerMol(PHOSPHORIC_ACID, solution.presentPh);
  if (!before.ok) return before;
  const after = protonYieldEqPerMol(PHOSPHORIC_ACID, solution.targetPh);
  if (!after.ok) return after;
  return holds(milliequivalentPerL(solution.phosphateMmolPerL * (after.value - before.value)));
}
