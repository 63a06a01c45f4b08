import { holds, type Outcome } from '../outcome.ts';
import type { Celsius } from '../units/temperature.ts';
import { saturationVapourPressureKpa } from './saturation-vapour-pressure.ts';

/**
 * Slope of the saturation vapour pressure curve.
 *
 *     Δ = 4098 · e°(T) / (T + 237.3)²      kPa/°C, T in °C, −20 to 50 °C
 *
 * Source: FAO-56 eq 13, Table 2.4.
 * @example saturationSlopeKpaPerCelsius(celsius(16.9)) // 0.122, FAO-56 Example 18
 */
export function saturationSlopeKpaPerCelsius(airCelsius: Celsius): Outcome<number> {
  const saturation = saturationVapourPressureKpa(airCelsius);
  if (!saturation.ok) return saturation;
  return holds((4098 * saturation.value) / (airCelsius + 237.3) ** 2);
}
