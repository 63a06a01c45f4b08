import { type Clause, type Frame, isVolumeTerm } from '../reading/frame.ts';
import { isMark, means, type Term } from '../reading/term.ts';
import { hasPastDeed, isLabel } from './clause-kinds.ts';
import type { Marker } from './hearsay.ts';

/**
 * `next: 15 ml ph down in the buckets`, `als nächstes 15 ml`: an amount with no word of its having been given is
 * what is meant to be done; behind something told it may be the next that was done, and is asked about.
 */
export function meanNext(frame: Frame, clause: Clause, mark: Marker): void {
  const at = opensWithNext(frame, clause);
  if (at === null || hasPastDeed(frame, clause.from, clause.to)) return;
  const { places } = frame;
  if (!places.hasWhere(isVolumeTerm, at, clause.to) || places.hasWhere(isLabel, at, clause.to))
    return;
  mark(clause.from, clause.to, clause.from === 0 ? 'intention' : 'queried');
}

function opensWithNext({ terms }: Frame, { from, to }: Clause): number | null {
  let at = from;
  while (at < to && isBeforeNext(terms[at]!)) at++;
  return at < to && means(terms[at], 'up-next') ? at : null;
}

function isBeforeNext(term: Term): boolean {
  return (
    !means(term, 'up-next') && (means(term, 'filler', 'greeting', 'now') || isMark(term, '-', ':'))
  );
}
