import { firstOutside, holds, type Outcome } from '../outcome.ts';
import { type Litre, type Millilitre, millilitre } from '../units/amount.ts';
import type { MilliequivalentPerL } from '../units/concentration.ts';

/**
 * Volume of a reagent that carries a dose into a reservoir.
 *
 *     v = V · dose / (c · n)      mL; V in L, dose in meq/L, c in mol/L, n in eq/mol
 *
 * Reservoirs of 0.1 to 10⁶ L, reagents of 0.001 to 40 mol/L that give at least 0.1 eq/mol.
 *
 * Source: definition of the equivalent.
 * @example reagentVolumeMl({ reservoirL: litre(100), doseMeqPerL: milliequivalentPerL(1),
 *   strengthMolPerL: 10, yieldEqPerMol: 1 }) // 10
 */
export function reagentVolumeMl(dose: {
  readonly reservoirL: Litre;
  readonly doseMeqPerL: MilliequivalentPerL;
  readonly strengthMolPerL: number;
  readonly yieldEqPerMol: number;
}): Outcome<Millilitre> {
  const outside = firstOutside(
    [dose.reservoirL, { quantity: 'volume', unit: 'L', from: 0.1, to: 1e6 }],
    [dose.doseMeqPerL, { quantity: 'dose', unit: 'meq/L', from: 0, to: 20 }],
    [dose.strengthMolPerL, { quantity: 'strength', unit: 'mol/L', from: 0.001, to: 40 }],
    [dose.yieldEqPerMol, { quantity: 'proton yield', unit: 'eq/mol', from: 0.1, to: 3 }],
  );
  if (outside) return outside;
  return holds(
    millilitre((dose.reservoirL * dose.doseMeqPerL) / (dose.strengthMolPerL * dose.yieldEqPerMol)),
  );
}
