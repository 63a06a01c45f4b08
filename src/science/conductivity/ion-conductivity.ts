import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';
import type { Celsius } from '../units/temperature.ts';
import { ION_COEFFICIENTS, type Ion } from './ion-coefficients.ts';

const waterTemperature: ValidRange = {
  quantity: 'water temperature',
  unit: '°C',
  from: 0,
  to: 95,
};
const ionicStrength: ValidRange = { quantity: 'ionic strength', unit: 'mol/L', from: 0, to: 1 };

const polynomial = ([a, b, c]: readonly [number, number, number], at: number): number =>
  a * at ** 2 + b * at + c;

/**
 * Molar conductivity of an ion among others, which hold it back the more there are.
 *
 *     λ = λ°(t) − A(t) √I / (1 + B √I)      S cm²/mol, I in mol/L, 0 to 95 °C, I to 1 mol/L
 *
 * Source: McCleskey, Nordstrom, Ryan and Ball 2012, Geochim. Cosmochim. Acta 77:369, eq 3 and 4.
 * @example ionConductivitySCm2PerMol('K', { waterCelsius: celsius(25), ionicStrengthMolPerL: 0 })
 *   // 74.1; CRC Handbook 73.48
 */
export function ionConductivitySCm2PerMol(
  ion: Ion,
  water: { readonly waterCelsius: Celsius; readonly ionicStrengthMolPerL: number },
): Outcome<number> {
  const outside = firstOutside(
    [water.waterCelsius, waterTemperature],
    [water.ionicStrengthMolPerL, ionicStrength],
  );
  if (outside) return outside;
  const { limiting, slope, size } = ION_COEFFICIENTS[ion];
  const root = Math.sqrt(water.ionicStrengthMolPerL);
  const heldBack = (polynomial(slope, water.waterCelsius) * root) / (1 + size * root);
  return holds(polynomial(limiting, water.waterCelsius) - heldBack);
}
