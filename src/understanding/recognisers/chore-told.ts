import { type Clause, clauseHas, type Frame, isShare, takeRange } from '../reading/frame.ts';
import { isWeekday, means, type Term } from '../reading/term.ts';
import { isSaidAsNamed, isSaidAsPresent } from './chores.ts';

/** Whether a clause that names a chore tells that it was done, where no word of its own says `done`. */
export function isToldDone(frame: Frame, clause: Clause, chore: string): boolean {
  if (clauseHas(frame, clause, 'intention')) return false;
  if (clauseHas(frame, clause, 'is-it') && !isStateNow(frame, clause, chore)) return false;
  return !isPlanned(frame, clause, chore) && !isSaidAsPresent(frame, chore, clause);
}

/** `the tomatoes are tied up`; `are the tomatoes tied up` asks, `are to be tied up`, `aren't tied up` deny it. */
function isStateNow(frame: Frame, clause: Clause, chore: string): boolean {
  const isOpen = means(frame.terms[clause.from], 'is-it') || clause.closes === 'question';
  const isDenied = clauseHas(
    frame,
    clause,
    'not',
    'no',
    'to',
    'need',
    'due',
    'hindered',
    'could-not',
  );
  return !isOpen && !isDenied && !isSaidAsNamed(frame, chore, clause);
}

/** A chore by its name, with a weekday or before it somebody else: who does it, and when. */
function isPlanned(frame: Frame, clause: Clause, chore: string): boolean {
  const isOfDay = frame.places.hasWhere(isWeekday, clause.from, clause.to);
  const isOfAnother = means(frame.terms[clause.from], 'member', 'third-person');
  return (isOfDay || isOfAnother) && isSaidAsNamed(frame, chore, clause);
}

/** `tied up some of the tomatoes`, `shoots pinched out, but only half`: not done, as it was not all of it. */
export function isInPart(frame: Frame, c: number): boolean {
  return saysPart(frame, frame.clauses[c]!) || isPartAdded(frame, c + 1);
}

/** So that it is kept as a note, and nothing of it is asked as a value. */
export function leaveInPart(frame: Frame, c: number): void {
  const last = frame.clauses[isPartAdded(frame, c + 1) ? c + 1 : c]!;
  takeRange(frame, frame.clauses[c]!.from, last.to);
}

/** The clause after it says of nothing else how much of it was done. */
function isPartAdded(frame: Frame, c: number): boolean {
  const clause = frame.clauses[c];
  if (clause?.opens !== 'comma' && clause?.opens !== 'but') return false;
  if (!saysPart(frame, clause)) return false;
  return frame.terms.slice(clause.from, clause.to).every(isOfPart);
}

function saysPart(frame: Frame, clause: Clause): boolean {
  return (
    clauseHas(frame, clause, 'about') || frame.places.hasWhere(isShare, clause.from, clause.to)
  );
}

function isOfPart(term: Term): boolean {
  return (
    isShare(term) ||
    means(term, 'about', 'filler', 'article', 'of', 'of-it', 'pronoun', 'link', 'done')
  );
}
