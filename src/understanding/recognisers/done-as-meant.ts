import type { Mood } from '../moods/mood.ts';
import { type Clause, clauseHas, type Frame, isVolumeTerm } from '../reading/frame.ts';
import type { WorkNamed } from '../statement.ts';
import { workNamed } from './work-named.ts';

/**
 * `must top up the bench. done`: the work that was said to be still to do, right before the clause at this index, which
 * names none; `unknown`: something was, and nobody knows which of the work that is. Null: nothing was.
 */
export function workJustMeant(
  frame: Frame,
  c: number,
  moods: readonly (Mood | null)[],
): WorkNamed | 'unknown' | null {
  const clauses = clausesOfIntention(frame, c, moods);
  if (clauses.length === 0) return null;
  // `bench tonight, all done`: what is to come stays open.
  if (clauses.some((clause) => clauseHas(frame, clause, 'tonight', 'tomorrow'))) return null;
  if (clauses.some(({ from, to }) => !moods.slice(from, to).includes('intention')))
    return 'unknown';
  const work = clauses.flatMap((clause) => meantIn(frame, clause) ?? []);
  const [chore] = work.flatMap((each) => each.chore ?? []);
  if (chore !== undefined) return work.length === 1 ? work[0]! : 'unknown';
  const duties = [...new Set(work.flatMap(({ duty }) => duty ?? []))];
  if (duties.length !== 1) return 'unknown';
  const systems = [...new Set(work.flatMap((each) => each.systems ?? []))];
  return { systems: systems.length > 0 ? systems : null, duty: duties[0]!, chore: null };
}

/** The clauses before one that say what is only meant to be done, as far back as they follow one another. */
function clausesOfIntention(
  frame: Frame,
  c: number,
  moods: readonly (Mood | null)[],
): readonly Clause[] {
  const { clauses } = frame;
  let first = c;
  while (first > 0) {
    const { from, to } = clauses[first - 1]!;
    // Where nothing is said, as between a full stop and an `and`, nothing else is said either.
    if (from < to && !isOfIntention(frame, clauses[first - 1]!, moods)) break;
    first -= 1;
  }
  return clauses.slice(first, c).filter(({ from, to }) => from < to);
}

/** `put 10 l in the bench` is a top-up by its amount. */
function meantIn(frame: Frame, clause: Clause): WorkNamed | null {
  const work = workNamed(frame, clause);
  if (work?.duty !== null || work.chore !== null) return work;
  const isWater = frame.places.hasWhere(isVolumeTerm, clause.from, clause.to);
  return isWater ? { ...work, duty: 'top-up' } : work;
}

/** `need to do the jars` may as well ask; `she asked me to put 10 l in` is asked about. */
function isOfIntention(frame: Frame, clause: Clause, moods: readonly (Mood | null)[]): boolean {
  const own = moods.slice(clause.from, clause.to);
  return (
    own.includes('intention') ||
    own.includes('queried') ||
    (own.includes('question') && clauseHas(frame, clause, 'intention', 'due'))
  );
}
