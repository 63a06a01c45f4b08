import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';
import type { MillimolePerL } from '../units/concentration.ts';
import { type MillisiemensPerCm, millisiemensPerCm } from '../units/conductivity.ts';
import type { Celsius } from '../units/temperature.ts';
import type { Ion } from './ion-coefficients.ts';
import { ionConductivitySCm2PerMol } from './ion-conductivity.ts';
import { chargeSums, type IonAmounts, ionicStrengthMolPerL } from './ionic-strength.ts';

/** Beyond, magnesium and sulfate pair up and the sum is too high: never for stock concentrates. */
const ionicStrength: ValidRange = {
  quantity: 'ionic strength',
  unit: 'mol/L',
  from: 0,
  to: 0.035,
};
/** A recipe that is out of balance has an ion missing or counted twice. */
const imbalance: ValidRange = { quantity: 'charge imbalance', unit: '%', from: -10, to: 10 };
const amount: ValidRange = { quantity: 'amount of an ion', unit: 'mmol/L', from: 0, to: 100 };

/**
 * Conductivity of a solution from its ions.
 *
 *     κ = Σ λᵢ cᵢ      mS/cm, c in mol/L, λ in S cm²/mol as the other ions leave it
 *
 * Ionic strength to 0.035 mol/L, charges balanced within 10 %. The sum without the ions' hold on
 * each other would be a quarter too high for a nutrient solution.
 *
 * Source: McCleskey and others 2012, Geochim. Cosmochim. Acta 77:369, eq 1.
 * @example recipeConductivityMsPerCm(HOAGLAND_1.ions, celsius(25)) // 2.29; accepted 2.0 to 2.3
 */
export function recipeConductivityMsPerCm(
  ions: IonAmounts,
  waterCelsius: Celsius,
): Outcome<MillisiemensPerCm> {
  const amounts = Object.entries(ions) as [Ion, MillimolePerL][];
  const wrongAmount = firstOutside(...amounts.map(([, mmolPerL]) => [mmolPerL, amount] as const));
  if (wrongAmount) return wrongAmount;
  const strengthMolPerL = ionicStrengthMolPerL(ions);
  const { cationsMeqPerL, anionsMeqPerL } = chargeSums(ions);
  const total = cationsMeqPerL + anionsMeqPerL;
  const outside = firstOutside(
    [strengthMolPerL, ionicStrength],
    [total === 0 ? 0 : (100 * (cationsMeqPerL - anionsMeqPerL)) / total, imbalance],
  );
  if (outside) return outside;
  let conductivity = 0;
  for (const [ion, mmolPerL] of amounts) {
    const molar = ionConductivitySCm2PerMol(ion, {
      waterCelsius,
      ionicStrengthMolPerL: strengthMolPerL,
    });
    if (!molar.ok) return molar;
    conductivity += (molar.value * mmolPerL) / 1000;
  }
  return holds(millisiemensPerCm(conductivity));
}
