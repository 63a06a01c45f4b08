import type { SpokenUnits } from '../../greenhouse/greenhouse.ts';
import { believable, type Quantity } from '../../greenhouse/quantity.ts';
import type { System } from '../../greenhouse/system.ts';
import type { Unit } from '../reading/word-list.ts';
import type { Assumption } from '../statement.ts';
import type { UnitId } from '../vocabulary/vocabulary.ts';
import type { Measure } from './measure.ts';

export const litresPerUsGallon = 3.785411784;
const cmPerInch = 2.54;
const gramsPerOunce = 28.349523125;
const gramsPerPound = 453.59237;
/** 1 CF is a tenth of a mS/cm. */
const msPerCf = 0.1;

export const millilitre: Unit = { id: 'ml', shy: false };
/** Of a vessel that nobody knows the size of. */
export const unknownUnit: Unit = { id: 'unknown', shy: false };

const litresIn: Partial<Record<UnitId, number>> = {
  ml: 0.001,
  cl: 0.01,
  dl: 0.1,
  l: 1,
  gal: litresPerUsGallon,
};
const cmIn: Partial<Record<UnitId, number>> = { cm: 1, mm: 0.1, m: 100, in: cmPerInch };
const gramsIn: Partial<Record<UnitId, number>> = {
  g: 1,
  kg: 1000,
  oz: gramsPerOunce,
  lb: gramsPerPound,
  'metric-pound': 500,
  decagram: 10,
};
const minutesIn: Partial<Record<UnitId, number>> = { second: 1 / 60, minute: 1, hour: 60, m: 1 };

function factorOf(measure: Measure, table: Partial<Record<UnitId, number>>): number | null {
  return measure.unit && 'id' in measure.unit ? (table[measure.unit.id] ?? null) : null;
}

export function litresFactor({ unit }: Measure): number | null {
  return unit && litresOfUnit(unit);
}

/** What one of a unit of volume or of a container holds; null for any other unit. */
export function litresOfUnit(unit: Unit): number | null {
  return 'litres' in unit ? unit.litres : (litresIn[unit.id] ?? null);
}

export function isVolume(measure: Measure): boolean {
  return litresFactor(measure) !== null;
}

export function cmFactor(measure: Measure): number | null {
  return factorOf(measure, cmIn);
}

export function gramsFactor(measure: Measure): number | null {
  return factorOf(measure, gramsIn);
}

export function minutesFactor(measure: Measure): number | null {
  return factorOf(measure, minutesIn);
}

export function unitIs(measure: Measure, ...ids: readonly UnitId[]): boolean {
  return measure.unit !== null && 'id' in measure.unit && ids.includes(measure.unit.id);
}

export function isBare(measure: Measure): boolean {
  return measure.unit === null && !measure.share;
}

/** What a measure is in a quantity's unit: one value, several that must be told apart, or nothing sensible. */
export interface Conversion {
  /** Likeliest first; more than one where nothing but sense can decide (`1,413`). */
  readonly values: readonly number[];
  readonly assumptions: readonly Assumption[];
  /** The unit is open: the values are buttons, not to be believed. */
  readonly unitOpen: boolean;
}

const sure = (values: readonly number[], assumptions: readonly Assumption[] = []): Conversion => ({
  values,
  assumptions,
  unitOpen: false,
});
const open = (values: readonly number[]): Conversion => ({
  values,
  assumptions: [],
  unitOpen: true,
});

/** Units so small that nobody gives three decimals of them: `1,413 µS` is a thousands comma. */
const smallUnits: readonly UnitId[] = ['ml', 'g', 'us-cm', 'ppm', 'mm'];

/** The readings of the number that its own unit lets stand. */
export function valuesOf(measure: Measure): readonly number[] {
  const { values, unit } = measure;
  if (values.length > 1 && unit && 'id' in unit && smallUnits.includes(unit.id))
    return [values.at(-1)!];
  return values;
}

function scaled(measure: Measure, factor: number): readonly number[] {
  return valuesOf(measure).map((value) => round(value * factor));
}

/** Below it every whole number has no more than twelve digits. */
const firstWithDust = 1e12;

