import { firstOutside, holds, type Outcome } from '../outcome.ts';
import { type Kilopascal, kilopascal } from '../units/pressure.ts';
import { elevationMetres } from './ranges.ts';

/**
 * Mean air pressure at an elevation.
 *
 *     P = 101.3 · ((293 − 0.0065 z) / 293)^5.26      kPa, z in m, −430 to 4000 m
 *
 * Source: FAO-56 eq 7.
 * @example atmosphericPressureKpa(1800) // 81.8, FAO-56 Example 2
 */
export function atmosphericPressureKpa(elevationM: number): Outcome<Kilopascal> {
  const outside = firstOutside([elevationM, elevationMetres]);
  if (outside) return outside;
  return holds(kilopascal(101.3 * ((293 - 0.0065 * elevationM) / 293) ** 5.26));
}
