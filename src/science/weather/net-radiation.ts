import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';
import type { Kilopascal } from '../units/pressure.ts';
import { type MegajoulePerM2Day, megajoulePerM2Day } from '../units/radiation.ts';
import type { Celsius } from '../units/temperature.ts';
import { airTemperatureCelsius } from './ranges.ts';

/** Share of the sun's light that the grass of the reference does not throw back (albedo 0.23). */
const ABSORBED_SHARE = 0.77;
/** Stefan-Boltzmann constant as FAO-56 prints it, MJ/K⁴/m²/d. */
const STEFAN_BOLTZMANN_MJ_PER_K4_M2_DAY = 4.903e-9;
/** FAO-56 adds 273.16 in eq 39, and not 273.15. */
const FAO_CELSIUS_ZERO_K = 273.16;

/** Without a clear-sky radiation above zero (polar night) there is no measure of cloudiness. */
const clearSky: ValidRange = {
  quantity: 'clear-sky radiation',
  unit: 'MJ/m²/d',
  from: 0.01,
  to: 45,
};
/** At most that of saturated air of 50 °C. */
const vapourPressure: ValidRange = { quantity: 'vapour pressure', unit: 'kPa', from: 0, to: 12.4 };

/**
 * Net shortwave radiation of the grass reference.
 *
 *     Rns = 0.77 · Rs      MJ/m²/d
 *
 * Source: FAO-56 eq 38.
 * @example netShortwaveMjPerM2Day(megajoulePerM2Day(22.07)) // 17.0, FAO-56 Example 18
 */
export const netShortwaveMjPerM2Day = (solarMjPerM2Day: MegajoulePerM2Day): MegajoulePerM2Day =>
  megajoulePerM2Day(ABSORBED_SHARE * solarMjPerM2Day);

/**
 * Net longwave radiation: the heat a surface gives to the sky.
 *
 *     Rnl = 4.903·10⁻⁹ · (Tmax⁴ + Tmin⁴)/2 · (0.34 − 0.14 √ea) · (1.35 Rs/Rso − 0.35)      MJ/m²/d
 *
 * T in K (°C + 273.16), ea in kPa; Rs/Rso is taken as 1 at most.
 *
 * Source: FAO-56 eq 39.
 * @example netLongwaveMjPerM2Day({ minCelsius: celsius(19.1), maxCelsius: celsius(25.1),
 *   vapourPressureKpa: kilopascal(2.1), solarMjPerM2Day: megajoulePerM2Day(14.5),
 *   clearSkyMjPerM2Day: megajoulePerM2Day(18.8) }) // 3.5, FAO-56 Example 11
 */
export function netLongwaveMjPerM2Day(day: {
  readonly minCelsius: Celsius;
  readonly maxCelsius: Celsius;
  readonly vapourPressureKpa: Kilopascal;
  readonly solarMjPerM2Day: MegajoulePerM2Day;
  readonly clearSkyMjPerM2Day: MegajoulePerM2Day;
}): Outcome<MegajoulePerM2Day> {
  const outside = firstOutside(
    [day.minCelsius, airTemperatureCelsius],
    [day.maxCelsius, airTemperatureCelsius],
    [day.vapourPressureKpa, vapourPressure],
    [day.clearSkyMjPerM2Day, clearSky],
    [day.solarMjPerM2Day, { ...clearSky, quantity: 'solar radiation', from: 0 }],
  );
  if (outside) return outside;
  const emitted =
    ((day.maxCelsius + FAO_CELSIUS_ZERO_K) ** 4 + (day.minCelsius + FAO_CELSIUS_ZERO_K) ** 4) / 2;
  const airMoisture = 0.34 - 0.14 * Math.sqrt(day.vapourPressureKpa);
  const clearness = Math.min(1, day.solarMjPerM2Day / day.clearSkyMjPerM2Day);
  return holds(
    megajoulePerM2Day(
      STEFAN_BOLTZMANN_MJ_PER_K4_M2_DAY * emitted * airMoisture * (1.35 * clearness - 0.35),
    ),
  );
}
