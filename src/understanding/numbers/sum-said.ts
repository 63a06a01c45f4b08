import { phraseAt, type Reading, unitAt } from '../reading/look-up.ts';
import type { Unit } from '../reading/word-list.ts';
import { concept } from './concept-at.ts';
import { isOfTwoSystems } from './containers-together.ts';
import { type Core, coreAt } from './number-core.ts';
import { litresOfUnit } from './quantity-of-measure.ts';

interface Rest {
  readonly share: number;
  readonly length: number;
}

/** `3 cans + 1 can`, `2 cans plus 5 l`: what a sign of adding puts to an amount, as a share of its unit. */
export function addedAmount(reading: Reading, from: number, end: number, unit: Unit): Rest | null {
  const litres = litresOfUnit(unit);
  if (litres === null) return null;
  let share = 0;
  let at = end;
  for (;;) {
    const plus = concept(reading, at, 'plus');
    const count = plus > 0 ? coreAt(reading, at + plus) : null;
    const other = count ? unitAt(reading, at + plus + count.length) : null;
    if (count?.values.length !== 1 || !other) break;
    const to = at + plus + count.length + other.length;
    const each = litresOfUnit(other.value);
    const isDose = isOfDoses(other.value) && !isOfDoses(unit);
    if (each === null || isDose || isOfProduct(reading, to) || isOfTwoSystems(reading, from, to))
      break;
    share += (count.values[0]! * each) / litres;
    at = to;
  }
  return at > end ? { share, length: at - end } : null;
}

/** `3+1 cans`, `5 + 4`: whole counts of one thing; a decimal or a small dose is something of its own. */
export function addedCount(reading: Reading, end: number, first: Core): Rest | null {
  const plus = first.whole && !first.needsUnit ? concept(reading, end, 'plus') : 0;
  const count = plus > 0 ? coreAt(reading, end + plus) : null;
  if (!count?.whole || count.needsUnit) return null;
  const to = end + plus + count.length;
  const unit = unitAt(reading, to)?.value;
  const isVolume = unit !== undefined && litresOfUnit(unit) !== null && !isOfDoses(unit);
  if (unit !== undefined && !isVolume) return null;
  if (isOfProduct(reading, unit ? to + 1 : to)) return null;
  return { share: count.values[0]!, length: plus + count.length };
}

function isOfDoses(unit: Unit): boolean {
  return 'id' in unit && (unit.id === 'ml' || unit.id === 'cl');
}

/** `1 can + 5 ml A`, `20 ml + 5 ml of up`: of something else than water. */
function isOfProduct(reading: Reading, at: number): boolean {
  const of = concept(reading, at, 'of');
  const word = phraseAt(reading, at + of)?.value;
  return (
    word !== undefined && (word.product !== null || word.shyProduct !== null || word.anyProduct)
  );
}
