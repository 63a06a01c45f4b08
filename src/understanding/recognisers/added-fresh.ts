import { type Clause, clauseHas, type Frame } from '../reading/frame.ts';
import { means } from '../reading/term.ts';

/**
 * Whether the fresh solution of a clause was only added: `topped up the jars with fresh water`, `added 3 l of fresh mix`.
 * Where something was let out before, it is what the system was filled with anew.
 */
export function addsFresh(frame: Frame, clause: Clause): boolean {
  for (let i = clause.from; i < clause.to; i++)
    if (means(frame.terms[i], 'changed-solution')) return isAddedFresh(frame, clause, i);
  return false;
}

/** The same of the solution that stands there. */
export function isAddedFresh(frame: Frame, clause: Clause, i: number): boolean {
  const before = frame.terms[i - 1];
  const isOfAmount = before?.kind === 'measure' || frame.terms[i - 2]?.kind === 'measure';
  const isWhatWentIn = before?.kind === 'measure' || means(before, 'of', 'with');
  const isAdded =
    (isWhatWentIn && clauseHas(frame, clause, 'top-up')) ||
    (isWhatWentIn && isOfAmount && clauseHas(frame, clause, 'add'));
  return isAdded && !clauseHas(frame, { from: 0, to: clause.to }, 'empty-out', 'change', 'clean');
}
