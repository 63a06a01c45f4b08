import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';
import { type Celsius, kelvinFromCelsius } from '../units/temperature.ts';

const waterTemperature: ValidRange = {
  quantity: 'water temperature',
  unit: '°C',
  from: 0,
  to: 100,
};

/** Molar gas constant, J/mol/K, and Faraday constant, C/mol (SI 2019, exact). */
const GAS_CONSTANT_J_PER_MOL_K = 8.31446261815324;
const FARADAY_C_PER_MOL = 96485.33212;

/**
 * Slope of a perfect pH electrode: millivolts that one pH makes.
 *
 *     S = ln 10 · R T / F      mV/pH, T in K; 0 to 100 °C
 *
 * Source: Nernst equation; IUPAC Recommendations 2002 on the measurement of pH.
 * @example nernstSlopeMvPerPh(celsius(25)) // 59.16
 */
export function nernstSlopeMvPerPh(solutionCelsius: Celsius): Outcome<number> {
  const outside = firstOutside([solutionCelsius, waterTemperature]);
  if (outside) return outside;
  const kelvin = kelvinFromCelsius(solutionCelsius);
  return holds((1000 * Math.LN10 * GAS_CONSTANT_J_PER_MOL_K * kelvin) / FARADAY_C_PER_MOL);
}
