import { holds, type Outcome } from '../outcome.ts';
import { sunGeometry } from './sun-geometry.ts';

/**
 * Daylight hours: the greatest possible duration of sunshine in a day.
 *
 *     N = 24 ωs / π      h
 *
 * Latitude in degrees, south negative; day of the year 1 to 366.
 *
 * Source: FAO-56 eq 34.
 * @example daylightHours({ latitudeDegrees: -20, dayOfYear: 246 }) // 11.7, FAO-56 Example 9
 */
export function daylightHours(place: {
  readonly latitudeDegrees: number;
  readonly dayOfYear: number;
}): Outcome<number> {
  const sun = sunGeometry(place);
  if (!sun.ok) return sun;
  return holds((24 * sun.value.sunsetHourAngleRadians) / Math.PI);
}
