import { type Frame, isMeasure } from '../reading/frame.ts';
import { isMark, means, type Term } from '../reading/term.ts';
import type { Building } from './building.ts';

/**
 * `yesterday: 7:10 bench 6.1, 7:20 buckets 5.9`, and the same with each row on a line of its own: a day that
 * heads what is told, so that clock times after it are of that day.
 */
export function headsWhatFollows(frame: Frame, { said, from, to }: Building): boolean {
  if (said.minutes !== null || said.part !== null) return false;
  const c = frame.clauseOf[from]!;
  const clause = frame.clauses[c]!;
  const isBefore = frame.terms.slice(clause.from, from).every(mayStandBefore);
  if (!isBefore) return false;
  for (let i = to + 1; i < clause.to; i++) {
    if (isMark(frame.terms[i], ':')) return true;
    if (!mayStandBefore(frame.terms[i]!)) return false;
  }
  const next = frame.clauses[c + 1];
  return next !== undefined && (next.opens === 'line' || next.opens === 'comma');
}

/** `this morning`, `now`: whatever day stands above. */
export function isOfToday(frame: Frame, { from, to }: Building): boolean {
  return frame.terms
    .slice(Math.max(0, from - 1), to + 1)
    .some((term) => means(term, 'this', 'now', 'today'));
}

function mayStandBefore(term: Term): boolean {
  if (term.kind === 'mark') return true;
  return (
    !isMeasure(term) &&
    means(term, 'filler', 'forgot', 'to-say', 'self', 'from', 'of', 'place', 'article', 'link')
  );
}
