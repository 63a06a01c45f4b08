import { firstOutside, holds, type Outcome } from '../outcome.ts';
import { type Litre, litre } from '../units/amount.ts';
import { type MillisiemensPerCm, millisiemensPerCm } from '../units/conductivity.ts';
import { additiveConductivity, reservoirVolume } from './ranges.ts';

/**
 * Conductivity of waters poured together.
 *
 *     EC = Σ Vᵢ ECᵢ / Σ Vᵢ      mS/cm at 25 °C, each 0 to 5 mS/cm
 *
 * Salts add up exactly, conductivity within a few per cent below 3 mS/cm.
 * Source: mass balance.
 * @example mixedConductivityMsPerCm([
 *   { volumeL: litre(100), conductivityMsPerCm: millisiemensPerCm(2.4) },
 *   { volumeL: litre(40), conductivityMsPerCm: millisiemensPerCm(0.3) }]) // 1.8
 */
export function mixedConductivityMsPerCm(
  waters: readonly { readonly volumeL: Litre; readonly conductivityMsPerCm: MillisiemensPerCm }[],
): Outcome<MillisiemensPerCm> {
  let salts = 0;
  let volumeL = 0;
  for (const water of waters) {
    const outside = firstOutside(
      [water.conductivityMsPerCm, additiveConductivity],
      [water.volumeL, { ...reservoirVolume, from: 0 }],
    );
    if (outside) return outside;
    salts += water.volumeL * water.conductivityMsPerCm;
    volumeL += water.volumeL;
  }
  const outside = firstOutside([volumeL, reservoirVolume]);
  if (outside) return outside;
  return holds(millisiemensPerCm(salts / volumeL));
}

/**
 * Water to add to bring a solution down to a conductivity.
 *
 *     V_add = V (EC − EC_target) / (EC_target − EC_water)      L
 *
 * The target lies above that of the water and not above that of the solution.
 * Source: mass balance.
 * @example waterToDiluteL({ volumeL: litre(100), conductivityMsPerCm: millisiemensPerCm(2.4),
 *   targetMsPerCm: millisiemensPerCm(1.8), waterMsPerCm: millisiemensPerCm(0.3) }) // 40
 */
export function waterToDiluteL(solution: {
  readonly volumeL: Litre;
  readonly conductivityMsPerCm: MillisiemensPerCm;
  readonly targetMsPerCm: MillisiemensPerCm;
  readonly waterMsPerCm: MillisiemensPerCm;
}): Outcome<Litre> {
  const outside = firstOutside(
    [solution.volumeL, reservoirVolume],
    [solution.conductivityMsPerCm, additiveConductivity],
    [solution.waterMsPerCm, { ...additiveConductivity, quantity: 'conductivity of the water' }],
    [
      solution.targetMsPerCm,
      {
        ...additiveConductivity,
        quantity: 'wanted conductivity',
        // The closer to the water's own, the more water: a hundredth above it is the end of sense.
        from: solution.waterMsPerCm + 0.01,
        to: solution.conductivityMsPerCm,
      },
    ],
  );
  if (outside) return outside;
  const tooStrong = solution.conductivityMsPerCm - solution.targetMsPerCm;
  return holds(
    litre((solution.volumeL * tooStrong) / (solution.targetMsPerCm - solution.waterMsPerCm)),
  );
}
