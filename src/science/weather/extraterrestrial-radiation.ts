import { holds, type Outcome } from '../outcome.ts';
import { type MegajoulePerM2Day, megajoulePerM2Day } from '../units/radiation.ts';
import { sunGeometry } from './sun-geometry.ts';

/** Solar constant as FAO-56 uses it, MJ/m²/min. */
const SOLAR_CONSTANT_MJ_PER_M2_MIN = 0.082;
const MINUTES_PER_DAY = 24 * 60;

/**
 * Extraterrestrial radiation: the sun's energy in a day on a level surface above the air.
 *
 *     Ra = (24·60/π) · 0.0820 · dr · (ωs sin φ sin δ + cos φ cos δ sin ωs)      MJ/m²/d
 *
 * Latitude in degrees, south negative; day of the year 1 to 366. In polar night it is 0.
 *
 * Source: FAO-56 eq 21.
 * @example extraterrestrialRadiationMjPerM2Day({ latitudeDegrees: -20, dayOfYear: 246 })
 *   // 32.2, FAO-56 Example 8
 */
export function extraterrestrialRadiationMjPerM2Day(place: {
  readonly latitudeDegrees: number;
  readonly dayOfYear: number;
}): Outcome<MegajoulePerM2Day> {
  const sun = sunGeometry(place);
  if (!sun.ok) return sun;
  const { latitudeRadians, inverseRelativeDistance, declinationRadians, sunsetHourAngleRadians } =
    sun.value;
  const arc =
    sunsetHourAngleRadians * Math.sin(latitudeRadians) * Math.sin(declinationRadians) +
    Math.cos(latitudeRadians) * Math.cos(declinationRadians) * Math.sin(sunsetHourAngleRadians);
  const radiation =
    (MINUTES_PER_DAY / Math.PI) * SOLAR_CONSTANT_MJ_PER_M2_MIN * inverseRelativeDistance * arc;
  // Rounding leaves a hair under zero in polar night.
  return holds(megajoulePerM2Day(Math.max(0, radiation)));
}
