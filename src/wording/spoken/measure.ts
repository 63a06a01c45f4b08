/** Every unit that a number can be told in; a language has a word for each. */
export type MeasureUnit =
  | 'none'
  | 'pH'
  | 'mS/cm'
  | 'µS/cm'
  | 'ppm'
  | 'CF'
  | '°C'
  | '°F'
  | '%'
  | 'mg/L'
  | 'L'
  | 'gal'
  | 'mL'
  | 'min'
  | 'min/h'
  | 'g'
  | 'kg'
  | 'cm'
  | 'in';

/** A number in the unit it is told in, and between how many decimals. */
export interface Measure {
  readonly value: number;
  readonly unit: MeasureUnit;
  readonly leastDecimals: number;
  readonly mostDecimals: number;
}

export function measure(
  value: number,
  unit: MeasureUnit,
  leastDecimals: number,
  mostDecimals: number,
): Measure {
  return { value, unit, leastDecimals, mostDecimals };
}

/** Without the noughts that a scale usually shows: `54`, not `54.0`. */
export function asWritten(told: Measure): Measure {
  return { ...told, leastDecimals: 0 };
}
