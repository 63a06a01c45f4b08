import type { Amount } from '../fact.ts';
import { cmFactor, isBare, isVolume, unitIs } from '../numbers/quantity-of-measure.ts';
import { type Clause, type Frame, measureAtTerm } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';

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
