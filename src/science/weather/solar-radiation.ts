import { firstOutside, holds, type Outcome } from '../outcome.ts';
import { type MegajoulePerM2Day, megajoulePerM2Day } from '../units/radiation.ts';
import type { Celsius } from '../units/temperature.ts';
import { airTemperatureCelsius, elevationMetres } from './ranges.ts';

/**
 * Solar radiation on the ground from the hours of sunshine (Ångström).
 *
 *     Rs = (0.25 + 0.5 n/N) · Ra      MJ/m²/d, n from 0 to N hours
 *
 * Source: FAO-56 eq 35.
 * @example solarRadiationFromSunshineMjPerM2Day({ sunshineHours: 7.1, daylightHours: 10.9,
 *   extraterrestrialMjPerM2Day: megajoulePerM2Day(25.1) }) // 14.45, FAO-56 Example 10
 */
export function solarRadiationFromSunshineMjPerM2Day(day: {
  readonly sunshineHours: number;
  readonly daylightHours: number;
  readonly extraterrestrialMjPerM2Day: MegajoulePerM2Day;
}): Outcome<MegajoulePerM2Day> {
  const outside = firstOutside(
    [day.daylightHours, { quantity: 'daylight', unit: 'h', from: 0, to: 24 }],
    [day.sunshineHours, { quantity: 'sunshine', unit: 'h', from: 0, to: day.daylightHours }],
  );
  if (outside) return outside;
  // In polar night there is no sunshine to have a share of.
  const share = day.daylightHours === 0 ? 0 : day.sunshineHours / day.daylightHours;
  return holds(megajoulePerM2Day((0.25 + 0.5 * share) * day.extraterrestrialMjPerM2Day));
}

/** kRs of FAO-56 eq 50, °C^−0.5: where land, or where a large water, makes the air. */
export const SITE_COEFFICIENT = { interior: 0.16, coast: 0.19 } as const;

/**
 * Solar radiation on the ground from the day's swing of temperature (Hargreaves): clear days swing
 * widely.
 *
 *     Rs = kRs · √(Tmax − Tmin) · Ra      MJ/m²/d; kRs 0.16 inland, 0.19 at a coast
 *
 * Not for islands. Source: FAO-56 eq 50.
 * @example solarRadiationFromTemperaturesMjPerM2Day({ minCelsius: celsius(14.8),
 *   maxCelsius: celsius(26.6), site: 'interior',
 *   extraterrestrialMjPerM2Day: megajoulePerM2Day(40.6) }) // 22.3, FAO-56 Example 15
 */
export function solarRadiationFromTemperaturesMjPerM2Day(day: {
  readonly minCelsius: Celsius;
  readonly maxCelsius: Celsius;
  readonly site: keyof typeof SITE_COEFFICIENT;
  readonly extraterrestrialMjPerM2Day: MegajoulePerM2Day;
}): Outcome<MegajoulePerM2Day> {
  const outside = firstOutside(
    [day.minCelsius, { ...airTemperatureCelsius, quantity: 'lowest air temperature' }],
    [
      day.maxCelsius,
      { ...airTemperatureCelsius, quantity: 'highest air temperature', from: day.minCelsius },
    ],
  );
  if (outside) return outside;
  const swing = Math.sqrt(day.maxCelsius - day.minCelsius);
  return holds(
    megajoulePerM2Day(SITE_COEFFICIENT[day.site] * swing * day.extraterrestrialMjPerM2Day),
  );
}

/**
 * Solar radiation on the ground under a clear sky.
 *
 *     Rso = (0.75 + 2·10⁻⁵ z) · Ra      MJ/m²/d, z in m
 *
 * Source: FAO-56 eq 37.
 * @example clearSkyRadiationMjPerM2Day({ elevationM: 100,
 *   extraterrestrialMjPerM2Day: megajoulePerM2Day(41.08838) }) // 30.898, FAO-56 Example 18
 */
export function clearSkyRadiationMjPerM2Day(place: {
  readonly elevationM: number;
  readonly extraterrestrialMjPerM2Day: MegajoulePerM2Day;
}): Outcome<MegajoulePerM2Day> {
  const outside = firstOutside([place.elevationM, elevationMetres]);
  if (outside) return outside;
  return holds(
    megajoulePerM2Day((0.75 + 2e-5 * place.elevationM) * place.extraterrestrialMjPerM2Day),
  );
}
