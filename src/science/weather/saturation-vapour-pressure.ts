import { firstOutside, holds, type Outcome } from '../outcome.ts';
import { type Kilopascal, kilopascal } from '../units/pressure.ts';
import type { Celsius } from '../units/temperature.ts';
import { airTemperatureCelsius } from './ranges.ts';

/**
 * Saturation vapour pressure over water: the most vapour that air of this temperature holds.
 *
 *     e°(T) = 0.6108 · exp(17.27 T / (T + 237.3))      kPa, T in °C, −20 to 50 °C
 *
 * Source: Allen, Pereira, Raes and Smith 1998, FAO Irrigation and Drainage Paper 56, eq 11, Table 2.3.
 * @example saturationVapourPressureKpa(celsius(24.5)) // 3.075, FAO-56 Example 3
 */
export function saturationVapourPressureKpa(temperatureCelsius: Celsius): Outcome<Kilopascal> {
  const outside = firstOutside([temperatureCelsius, airTemperatureCelsius]);
  if (outside) return outside;
  const exponent = (17.27 * temperatureCelsius) / (temperatureCelsius + 237.3);
  return holds(kilopascal(0.6108 * Math.exp(exponent)));
}
