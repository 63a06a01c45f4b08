import { additiveConductivity, reservoirVolume } from '../conductivity/ranges.ts';
import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';
import { type Litre, type Millilitre, millilitre } from '../units/amount.ts';
import type { MillisiemensPerCm } from '../units/conductivity.ts';

/** From home-made stock of a few grams a litre to the strongest that stays dissolved. */
const rise: ValidRange = {
  quantity: 'rise of conductivity by 1 mL/L of each concentrate',
  unit: 'mS/cm',
  from: 0.02,
  to: 2,
};

/** Equal parts of the two concentrates, never to be mixed undiluted. */
export interface ConcentrateDose {
  readonly partAMl: Millilitre;
  readonly partBMl: Millilitre;
}

/**
 * Concentrate A and B that bring water, or a weak solution, to a conductivity.
 *
 *     v = V (EC_target − EC_now) / k      mL of each; k the rise in mS/cm by 1 mL/L of each
 *
 * V in L of the finished mix; the one per cent that the concentrates add themselves is left out.
 * Conductivity 0 to 5 mS/cm, the target not below what is there.
 *
 * Source: mass balance; k from the label or from what earlier mixes did (`riseOfConductivity`).
 * @example concentratesForConductivity({ volumeL: litre(120), presentMsPerCm: millisiemensPerCm(0.2),
 *   targetMsPerCm: millisiemensPerCm(1.6), riseMsPerCmByMlPerL: 0.35 }) // 480 mL of each
 */
export function concentratesForConductivity(mix: {
  readonly volumeL: Litre;
  readonly presentMsPerCm: MillisiemensPerCm;
  readonly targetMsPerCm: MillisiemensPerCm;
  readonly riseMsPerCmByMlPerL: number;
}): Outcome<ConcentrateDose> {
  const outside = firstOutside(
    [mix.volumeL, reservoirVolume],
    [mix.presentMsPerCm, { ...additiveConductivity, quantity: 'present conductivity' }],
    [
      mix.targetMsPerCm,
      {
        ...additiveConductivity,
        quantity: 'wanted conductivity',
        from: mix.presentMsPerCm,
      },
    ],
    [mix.riseMsPerCmByMlPerL, rise],
  );
  if (outside) return outside;
  const eachMl = (mix.volumeL * (mix.targetMsPerCm - mix.presentMsPerCm)) / mix.riseMsPerCmByMlPerL;
  return holds({ partAMl: millilitre(eachMl), partBMl: millilitre(eachMl) });
}

/**
 * What 1 mL/L of each concentrate adds, from a label or from a mix that was measured.
 *
 *     k = (EC_after − EC_before) · V / v      mS/cm by mL/L
 *
 * Source: mass balance.
 * @example riseOfConductivity({ volumeL: litre(1), eachMl: millilitre(5),
 *   beforeMsPerCm: millisiemensPerCm(0), afterMsPerCm: millisiemensPerCm(1.75) }) // 0.35
 */
export function riseOfConductivity(mix: {
  readonly volumeL: Litre;
  readonly eachMl: Millilitre;
  readonly beforeMsPerCm: MillisiemensPerCm;
  readonly afterMsPerCm: MillisiemensPerCm;
}): Outcome<number> {
  const outside = firstOutside(
    [mix.volumeL, reservoirVolume],
    [mix.eachMl, { quantity: 'concentrate', unit: 'mL', from: 0.1, to: 1e6 }],
    [mix.beforeMsPerCm, additiveConductivity],
    [mix.afterMsPerCm, additiveConductivity],
  );
  if (outside) return outside;
  const byMlPerL = ((mix.afterMsPerCm - mix.beforeMsPerCm) * mix.volumeL) / mix.eachMl;
  // A mix that fell, or leapt, was not made of these concentrates alone.
  const implausible = firstOutside([byMlPerL, rise]);
  if (implausible) return implausible;
  return holds(byMlPerL);
}
