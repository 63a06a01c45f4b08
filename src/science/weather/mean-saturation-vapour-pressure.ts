import { holds, type Outcome } from '../outcome.ts';
import { type Kilopascal, kilopascal } from '../units/pressure.ts';
import type { Celsius } from '../units/temperature.ts';
import { saturationVapourPressureKpa } from './saturation-vapour-pressure.ts';

/**
 * Mean saturation vapour pressure of a day. The curve bends upwards, so the pressure at the mean
 * temperature would be too low.
 *
 *     es = (e°(Tmax) + e°(Tmin)) / 2      kPa
 *
 * Source: FAO-56 eq 12.
 * @example meanSaturationVapourPressureKpa({ minCelsius: celsius(15), maxCelsius: celsius(24.5) })
 *   // 2.39, FAO-56 Example 3
 */
export function meanSaturationVapourPressureKpa(day: {
  readonly minCelsius: Celsius;
  readonly maxCelsius: Celsius;
}): Outcome<Kilopascal> {
  const low = saturationVapourPressureKpa(day.minCelsius);
  if (!low.ok) return low;
  const high = saturationVapourPressureKpa(day.maxCelsius);
  if (!high.ok) return high;
  return holds(kilopascal((low.value + high.value) / 2));
}
