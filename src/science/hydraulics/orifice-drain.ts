import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';
import { GRAVITY_M_PER_S2 } from './ranges.ts';

/** Sharp-edged round hole; textbooks give 0.60 to 0.62. */
export const SHARP_ORIFICE_COEFFICIENT = 0.62;

const area: ValidRange = { quantity: 'area of the bed', unit: 'm²', from: 1e-3, to: 1000 };
const diameter: ValidRange = { quantity: 'diameter of the drain', unit: 'mm', from: 1, to: 500 };
const height: ValidRange = { quantity: 'water above the drain', unit: 'm', from: 0, to: 20 };

/**
 * Time in which a straight-walled bed drains by gravity through a hole in its floor.
 *
 *     t = 2 A (√h₁ − √h₂) / (Cd a √(2g))      s; A bed m², a hole m², h in m above the hole
 *
 * Source: Torricelli's law with a discharge coefficient, any textbook of hydraulics.
 * @example orificeDrainSeconds({ bedAreaM2: 0.5, drainDiameterMm: 25, fromHeightM: 0.12,
 *   toHeightM: 0 }) // 257.0
 */
export function orificeDrainSeconds(bed: {
  readonly bedAreaM2: number;
  readonly drainDiameterMm: number;
  readonly fromHeightM: number;
  readonly toHeightM: number;
  readonly dischargeCoefficient?: number;
}): Outcome<number> {
  const coefficient = bed.dischargeCoefficient ?? SHARP_ORIFICE_COEFFICIENT;
  const outside = firstOutside(
    [bed.bedAreaM2, area],
    [bed.drainDiameterMm, diameter],
    [bed.fromHeightM, height],
    [bed.toHeightM, { ...height, to: bed.fromHeightM }],
    [coefficient, { quantity: 'discharge coefficient', unit: '1', from: 0.3, to: 1 }],
  );
  if (outside) return outside;
  const holeM2 = (Math.PI / 4) * (bed.drainDiameterMm / 1000) ** 2;
  const roots = Math.sqrt(bed.fromHeightM) - Math.sqrt(bed.toHeightM);
  return holds(
    (2 * bed.bedAreaM2 * roots) / (coefficient * holeM2 * Math.sqrt(2 * GRAVITY_M_PER_S2)),
  );
}
