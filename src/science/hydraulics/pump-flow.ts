import { firstOutside, holds, type Outcome } from '../outcome.ts';
import { type LitrePerHour, litrePerHour } from '../units/amount.ts';
import { ratedFlowLPerH } from './ranges.ts';

/** What is printed on a pump. */
export interface PumpRating {
  /** Flow without any lift. */
  readonly ratedLPerH: LitrePerHour;
  /** Lift at which the flow ends. */
  readonly maxHeadM: number;
}

/**
 * Flow of a pump against a lift, and against a loss that grows with the square of the flow.
 *
 *     Hmax (1 − Q/Qmax) = h + k Q²   so   Q = [−b + √(b² − 4k (h − Hmax))]/(2k),  b = Hmax/Qmax
 *
 * Heads in m; the lift below the greatest head, which is 0.1 to 50 m. Real curves bulge above the
 * straight line, so it is careful in the middle.
 *
 * Source: quadratic operating point on a straight pump curve; common practice for small pumps.
 * @example pumpFlowLPerH({ pump: { ratedLPerH: litrePerHour(2000), maxHeadM: 2 }, liftM: 0.8 })
 *   // 1200
 */
export function pumpFlowLPerH(setting: {
  readonly pump: PumpRating;
  readonly liftM: number;
  /** A loss known at one flow; it is scaled by the square. */
  readonly loss?: { readonly headM: number; readonly atLPerH: LitrePerHour };
}): Outcome<LitrePerHour> {
  const { pump, liftM, loss } = setting;
  const outside = firstOutside(
    [pump.ratedLPerH, ratedFlowLPerH],
    [pump.maxHeadM, { quantity: 'greatest head of the pump', unit: 'm', from: 0.1, to: 50 }],
    [liftM, { quantity: 'lift', unit: 'm', from: 0, to: pump.maxHeadM }],
    [loss?.headM ?? 0, { quantity: 'loss', unit: 'm', from: 0, to: 1000 }],
    [
      loss?.atLPerH ?? 1,
      { ...ratedFlowLPerH, quantity: 'flow at which the loss is known', from: 1 },
    ],
  );
  if (outside) return outside;
  const spareM = pump.maxHeadM - liftM;
  const perFlow = pump.maxHeadM / pump.ratedLPerH;
  const square = loss ? loss.headM / loss.atLPerH ** 2 : 0;
  // The usual form divides by k, which is nothing where there is no loss; this one does not.
  return holds(
    litrePerHour((2 * spareM) / (perFlow + Math.sqrt(perFlow ** 2 + 4 * square * spareM))),
  );
}
