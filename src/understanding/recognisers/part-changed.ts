import type { Fact } from '../fact.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isName,
  isVolumeTerm,
  take,
} from '../reading/frame.ts';
import { means } from '../reading/term.ts';

/**
 * `swapped a third of the water in the buckets`, `took 20 l out of the bench and replaced it`: of a solution only a
 * part. No quantity of the logbook says that, and emptied and mixed new it was not; so a note of it is offered.
 */
export function partChanged(frame: Frame, c: number): Fact | null {
  const clause = frame.clauses[c]!;
  const at = shareOfIt(frame, clause) ?? takenOutBefore(frame, c);
  if (at === null) return null;
  for (let i = clause.from; i < clause.to; i++)
    if (
      frame.terms[i]!.kind === 'measure' ||
      means(frame.terms[i], 'change', 'refill', 'fresh', 'fill')
    )
      take(frame, i);
  return {
    quantity: 'note',
    amount: { kind: 'value', value: 1 },
    at,
    from: clause.from,
    to: clause.to - 1,
    note: frame.folded.original.trim(),
    doubt: { kind: 'unclear' },
    because: 'part of a solution changed',
  };
}

/** `a third of the water`, `half the tank`, `ein Drittel vom Wasser`, with a system or what holds its water. */
function shareOfIt(frame: Frame, clause: Clause): number | null {
  if (!clauseHas(frame, clause, 'change')) return null;
  const isWhat =
    clauseHas(frame, clause, 'water', 'solution', 'reservoir') || hasName(frame, clause);
  const [share] = inClause(frame, clause, (term, i) => {
    const isShare = term.kind === 'measure' && term.measure.share && term.measure.unit === null;
    return isShare && !frame.taken[i] && term.measure.values[0]! < 1;
  });
  return isWhat ? (share ?? null) : null;
}

/** The clause before leads water from a system, and this one tells of no other. */
function takenOutBefore(frame: Frame, c: number): number | null {
  const [before, clause] = [frame.clauses[c - 1], frame.clauses[c]!];
  if (before?.sentence !== clause.sentence || hasName(frame, clause)) return null;
  if (!clauseHas(frame, clause, 'change', 'refill', 'fresh', 'fill')) return null;
  if (frame.places.hasWhere(isVolumeTerm, clause.from, clause.to)) return null;
  const isOut =
    frame.places.hasWhere(isVolumeTerm, before.from, before.to) &&
    hasName(frame, before) &&
    clauseHas(frame, before, 'from') &&
    !clauseHas(frame, before, 'top-up', 'fill', 'refill', 'pick');
  return isOut ? clause.from : null;
}

function hasName(frame: Frame, { from, to }: Clause): boolean {
  return frame.places.hasWhere(isName, from, to);
}
