import type { Fact } from '../fact.ts';
import type { Mood } from '../moods/mood.ts';
import { type Frame, inClause, isMeasure, takeRange } from '../reading/frame.ts';
import { means } from '../reading/term.ts';

/** `all good`: a note that all is well; beside something that is told, no more than chatter. */
export function recogniseWellBeing(
  frame: Frame,
  moods: readonly (Mood | null)[],
  told: readonly Fact[],
): Fact[] {
  if (told.length > 0) return [];
  return frame.clauses.flatMap((clause): Fact[] => {
    const at = inClause(frame, clause, (term, i) => means(term, 'all-good') && !frame.taken[i])[0];
    if (at === undefined || moods[at] === 'question' || moods[at] === 'queried') return [];
    if (inClause(frame, clause, isMeasure).length > 0) return [];
    const { originAt, original } = frame.folded;
    const note = original
      .slice(originAt(frame.terms[clause.from]!.from), originAt(frame.terms[clause.to - 1]!.to))
      .trim();
    takeRange(frame, clause.from, clause.to);
    return [
      {
        quantity: 'note',
        amount: { kind: 'value', value: 1 },
        at,
        from: clause.from,
        to: clause.to - 1,
        note,
        because: 'all is well',
      },
    ];
  });
}
