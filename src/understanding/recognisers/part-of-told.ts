import type { Fact } from '../fact.ts';
import {
  type Clause,
  clauseToldBefore,
  type Frame,
  isShare,
  namesIn,
  take,
} from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';

/**
 * `bench took 3 cans, the tower half`: behind water put in, a part alone may be of the vessel, of as much as that was,
 * or of the system. No level is read from it, how much went in is asked.
 */
export function recognisePartsOfTold(frame: Frame, told: readonly Fact[]): Fact[] {
  return frame.clauses.flatMap((clause): Fact[] => {
    const at = partAlone(frame, clause);
    if (at === null || !followsTopUp(frame, clause, told)) return [];
    take(frame, at);
    return [
      {
        quantity: 'top-up',
        amount: { kind: 'missing' },
        at,
        from: at,
        to: at,
        because: 'a part of what was told before',
      },
    ];
  });
}

/** The part, where a clause tells nothing but it and its system. */
function partAlone(frame: Frame, clause: Clause): number | null {
  const parts = frame.places.within(isShare, clause.from, clause.to);
  const [at] = parts;
  if (at === undefined || parts.length > 1 || frame.taken[at]) return null;
  if (namesIn(frame, clause).length !== 1) return null;
  return frame.places.hasWhere(isNoPartOfList, clause.from, clause.to) ? null : at;
}

/** `half full` says of what. */
function isNoPartOfList(term: Term): boolean {
  if (means(term, 'full', 'empty', 'left-over', 'brim')) return true;
  return !(
    term.kind === 'name' ||
    isShare(term) ||
    means(term, 'article', 'place', 'filler', 'about')
  );
}

/** Straight behind it in the same breath. */
function followsTopUp(frame: Frame, clause: Clause, told: readonly Fact[]): boolean {
  const before = clauseToldBefore(frame, clause);
  if (before?.sentence !== clause.sentence) return false;
  const last = told.findLast(({ at }) => at >= before.from && at < before.to);
  return last?.quantity === 'top-up';
}
