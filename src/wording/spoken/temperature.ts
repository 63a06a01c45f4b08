import type { TemperatureUnit } from '../../greenhouse/greenhouse.ts';
import { type Measure, measure } from './measure.ts';

/** A temperature in °C, told in the unit of the household. */
export function temperature(celsius: number, unit: TemperatureUnit): Measure {
  return unit === 'F' ? measure((celsius * 9) / 5 + 32, '°F', 0, 1) : measure(celsius, '°C', 0, 1);
}
