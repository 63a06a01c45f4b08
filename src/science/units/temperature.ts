import type { Unit } from './unit.ts';

/** Degrees Celsius, °C. */
export type Celsius = Unit<'°C'>;
/** Kelvin, K. */
export type Kelvin = Unit<'K'>;

export const celsius = (value: number): Celsius => value as Celsius;
export const kelvin = (value: number): Kelvin => value as Kelvin;

/** Zero of the Celsius scale (ITS-90), K. FAO-56 rounds it to 273.16 or 273 in places of its own. */
const CELSIUS_ZERO_K = 273.15;

/** @example kelvinFromCelsius(celsius(25)) // 298.15 */
export const kelvinFromCelsius = (temperatureCelsius: Celsius): Kelvin =>
  kelvin(temperatureCelsius + CELSIUS_ZERO_K);

/** @example celsiusFromFahrenheit(68) // 20 */
export const celsiusFromFahrenheit = (temperatureFahrenheit: number): Celsius =>
  celsius(((temperatureFahrenheit - 32) * 5) / 9);