/** Away with the dust of binary fractions. */
export function round(value: number): number {
  if (Number.isInteger(value) && Math.abs(value) < firstWithDust) return value;
  return Number(value.toPrecision(12));
}

export function convert(
  quantity: Quantity,
  measure: Measure,
  units: SpokenUnits,
): Conversion | null {
  switch (quantity) {
    case 'ph':
      return isBare(measure) ? sure(measure.values) : null;
    case 'ec':
      return conductivity(measure, units);
    case 'water-temperature':
      return temperature(measure, units, [-5, 45], [40, 110]);
    case 'air-temperature':
      return temperature(measure, units, [-5, 45], [40, 110]);
    case 'humidity':
      return isBare(measure) || unitIs(measure, 'percent') ? sure(measure.values) : null;
    case 'dissolved-oxygen':
      return isBare(measure) || unitIs(measure, 'mg-l', 'ppm') ? sure(measure.values) : null;
    case 'top-up':
    case 'reservoir-change': {
      const factor = litresFactor(measure);
      return factor === null ? null : sure(scaled(measure, factor));
    }
    case 'dose': {
      const factor = litresFactor(measure);
      return factor === null ? null : sure(scaled(measure, factor * 1000));
    }
    case 'harvest': {
      const factor = gramsFactor(measure);
      return factor === null ? null : sure(scaled(measure, factor));
    }
    case 'fill-time': {
      const factor = minutesFactor(measure);
      return factor === null ? null : sure(scaled(measure, factor));
    }
    case 'aeration':
      return unitIs(measure, 'minute-an-hour', 'minute') ? sure(measure.values) : null;
    case 'level':
    case 'calibration':
    case 'outage':
    case 'restored':
    case 'duty-done':
    case 'duty-failed':
    case 'note':
      return null;
  }
}

const bareMsUpTo = 10;
const bareUsFrom = 100;
const bareUsUpTo = 9999;

function conductivity(measure: Measure, units: SpokenUnits): Conversion | null {
  if (unitIs(measure, 'ms-cm')) return sure(measure.values);
  if (unitIs(measure, 'us-cm')) return sure(scaled(measure, 0.001));
  if (unitIs(measure, 'cf')) return sure(scaled(measure, msPerCf));
  if (unitIs(measure, 'ppm'))
    return sure(scaled(measure, 1 / units.tdsFactor), [
      { kind: 'tds-factor', factor: units.tdsFactor },
    ]);
  if (!isBare(measure)) return null;
  const [value] = measure.values;
  if (measure.values.length > 1)
    return sure([value!], [{ kind: 'bare-conductivity', unit: 'mS/cm' }]);
  if (value! <= bareMsUpTo) return sure([value!], [{ kind: 'bare-conductivity', unit: 'mS/cm' }]);
  if (value! >= bareUsFrom && value! <= bareUsUpTo)
    return sure([round(value! * 0.001)], [{ kind: 'bare-conductivity', unit: 'µS/cm' }]);
  return open([round(value! / 10)]);
}

function temperature(
  measure: Measure,
  units: SpokenUnits,
  celsius: readonly [number, number],
  fahrenheit: readonly [number, number],
): Conversion | null {
  if (unitIs(measure, 'celsius')) return sure(measure.values);
  if (unitIs(measure, 'fahrenheit')) return sure(measure.values.map(celsiusOf));
  if (!isBare(measure) && !unitIs(measure, 'degree')) return null;
  const value = measure.values[0]!;
  if (units.temperature === 'C') {
    if (value >= celsius[0] && value <= celsius[1]) return sure([value]);
    return open([celsiusOf(value)]);
  }
  if (value >= fahrenheit[0] && value <= fahrenheit[1]) return sure([celsiusOf(value)]);
  return open([value]);
}

/** °C = (°F − 32) × 5/9. */
export function celsiusOf(fahrenheit: number): number {
  return round(((fahrenheit - 32) * 5) / 9);
}

export function isBelievable(
  quantity: Quantity,
  value: number,
  system: Pick<System, 'brimL'> | null,
): boolean {
  const range = believable(quantity, system);
  // Converted values may miss a bound by the last digit.
  const slack = 1e-9;
  return range === null || (value >= range[0] - slack && value <= range[1] + slack);
}
