import { holds, type Outcome } from '../outcome.ts';
import { type LitrePerHour, litrePerHour } from '../units/amount.ts';
import type { Celsius } from '../units/temperature.ts';
import { type Hose, hoseLossM } from './hose-loss.ts';
import { type PumpRating, pumpFlowLPerH } from './pump-flow.ts';

const HALVINGS = 50;

/**
 * Flow of a pump that lifts water through a hose: where its head is used up by lift and loss.
 *
 *     Hmax (1 − Q/Qmax) = h + hf(Q)      solved for Q in L/h
 *
 * Holds where `pumpFlowLPerH` and `hoseLossM` do.
 *
 * Source: operating point of pump and pipe, any textbook of hydraulics.
 * @example pumpFlowThroughHoseLPerH({ pump: { ratedLPerH: litrePerHour(3000), maxHeadM: 3 },
 *   liftM: 1, hose: { lengthM: 4, diameterMm: 19 }, waterCelsius: celsius(20) }) // 1460
 */
export function pumpFlowThroughHoseLPerH(setting: {
  readonly pump: PumpRating;
  readonly liftM: number;
  readonly hose: Hose;
  readonly waterCelsius: Celsius;
}): Outcome<LitrePerHour> {
  const withoutHose = pumpFlowLPerH(setting);
  if (!withoutHose.ok) return withoutHose;
  const spareAt = (flow: number): Outcome<number> => {
    const loss = hoseLossM(setting.hose, litrePerHour(flow), setting.waterCelsius);
    if (!loss.ok) return loss;
    const headM = setting.pump.maxHeadM * (1 - flow / setting.pump.ratedLPerH);
    return holds(headM - setting.liftM - loss.value);
  };
  let low = 0;
  let high: number = withoutHose.value;
  // What is left of the head falls with the flow throughout, so halving the span cannot miss.
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    const spare = spareAt(middle);
    if (!spare.ok) return spare;
    if (spare.value > 0) low = middle;
    else high = middle;
  }
  return holds(litrePerHour((low + high) / 2));
}
