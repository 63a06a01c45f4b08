import { firstOutside, holds, type Outcome } from '../outcome.ts';
import { cubicMetrePerSecond, type LitrePerHour } from '../units/amount.ts';
import { flowLPerH, hoseLengthM } from './ranges.ts';

/** Smooth plastic; the coefficient is 150 for new pipe and falls with age. */
export const SMOOTH_PLASTIC_HAZEN_WILLIAMS = 150;

/**
 * Head lost in a pipe by the rule of water supply.
 *
 *     hf = 10.67 L Q^1.852 C^−1.852 d^−4.8704      m; L, d in m, Q in m³/s
 *
 * Water near 15 °C in turbulent flow through pipes of 50 mm and more by the book; taken down to 20 mm
 * here. For the hoses of a greenhouse use `hoseLossM`.
 *
 * Source: Hazen and Williams 1905; SI form as in textbooks of hydraulics.
 * @example hazenWilliamsLossM({ flowLPerH: litrePerHour(2271.25), lengthM: 30.48,
 *   diameterMm: 26.64 }) // 1.67 m, which is 2.38 psi on 100 ft
 */
export function hazenWilliamsLossM(pipe: {
  readonly flowLPerH: LitrePerHour;
  readonly lengthM: number;
  readonly diameterMm: number;
  readonly coefficient?: number;
}): Outcome<number> {
  const coefficient = pipe.coefficient ?? SMOOTH_PLASTIC_HAZEN_WILLIAMS;
  const outside = firstOutside(
    [pipe.flowLPerH, flowLPerH],
    [pipe.lengthM, hoseLengthM],
    [pipe.diameterMm, { quantity: 'inner diameter of the pipe', unit: 'mm', from: 20, to: 2000 }],
    [coefficient, { quantity: 'Hazen-Williams coefficient', unit: '1', from: 40, to: 160 }],
  );
  if (outside) return outside;
  const flowM3PerS = cubicMetrePerSecond(pipe.flowLPerH);
  return holds(
    (10.67 * pipe.lengthM * (flowM3PerS / coefficient) ** 1.852) /
      (pipe.diameterMm / 1000) ** 4.8704,
  );
}
