import { interpolate, spanOf } from '../interpolation.ts';
import { firstOutside, holds, type Outcome } from '../outcome.ts';
import type { Celsius } from '../units/temperature.ts';
import { BUFFER_TABLES, type Buffer } from './buffer-tables.ts';

/**
 * pH of a buffer at its own temperature.
 *
 *     straight line between the entries of the table      0 to 40 °C (carbonate: 35)
 *
 * Source: JIS Z 8802 / NIST for the standards, makers' labels for the technical buffers.
 * @example bufferPh('phosphate', celsius(20)) // 6.88
 */
export function bufferPh(buffer: Buffer, bufferCelsius: Celsius): Outcome<number> {
  const table = BUFFER_TABLES[buffer];
  const outside = firstOutside([
    bufferCelsius,
    { quantity: 'temperature of the buffer', unit: '°C', ...spanOf(table) },
  ]);
  if (outside) return outside;
  return holds(interpolate(table, bufferCelsius));
}
