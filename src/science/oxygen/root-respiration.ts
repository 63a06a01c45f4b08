import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';
import type { Celsius } from '../units/temperature.ts';

/** Above 30 °C respiration no longer doubles, and the formula errs on the side of haste. */
const rootTemperature: ValidRange = { quantity: 'root temperature', unit: '°C', from: 0, to: 40 };

/** Rise of root respiration over ten degrees, below about 30 °C. */
const Q10 = 2;
const REFERENCE_CELSIUS = 20;
const OXYGEN_G_PER_MOL = 32;

/**
 * Oxygen use of roots at a temperature, from that at 20 °C.
 *
 *     q(T) = q₂₀ · 2^((T − 20)/10)      in the unit of q₂₀, T in °C, 0 to 40 °C (too high above 30)
 *
 * Source: van 't Hoff's rule; a Q10 of about 2 for roots is common practice.
 * @example oxygenUseAt({ useAt20Celsius: 0.2, rootCelsius: celsius(30) }) // 0.4
 */
export function oxygenUseAt(root: {
  /** Per gram or for all roots: the answer is in the same unit. */
  readonly useAt20Celsius: number;
  readonly rootCelsius: Celsius;
}): Outcome<number> {
  const outside = firstOutside([root.rootCelsius, rootTemperature]);
  if (outside) return outside;
  const tens = (root.rootCelsius - REFERENCE_CELSIUS) / 10;
  return holds(root.useAt20Celsius * Q10 ** tens);
}

/**
 * Oxygen use of fresh roots from the rate by dry mass in which physiology books print it.
 *
 *     q [mg/g/h] = r [nmol/g dry/s] · 3600 s/h · 32 ng/nmol · 10⁻⁶ · dry share
 *
 * @example freshRootRespirationMgPerGHour({ perDryGramNmolPerS: 30, dryShare: 0.07 }) // 0.242
 */
export const freshRootRespirationMgPerGHour = (root: {
  readonly perDryGramNmolPerS: number;
  readonly dryShare: number;
}): number => root.perDryGramNmolPerS * 3600 * OXYGEN_G_PER_MOL * 1e-6 * root.dryShare;
