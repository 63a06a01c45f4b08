import { firstOutside, holds, type Outcome } from '../outcome.ts';
import { type Kilopascal, kilopascal } from '../units/pressure.ts';
import type { Celsius } from '../units/temperature.ts';
import { relativeHumidityPercent } from './ranges.ts';
import { saturationVapourPressureKpa } from './saturation-vapour-pressure.ts';

/**
 * Actual vapour pressure from the dew point; the day's minimum temperature may stand for the dew
 * point where nights are humid.
 *
 *     ea = e°(Tdew)      kPa
 *
 * Source: FAO-56 eq 14, and eq 48 for Tmin.
 * @example vapourPressureAtDewPointKpa(celsius(14.8)) // 1.68, FAO-56 Example 20
 */
export function vapourPressureAtDewPointKpa(dewPointCelsius: Celsius): Outcome<Kilopascal> {
  return saturationVapourPressureKpa(dewPointCelsius);
}

/**
 * Actual vapour pressure of a day from the extremes of temperature and humidity: the air is moistest,
 * relatively, when it is coldest.
 *
 *     ea = (e°(Tmin) · RHmax + e°(Tmax) · RHmin) / 200      kPa, RH in %
 *
 * Source: FAO-56 eq 17.
 * @example vapourPressureFromHumidityExtremesKpa({ minCelsius: celsius(18), maxCelsius: celsius(25),
 *   minHumidityPercent: 54, maxHumidityPercent: 82 }) // 1.70, FAO-56 Example 5
 */
export function vapourPressureFromHumidityExtremesKpa(day: {
  readonly minCelsius: Celsius;
  readonly maxCelsius: Celsius;
  readonly minHumidityPercent: number;
  readonly maxHumidityPercent: number;
}): Outcome<Kilopascal> {
  const outside = firstOutside(
    [day.minHumidityPercent, relativeHumidityPercent],
    [day.maxHumidityPercent, relativeHumidityPercent],
  );
  if (outside) return outside;
  const low = saturationVapourPressureKpa(day.minCelsius);
  if (!low.ok) return low;
  const high = saturationVapourPressureKpa(day.maxCelsius);
  if (!high.ok) return high;
  return holds(
    kilopascal((low.value * day.maxHumidityPercent + high.value * day.minHumidityPercent) / 200),
  );
}

/**
 * Actual vapour pressure of a day when only the highest humidity is to be trusted.
 *
 *     ea = e°(Tmin) · RHmax / 100      kPa, RH in %
 *
 * Source: FAO-56 eq 18.
 * @example vapourPressureFromHighestHumidityKpa({ minCelsius: celsius(18), maxHumidityPercent: 82 })
 *   // 1.69, FAO-56 Example 5
 */
export function vapourPressureFromHighestHumidityKpa(day: {
  readonly minCelsius: Celsius;
  readonly maxHumidityPercent: number;
}): Outcome<Kilopascal> {
  const outside = firstOutside([day.maxHumidityPercent, relativeHumidityPercent]);
  if (outside) return outside;
  const low = saturationVapourPressureKpa(day.minCelsius);
  if (!low.ok) return low;
  return holds(kilopascal((low.value * day.maxHumidityPercent) / 100));
}
