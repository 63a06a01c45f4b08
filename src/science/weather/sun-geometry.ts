import { firstOutside, holds, type Outcome } from '../outcome.ts';
import { dayOfYearNumber, latitudeDegreesNorth } from './ranges.ts';

/** Where the sun stands for a latitude on a day. Angles in radians. */
export interface SunGeometry {
  readonly latitudeRadians: number;
  /** dr: squared ratio of mean to present distance from the sun. */
  readonly inverseRelativeDistance: number;
  /** δ: how far north of the equator the sun stands. */
  readonly declinationRadians: number;
  /** ωs: half the arc of the day; 0 in polar night, π in polar day. */
  readonly sunsetHourAngleRadians: number;
}

/**
 * Sun's distance, declination and sunset hour angle.
 *
 *     dr = 1 + 0.033 cos(2πJ/365)      δ = 0.409 sin(2πJ/365 − 1.39)      ωs = acos(−tan φ tan δ)
 *
 * Latitude in degrees, south negative; J the day of the year, 1 to 366. Beyond the polar circles
 * the argument of acos leaves [−1, 1]; it is clamped there, which gives polar day and night.
 *
 * Source: FAO-56 eq 22 to 25.
 * @example sunGeometry({ latitudeDegrees: -20, dayOfYear: 246 })
 *   // dr 0.985, δ 0.120, ωs 1.527, FAO-56 Example 8
 */
export function sunGeometry(place: {
  readonly latitudeDegrees: number;
  readonly dayOfYear: number;
}): Outcome<SunGeometry> {
  const outside = firstOutside(
    [place.latitudeDegrees, latitudeDegreesNorth],
    [place.dayOfYear, dayOfYearNumber],
  );
  if (outside) return outside;
  const latitudeRadians = (place.latitudeDegrees * Math.PI) / 180;
  const yearAngleRadians = (2 * Math.PI * place.dayOfYear) / 365;
  const declinationRadians = 0.409 * Math.sin(yearAngleRadians - 1.39);
  const sunsetCosine = -Math.tan(latitudeRadians) * Math.tan(declinationRadians);
  return holds({
    latitudeRadians,
    inverseRelativeDistance: 1 + 0.033 * Math.cos(yearAngleRadians),
    declinationRadians,
    sunsetHourAngleRadians: Math.acos(Math.min(1, Math.max(-1, sunsetCosine))),
  });
}
