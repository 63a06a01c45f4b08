import { firstOutside, holds, type Outcome } from '../outcome.ts';
import { type Celsius, kelvinFromCelsius } from '../units/temperature.ts';
import { waterTemperatureCelsius } from './ranges.ts';

/** Close enough over 0 to 60 °C, where it falls from 1000 to 983 kg/m³. */
const WATER_KG_PER_M3 = 998;

/**
 * Kinematic viscosity of water.
 *
 *     ν = 2.414·10⁻⁵ · 10^(247.8/(T − 140)) / 998      m²/s, T in K, 0 to 60 °C, within 2.5 %
 *
 * Source: Vogel's equation with the coefficients of Al-Shemmeri 2012, Engineering Fluid Mechanics.
 * @example waterViscosityM2PerS(celsius(20)) // 1.00e-6
 */
export function waterViscosityM2PerS(waterCelsius: Celsius): Outcome<number> {
  const outside = firstOutside([waterCelsius, waterTemperatureCelsius]);
  if (outside) return outside;
  const kelvin = kelvinFromCelsius(waterCelsius);
  return holds((2.414e-5 * 10 ** (247.8 / (kelvin - 140))) / WATER_KG_PER_M3);
}
