import type { SpokenUnits } from '../../greenhouse/greenhouse.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import type { Readable } from '../statement.ts';
import type { Measure } from './measure.ts';
import {
  convert,
  isBare,
  isBelievable,
  isVolume,
  litresFactor,
  litresPerUsGallon,
  round,
  unitIs,
} from './quantity-of-measure.ts';

/** Quantities in the order in which a bare number is likeliest to be of them. */
const likeliest: readonly Quantity[] = [
  'ph',
  'ec',
  'water-temperature',
  'top-up',
  'dose',
  'level',
  'humidity',
  'air-temperature',
  'dissolved-oxygen',
  'reservoir-change',
  'harvest',
  'fill-time',
  'aeration',
];

/** All that a number can be read as, in each quantity's unit; only one quantity's where that is named. */
export function readablesOf(
  measure: Measure,
  units: SpokenUnits,
  only: Quantity | null,
): Readable[] {
  return likeliest.flatMap((quantity): Readable[] => {
    if (only !== null && quantity !== only) return [];
    const value = valueFor(quantity);
    return value !== null && isBelievable(quantity, value, null) ? [{ quantity, value }] : [];
  });

  function valueFor(quantity: Quantity): number | null {
    const value = measure.values[0]!;
    const perUnit = units.volume === 'L' ? 1 : litresPerUsGallon;
    const inLitres = isVolume(measure) ? litresFactor(measure)! : perUnit;
    if (quantity === 'level' || quantity === 'top-up' || quantity === 'reservoir-change') {
      return isVolume(measure) || isBare(measure) ? round(value * inLitres) : null;
    }
    if (
      isBare(measure) &&
      (quantity === 'dose' ||
        quantity === 'harvest' ||
        quantity === 'fill-time' ||
        quantity === 'aeration')
    )
      return value;
    if (quantity === 'fill-time' && unitIs(measure, 'minute-an-hour')) return null;
    const conversion = convert(quantity, measure, units);
    return conversion && !conversion.unitOpen ? conversion.values[0]! : null;
  }
}
