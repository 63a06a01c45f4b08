import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';
import { cubicMetrePerSecond, type LitrePerHour } from '../units/amount.ts';
import type { Celsius } from '../units/temperature.ts';
import { darcyFrictionFactor } from './friction-factor.ts';
import { flowLPerH, GRAVITY_M_PER_S2, hoseDiameterMm, hoseLengthM } from './ranges.ts';
import { waterViscosityM2PerS } from './water-viscosity.ts';

/** Drawn plastic, textbooks of hydraulics. */
export const SMOOTH_PLASTIC_ROUGHNESS_MM = 0.0015;

const roughnessMm: ValidRange = { quantity: 'roughness', unit: 'mm', from: 0, to: 5 };
/** Sum of the loss coefficients of bends, valves and the outlet. */
const fittings: ValidRange = { quantity: 'loss of fittings', unit: '1', from: 0, to: 1000 };

export interface Hose {
  readonly lengthM: number;
  readonly diameterMm: number;
  readonly roughnessMm?: number;
  /** Sum of ζ of bends, valves and the outlet; 0 when left out. */
  readonly fittingsLoss?: number;
}

/**
 * Head lost in a hose.
 *
 *     hf = (f L/D + Σζ) · v²/(2g)      m; f by Colebrook, v in m/s
 *
 * Holds for laminar and turbulent flow and for small hoses, where Hazen-Williams does not.
 *
 * Source: Darcy and Weisbach, any textbook of hydraulics.
 * @example hoseLossM({ lengthM: 3, diameterMm: 16 }, litrePerHour(1200), celsius(20)) // 0.64
 */
export function hoseLossM(hose: Hose, flow: LitrePerHour, waterCelsius: Celsius): Outcome<number> {
  const roughness = hose.roughnessMm ?? SMOOTH_PLASTIC_ROUGHNESS_MM;
  const fittingsLoss = hose.fittingsLoss ?? 0;
  const outside = firstOutside(
    [flow, flowLPerH],
    [hose.lengthM, hoseLengthM],
    [hose.diameterMm, hoseDiameterMm],
    [roughness, roughnessMm],
    [fittingsLoss, fittings],
  );
  if (outside) return outside;
  if (flow === 0) return holds(0);
  const viscosity = waterViscosityM2PerS(waterCelsius);
  if (!viscosity.ok) return viscosity;
  const diameterM = hose.diameterMm / 1000;
  const velocityMPerS = cubicMetrePerSecond(flow) / ((Math.PI / 4) * diameterM ** 2);
  const factor = darcyFrictionFactor(
    (velocityMPerS * diameterM) / viscosity.value,
    roughness / hose.diameterMm,
  );
  if (!factor.ok) return factor;
  const velocityHeadM = velocityMPerS ** 2 / (2 * GRAVITY_M_PER_S2);
  return holds(((factor.value * hose.lengthM) / diameterM + fittingsLoss) * velocityHeadM);
}
