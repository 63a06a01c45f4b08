import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';
import { type MillisiemensPerCm, millisiemensPerCm } from '../units/conductivity.ts';
import type { Celsius } from '../units/temperature.ts';

/** Beyond, the rise of conductivity with temperature is no longer a straight line. */
const waterTemperature: ValidRange = { quantity: 'water temperature', unit: '°C', from: 5, to: 40 };
const coefficient: ValidRange = {
  quantity: 'temperature coefficient',
  unit: '1/°C',
  from: 0.015,
  to: 0.025,
};

/** Nutrient solutions: 0.019 to 0.020; common practice, and that of a 1413 µS/cm KCl standard. */
export const NUTRIENT_SOLUTION_PER_CELSIUS = 0.0194;

/**
 * Conductivity at 25 °C from a reading at another temperature.
 *
 *     EC₂₅ = EC_t / (1 + α (t − 25))      mS/cm, t 5 to 40 °C, α 0.015 to 0.025 /°C
 *
 * Source: linear compensation as in ISO 7888, 7.2; α of 0.01 mol/L KCl from an instrument manual.
 * @example conductivityAt25MsPerCm({ readingMsPerCm: millisiemensPerCm(1.278),
 *   waterCelsius: celsius(20) }) // 1.415; the standard is 1.413
 */
export function conductivityAt25MsPerCm(reading: {
  readonly readingMsPerCm: MillisiemensPerCm;
  readonly waterCelsius: Celsius;
  readonly coefficientPerCelsius?: number;
}): Outcome<MillisiemensPerCm> {
  const perCelsius = reading.coefficientPerCelsius ?? NUTRIENT_SOLUTION_PER_CELSIUS;
  const outside = firstOutside([reading.waterCelsius, waterTemperature], [perCelsius, coefficient]);
  if (outside) return outside;
  const factor = 1 + perCelsius * (reading.waterCelsius - 25);
  return holds(millisiemensPerCm(reading.readingMsPerCm / factor));
}
