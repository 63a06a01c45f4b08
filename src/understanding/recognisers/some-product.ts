import type { Measure } from '../numbers/measure.ts';
import { litresFactor, unitIs } from '../numbers/quantity-of-measure.ts';
import { type Clause, type Frame, measureOf } from '../reading/frame.ts';
import { means } from '../reading/term.ts';

/** `30 ml feed`, `30 ml of nutrients`: millilitres of a product that is not named, as they were written; null: of none. */
export function someProduct(frame: Frame, clause: Clause, i: number): string | null {
  const { terms } = frame;
  if (!unitIs(measureOf(frame, i), 'ml', 'cl')) return null;
  let j = i + 1;
  while (j < clause.to && means(terms[j], 'of', 'article')) j++;
  const stuff = j < clause.to ? terms[j] : undefined;
  if (stuff?.kind !== 'word' || !stuff.word.anyProduct || stuff.word.product !== null) return null;
  const { original, originAt } = frame.folded;
  return original.slice(originAt(terms[i]!.from), originAt(stuff.to));
}

/** Nobody tops up with so little: a product whose name is missing, likely. */
export const leastTopUpL = 0.1;

export function isDoseSized(measure: Measure): boolean {
  return (
    unitIs(measure, 'ml', 'cl') &&
    (litresFactor(measure) ?? 1) * measure.values.at(-1)! < leastTopUpL
  );
}
