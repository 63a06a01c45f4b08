import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';
import { type Litre, litre } from '../units/amount.ts';
import { type MillimolePerL, millimolePerL } from '../units/concentration.ts';

/** A closed system that is topped up with water holding an ion that plants hardly take. */
export interface ClosedSystem {
  readonly volumeL: Litre;
  readonly waterMmolPerL: MillimolePerL;
  readonly presentMmolPerL: MillimolePerL;
  /** p: what plants take up, as a share of what is around their roots; 0 for none. */
  readonly uptakeShare: number;
}

/** Litres of top-up until a limit, or that the uptake keeps the ion below it for ever. */
export type LitresToLimit =
  | { readonly kind: 'reached'; readonly topUpL: Litre }
  | { readonly kind: 'never' };

const volume: ValidRange = { quantity: 'volume', unit: 'L', from: 0.1, to: 1e6 };
const concentration: ValidRange = { quantity: 'concentration', unit: 'mmol/L', from: 0, to: 200 };
const uptakeShare: ValidRange = { quantity: 'uptake share', unit: '1', from: 0, to: 1 };

const outsideSystem = (system: ClosedSystem) =>
  firstOutside(
    [system.volumeL, volume],
    [system.waterMmolPerL, concentration],
    [system.presentMmolPerL, concentration],
    [system.uptakeShare, uptakeShare],
  );

/**
 * Sodium or chloride in a closed system after so many litres of top-up.
 *
 *     V dC/dE = Cw − p C   so   C = Cw/p + (C₀ − Cw/p) e^(−p E/V);   p = 0: C = C₀ + Cw E/V      mmol/L
 *
 * Without uptake, top-ups that sum to the volume add once what the water holds: the trade's "change
 * when the top-ups equal the reservoir".
 *
 * Source: mass balance; uptake in proportion to what is there as in Sonneveld and Voogt 2009, Plant
 * Nutrition of Greenhouse Crops (from memory).
 * @example accumulatedMmolPerL({ volumeL: litre(100), waterMmolPerL: millimolePerL(1),
 *   presentMmolPerL: millimolePerL(1), uptakeShare: 0 }, litre(100)) // 2
 */
export function accumulatedMmolPerL(system: ClosedSystem, topUpL: Litre): Outcome<MillimolePerL> {
  const outside =
    outsideSystem(system) ?? firstOutside([topUpL, { ...volume, quantity: 'top-up', from: 0 }]);
  if (outside) return outside;
  const turnovers = topUpL / system.volumeL;
  if (system.uptakeShare === 0) {
    return holds(millimolePerL(system.presentMmolPerL + system.waterMmolPerL * turnovers));
  }
  const resting = system.waterMmolPerL / system.uptakeShare;
  const left = (system.presentMmolPerL - resting) * Math.exp(-system.uptakeShare * turnovers);
  return holds(millimolePerL(resting + left));
}

/**
 * Litres of top-up until sodium or chloride has risen to a limit; 0 when it is there already.
 *
 *     E = −(V/p) ln[(Cmax − Cw/p)/(C₀ − Cw/p)];   p = 0: E = V (Cmax − C₀)/Cw;   never if Cw/p ≤ Cmax
 *
 * Source: as `accumulatedMmolPerL`.
 * @example topUpToLimit({ volumeL: litre(100), waterMmolPerL: millimolePerL(2),
 *   presentMmolPerL: millimolePerL(2), uptakeShare: 0.1 }, millimolePerL(8)) // 405.5 L
 */
export function topUpToLimit(
  system: ClosedSystem,
  limitMmolPerL: MillimolePerL,
): Outcome<LitresToLimit> {
  const outside = outsideSystem(system) ?? firstOutside([limitMmolPerL, concentration]);
  if (outside) return outside;
  const { volumeL, waterMmolPerL, presentMmolPerL } = system;
  if (presentMmolPerL >= limitMmolPerL) return holds({ kind: 'reached', topUpL: litre(0) });
  if (waterMmolPerL <= system.uptakeShare * limitMmolPerL) return holds({ kind: 'never' });
  if (system.uptakeShare === 0) {
    const topUpL = litre((volumeL * (limitMmolPerL - presentMmolPerL)) / waterMmolPerL);
    return holds({ kind: 'reached', topUpL });
  }
  const resting = waterMmolPerL / system.uptakeShare;
  const turnovers =
    Math.log((resting - presentMmolPerL) / (resting - limitMmolPerL)) / system.uptakeShare;
  return holds({ kind: 'reached', topUpL: litre(volumeL * turnovers) });
}
