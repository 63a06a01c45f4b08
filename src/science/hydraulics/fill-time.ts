import { firstOutside, holds, type Outcome } from '../outcome.ts';
import type { Litre, LitrePerHour } from '../units/amount.ts';
import { ratedFlowLPerH } from './ranges.ts';

/**
 * Time to fill a volume at a steady flow.
 *
 *     t = 60 V / Q      min; V in L, Q in L/h, 1 L/h and more
 *
 * Source: definition of flow.
 * @example fillTimeMinutes(litre(60), litrePerHour(1200)) // 3
 */
export function fillTimeMinutes(volumeL: Litre, flowLPerH: LitrePerHour): Outcome<number> {
  const outside = firstOutside(
    [volumeL, { quantity: 'volume', unit: 'L', from: 0, to: 1e6 }],
    [flowLPerH, { ...ratedFlowLPerH, quantity: 'flow', from: 1 }],
  );
  if (outside) return outside;
  return holds((60 * volumeL) / flowLPerH);
}
