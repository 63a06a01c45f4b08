import { firstOutside, holds, type Outcome } from '../outcome.ts';
import { type Kilopascal, kilopascal, STANDARD_ATMOSPHERE_KPA } from '../units/pressure.ts';
import { elevationMetres } from './ranges.ts';

/**
 * Pressure of the standard atmosphere at an elevation; for dissolved oxygen it is the usual choice.
 *
 *     P(h) = 101.325 · (1 − 2.25577·10⁻⁵ h)^5.25588      kPa, h in m, −430 to 4000 m
 *
 * Source: ISO 2533 standard atmosphere, troposphere.
 * @example standardAtmosphereKpa(1000) // 89.87
 */
export function standardAtmosphereKpa(elevationM: number): Outcome<Kilopascal> {
  const outside = firstOutside([elevationM, elevationMetres]);
  if (outside) return outside;
  return holds(kilopascal(STANDARD_ATMOSPHERE_KPA * (1 - 2.25577e-5 * elevationM) ** 5.25588));
}
