import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';
import type { Kilopascal } from '../units/pressure.ts';
import { type WattPerM2, wattPerM2 } from '../units/radiation.ts';

const leafAreaIndex: ValidRange = { quantity: 'leaf area index', unit: 'm²/m²', from: 0, to: 10 };
const insideSolar: ValidRange = {
  quantity: 'solar radiation inside',
  unit: 'W/m²',
  from: 0,
  to: 1200,
};
const deficit: ValidRange = { quantity: 'vapour pressure deficit', unit: 'kPa', from: 0, to: 6 };

/** A, B and k of the simplified Penman-Monteith model of Baille and others. */
export interface BailleCoefficients {
  /** A: share of the intercepted light that becomes vapour, 1. */
  readonly lightShare: number;
  /** B: vapour per leaf area and deficit, W/m²/kPa; lower at night than by day. */
  readonly deficitWattPerM2Kpa: number;
  /** k: extinction of light in the canopy, 1. */
  readonly lightExtinction: number;
}

/**
 * A place to start before any water loss was logged, with low confidence: the coefficients of no crop
 * could be confirmed, and the spans are from memory (A 0.12 to 0.67, B 10 to 40 W/m²/kPa, k 0.64).
 * The model is linear in A and B, so they are soon fitted to logged losses.
 */
export const UNCONFIRMED_BAILLE_PRIOR = {
  confidence: 'low',
  likely: { lightShare: 0.4, deficitWattPerM2Kpa: 20, lightExtinction: 0.64 },
  least: { lightShare: 0.12, deficitWattPerM2Kpa: 10, lightExtinction: 0.64 },
  most: { lightShare: 0.67, deficitWattPerM2Kpa: 40, lightExtinction: 0.64 },
} as const satisfies Readonly<Record<string, BailleCoefficients | string>>;

/**
 * Latent heat that a greenhouse canopy gives off.
 *
 *     λE = A (1 − e^(−k LAI)) G + B LAI VPD      W/m²; G inside solar W/m², VPD kPa, LAI m²/m²
 *
 * Source: Baille, Baille and Laury 1994, Scientia Horticulturae 59:83-97.
 * @example canopyLatentHeatWattPerM2({ leafAreaIndex: 3, insideSolarWattPerM2: wattPerM2(300),
 *   deficitKpa: kilopascal(1.2), coefficients: { lightShare: 0.56, deficitWattPerM2Kpa: 20,
 *   lightExtinction: 0.64 } }) // 215.37
 */
export function canopyLatentHeatWattPerM2(canopy: {
  readonly leafAreaIndex: number;
  readonly insideSolarWattPerM2: WattPerM2;
  readonly deficitKpa: Kilopascal;
  readonly coefficients: BailleCoefficients;
}): Outcome<WattPerM2> {
  const outside = firstOutside(
    [canopy.leafAreaIndex, leafAreaIndex],
    [canopy.insideSolarWattPerM2, insideSolar],
    [canopy.deficitKpa, deficit],
  );
  if (outside) return outside;
  const { lightShare, deficitWattPerM2Kpa, lightExtinction } = canopy.coefficients;
  const intercepted = 1 - Math.exp(-lightExtinction * canopy.leafAreaIndex);
  return holds(
    wattPerM2(
      lightShare * intercepted * canopy.insideSolarWattPerM2 +
        deficitWattPerM2Kpa * canopy.leafAreaIndex * canopy.deficitKpa,
    ),
  );
}

/** Latent heat of vaporization at about 20 °C, J/kg (FAO-56 chapter 1). */
const LATENT_HEAT_J_PER_KG = 2.45e6;

/**
 * Water given off by a canopy, from its latent heat.
 *
 *     E = λE · 3600 / 2.45·10⁶      kg/m²/h, which is L/m²/h
 *
 * @example transpirationKgPerM2Hour(wattPerM2(215.37)) // 0.3165
 */
export const transpirationKgPerM2Hour = (latentHeatWattPerM2: WattPerM2): number =>
  (latentHeatWattPerM2 * 3600) / LATENT_HEAT_J_PER_KG;
