import { firstOutside, holds, type Outcome } from '../outcome.ts';
import type { Celsius } from '../units/temperature.ts';
import {
  evaporationEquivalentMmPerDay,
  type MillimetrePerDay,
  millimetrePerDay,
} from '../units/water-depth.ts';
import { extraterrestrialRadiationMjPerM2Day } from './extraterrestrial-radiation.ts';
import { airTemperatureCelsius } from './ranges.ts';

/**
 * Hargreaves reference evapotranspiration: how thirsty a day was, from its temperatures alone.
 *
 *     ETo = 0.0023 · (Tmean + 17.8) · √(Tmax − Tmin) · 0.408 Ra      mm/d, T in °C, Ra in MJ/m²/d
 *
 * Tmean is the middle of Tmax and Tmin. The formula is for open grass: calibrate it locally, prefer
 * weekly means, and under glass use it as a shape only. Holds for air of −17.8 to 50 °C with
 * Tmax not below Tmin.
 *
 * Source: FAO-56 eq 52 (Hargreaves and Samani 1985).
 * @example hargreavesEtoMmPerDay({ minCelsius: celsius(14.8), maxCelsius: celsius(26.6),
 *   latitudeDegrees: 45.72, dayOfYear: 196 }) // 5.03, FAO-56 Example 20
 */
export function hargreavesEtoMmPerDay(day: {
  readonly minCelsius: Celsius;
  readonly maxCelsius: Celsius;
  readonly latitudeDegrees: number;
  readonly dayOfYear: number;
}): Outcome<MillimetrePerDay> {
  const outside = firstOutside(
    // Below −17.8 °C the formula would turn negative.
    [day.minCelsius, { ...airTemperatureCelsius, quantity: 'lowest air temperature', from: -17.8 }],
    [
      day.maxCelsius,
      { ...airTemperatureCelsius, quantity: 'highest air temperature', from: day.minCelsius },
    ],
  );
  if (outside) return outside;
  const radiation = extraterrestrialRadiationMjPerM2Day(day);
  if (!radiation.ok) return radiation;
  const meanCelsius = (day.minCelsius + day.maxCelsius) / 2;
  const spanCelsius = day.maxCelsius - day.minCelsius;
  const radiationMmPerDay = evaporationEquivalentMmPerDay(radiation.value);
  return holds(
    millimetrePerDay(0.0023 * (meanCelsius + 17.8) * Math.sqrt(spanCelsius) * radiationMmPerDay),
  );
}
