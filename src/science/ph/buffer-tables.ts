import type { Table } from '../interpolation.ts';

/**
 * Solutions that pH meters are set by. The first four are the standards of JIS Z 8802 and NIST, the
 * last three the bottles and sachets sold as 4.00, 7.00 and 10.01.
 */
export type Buffer =
  | 'phthalate'
  | 'phosphate'
  | 'borax'
  | 'carbonate'
  | 'technical 4.00'
  | 'technical 7.00'
  | 'technical 10.01';

const everyFive = (values: readonly number[]): Table =>
  values.map((ph, index) => [index * 5, ph] as const);

/** pH by temperature in °C, from 0 in steps of five. Sources: JIS Z 8802; makers' labels. */
export const BUFFER_TABLES: Readonly<Record<Buffer, Table>> = {
  phthalate: everyFive([4.01, 4.01, 4.0, 4.0, 4.0, 4.01, 4.01, 4.02, 4.03]),
  phosphate: everyFive([6.98, 6.95, 6.92, 6.9, 6.88, 6.86, 6.85, 6.84, 6.84]),
  borax: everyFive([9.46, 9.39, 9.33, 9.27, 9.22, 9.18, 9.14, 9.1, 9.07]),
  carbonate: everyFive([10.32, 10.25, 10.18, 10.12, 10.07, 10.02, 9.97, 9.93]),
  'technical 4.00': everyFive([4.0, 4.0, 4.0, 4.0, 4.0, 4.0, 4.01, 4.02, 4.03]),
  'technical 7.00': everyFive([7.12, 7.09, 7.06, 7.04, 7.02, 7.0, 6.99, 6.98, 6.98]),
  'technical 10.01': everyFive([10.32, 10.25, 10.18, 10.12, 10.06, 10.01, 9.97, 9.93, 9.89]),
};
