import { isVolume } from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure, isName, measureOf } from '../reading/frame.ts';
import { isMark, means, type Term } from '../reading/term.ts';
import type { TakingBack } from '../statement.ts';
import { numbersCorrected } from './numbers-corrected.ts';

/**
 * `except the jars`, `except the jars, they got a jug`, right after water was told of several systems: of this one it was
 * none, or another amount.
 */
export function exceptOfJustPoured(frame: Frame): TakingBack | null {
  const { context, terms, places } = frame;
  const poured = context.justLogged?.filter(({ quantity }) => quantity === 'top-up') ?? [];
  if (poured.length < 2 || !means(terms[0], 'except') || !terms.every(isSmall)) return null;
  const [name, ...names] = places.where(isName);
  const called = terms[name ?? -1];
  if (called?.kind !== 'name' || names.length > 0 || called.systems.length !== 1) return null;
  const system = called.systems[0]!;
  if (!poured.some((entry) => entry.system === system)) return null;
  const [amount, ...amounts] = places.where(isMeasure);
  if (amount === undefined) return { kind: 'deny', system, quantity: 'top-up' };
  if (amounts.length > 0 || !isVolume(measureOf(frame, amount))) return null;
  const corrected = numbersCorrected(frame, [amount, null], 'top-up');
  return corrected && { kind: 'correct', ...corrected, system };
}

function isSmall(term: Term): boolean {
  if (term.kind === 'stop') return term.cut !== 'question' && term.cut !== 'line';
  return (
    isName(term) ||
    isMeasure(term) ||
    isMark(term, ':', '-') ||
    means(
      term,
      'except',
      'article',
      'pronoun',
      'filler',
      'has',
      'add',
      'top-up',
      'took',
      'merely',
      'place',
      'third-person',
    )
  );
}
