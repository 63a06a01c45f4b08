import type { SaidIn } from '../../greenhouse/entry.ts';
import type { SpokenUnits } from '../../greenhouse/greenhouse.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import type { Measure } from './measure.ts';
import { convert, litresFactor, round } from './quantity-of-measure.ts';

/**
 * The unit that an amount was said in, where it is not the quantity's own: `3 cans`, `700 ppm`. It is kept with the
 * entry, so that `no, 4` after it is four cans.
 */
export function unitSaid(
  quantity: Quantity,
  measure: Measure,
  units: SpokenUnits,
): SaidIn | undefined {
  if (measure.unit === null || measure.share) return undefined;
  const [zero, one] = [valueAt(quantity, measure, units, 0), valueAt(quantity, measure, units, 1)];
  if (zero === undefined || one === undefined) return undefined;
  const perUnit = round(one - zero);
  const zeroAt = zero === 0 ? 0 : round(-zero / perUnit);
  return perUnit === 1 && zeroAt === 0 ? undefined : { perUnit, zeroAt };
}

function numberIn(unit: Measure['unit'], number: number): Measure {
  return {
    values: [number],
    unit,
    approximate: false,
    bound: false,
    share: false,
    disputedBy: undefined,
    written: '',
    whole: true,
    decimals: 0,
  };
}

function valueAt(
  quantity: Quantity,
  measure: Measure,
  units: SpokenUnits,
  number: number,
): number | undefined {
  if (quantity !== 'level')
    return convert(quantity, numberIn(measure.unit, number), units)?.values[0];
  const litres = litresFactor(measure);
  return litres === null ? undefined : number * litres;
}
