import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';
import type { Kilopascal } from '../units/pressure.ts';

/** FAO-56 Table 2.2 spans sea level to 4000 m, with room for the weather at either end. */
const airPressure: ValidRange = { quantity: 'air pressure', unit: 'kPa', from: 55, to: 110 };

/**
 * Psychrometric constant: how strongly evaporation cools air of this pressure.
 *
 *     γ = cp P / (ε λ) = 0.665·10⁻³ · P      kPa/°C, P in kPa, 55 to 110 kPa
 *
 * Source: FAO-56 eq 8, with cp 1.013·10⁻³ MJ/kg/°C, ε 0.622, λ 2.45 MJ/kg.
 * @example psychrometricConstantKpaPerCelsius(kilopascal(81.8)) // 0.054, FAO-56 Example 2
 */
export function psychrometricConstantKpaPerCelsius(pressureKpa: Kilopascal): Outcome<number> {
  const outside = firstOutside([pressureKpa, airPressure]);
  if (outside) return outside;
  return holds(0.665e-3 * pressureKpa);
}
