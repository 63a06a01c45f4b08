import { type Clause, clauseHas, type Frame } from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import type { Marker } from './hearsay.ts';

/** `gutters ec 5.9 ph 1.3, other way round`: all that was told before is in doubt, since something stands in the wrong place. */
export function doubtSwapped(frame: Frame, clause: Clause, mark: Marker): void {
  const at = swappedAt(frame, clause);
  if (at !== null) mark(0, at, 'queried');
}

/** Where it closes a clause, behind values or alone; null: it is said of something else. */
function swappedAt(frame: Frame, clause: Clause): number | null {
  if (!clauseHas(frame, clause, 'swapped')) return null;
  let at = clause.to - 1;
  while (at >= clause.from && !means(frame.terms[at], 'swapped')) {
    if (!means(frame.terms[at], 'filler', 'sorry', 'no-wait', 'pronoun', 'self')) return null;
    at--;
  }
  const start = frame.terms
    .slice(clause.from, at)
    .findLastIndex(
      (term) =>
        !means(term, 'filler', 'sorry', 'no-wait', 'pronoun', 'self', 'article', 'link', 'no'),
    );
  const before = frame.terms[clause.from + start];
  return start < 0 || before?.kind === 'measure' ? at : null;
}
