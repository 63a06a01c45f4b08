import type { Amount, Fact } from '../fact.ts';
import { cmFactor, isBare, isVolume, unitIs } from '../numbers/quantity-of-measure.ts';
import { type Clause, type Frame, isPadding, measureAtTerm, takeRange } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import { afterTopUp } from './top-up-order.ts';

export interface Target {
  readonly at: number;
  readonly amount: Amount;
}

/** `to the brim`, `to full`, `to 60 cm`, `up to 95 l`: where the level stood afterwards. */
export function brimOrMark(frame: Frame, clause: Clause, verb: number): Target | null {
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (means(term, 'full') && i >= verb && !means(frame.terms[i + 1], 'of'))
      return { at: i, amount: { kind: 'brim' } };
    if (!means(term, 'to')) continue;
    let j = i + 1;
    while (
      j < clause.to &&
      means(frame.terms[j], 'article', 'about', 'link') &&
      !means(frame.terms[j], 'brim')
    )
      j++;
    const goal: Term | undefined = j < clause.to ? frame.terms[j] : undefined;
    if (means(goal, 'brim', 'full')) return { at: j, amount: { kind: 'brim' } };
    const measure = measureAtTerm(frame, j);
    if (!measure) continue;
    const isMark =
      cmFactor(measure) !== null ||
      unitIs(measure, 'percent') ||
      measure.share ||
      isVolume(measure) ||
      // `filled the gutters to 110`: up to a mark, in a unit that is asked.
      (isBare(measure) && means(frame.terms[verb], 'fill', 'refill', 'top-up'));
    if (isMark) {
      const from = frame.terms[j + 1];
      const below = (cmFactor(measure) !== null || isVolume(measure)) && means(from, 'below');
      return { at: j, amount: { kind: below ? 'below-brim' : 'measure', measure } };
    }
  }
  return null;
}

/** `topped up 12 l, to the brim`: a clause of nothing but the mark that the amount told before it came to. */
export function markAlone(frame: Frame, clause: Clause, before: Fact | undefined): Fact | null {
  if (before?.quantity !== 'top-up' || before.amount.kind !== 'measure') return null;
  if (clause.opens !== 'comma' && clause.opens !== 'and') return null;
  const said = frame.terms.slice(clause.from, clause.to);
  const isAlone = said.every(
    (term) =>
      (isPadding(term) && !means(term, 'both', 'all', 'each')) || means(term, 'to', 'brim', 'full'),
  );
  if (!isAlone || !said.some((term) => means(term, 'to', 'brim'))) return null;
  const target = brimOrMark(frame, clause, clause.from);
  if (target?.amount.kind !== 'brim' || frame.taken[target.at]) return null;
  takeRange(frame, clause.from, clause.to);
  return {
    quantity: 'level',
    amount: target.amount,
    at: target.at,
    from: clause.from,
    to: target.at,
    phase: 'after',
    because: afterTopUp,
  };
}
