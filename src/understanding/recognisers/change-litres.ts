import { isLabel } from '../moods/clause-kinds.ts';
import { leftInVessel } from '../moods/left-in-vessel.ts';
import { isBare, isVolume } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  isVolumeTerm,
  measureOf,
  measuresIn,
} from '../reading/frame.ts';
import { isUnknown, means } from '../reading/term.ts';

interface Litres {
  readonly at: number | null;
  readonly last: number;
}

/** The litres of the change: in its own clause, or in one from `from` on that goes on about nothing else. */
export function litresOf(frame: Frame, c: number, verb: number, from = c + 1): Litres {
  const clause = frame.clauses[c]!;
  const own = volumesIn(frame, clause);
  if (own.length > 0) return { at: own.at(0)!, last: c };
  for (let d = from; d < frame.clauses.length && d <= from + 1; d++) {
    const next = frame.clauses[d]!;
    if (next.from === next.to) continue;
    if (next.sentence !== clause.sentence && !goesOnAboutVolume(frame, next)) break;
    if (!goesOnAboutVolume(frame, next)) break;
    const found = volumesIn(frame, next);
    if (found.length > 0) return { at: found[0]!, last: d };
    if (means(frame.terms[verb], 'empty-out')) continue;
    break;
  }
  const refilled = frame.clauses[from];
  const isRefill =
    refilled &&
    means(frame.terms[verb], 'empty-out') &&
    clauseHas(frame, refilled, 'refill', 'fill');
  return { at: null, last: isRefill ? from : c };
}

function volumesIn(frame: Frame, clause: Clause): number[] {
  const inVessel = leftInVessel(frame, clause);
  const volumes = measuresIn(frame, clause).filter(
    (i) =>
      isVolume(measureOf(frame, i)) &&
      !means(frame.terms[i + 1], 'left-over', 'below') &&
      !inVessel.includes(i),
  );
  return volumes.length > 0 ? volumes : bareAfterRefill(frame, clause);
}

/** `refilled 140`, `refilled with 140`: straight after the verb, and the last of the clause. */
function bareAfterRefill(frame: Frame, clause: Clause): number[] {
  return measuresIn(frame, clause).filter((i) => {
    const before = frame.terms[means(frame.terms[i - 1], 'with', 'about') ? i - 2 : i - 1];
    const isLast = i + 1 === clause.to || means(frame.terms[i + 1], 'fresh');
    return isBare(measureOf(frame, i)) && isLast && means(before, 'refill') && i > clause.from;
  });
}

function goesOnAboutVolume(frame: Frame, clause: Clause): boolean {
  let isTold = false;
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    isTold ||=
      isVolumeTerm(term) &&
      (i === clause.from || clauseHas(frame, clause, 'refill', 'fill', 'mixed'));
    // `mixed 500 l new at ec 2.2`, `110 l at ec 1.2`: what else is told of it comes after its litres.
    if (isTold && isLabel(term) && !means(term, 'level')) return true;
    if (isLabel(term) || isUnknown(term) || term.kind === 'name') return false;
    if (means(term, 'top-up', 'add') && !means(term, 'link')) return false;
    if (term.kind === 'word' && term.word.product !== null) return false;
  }
  return true;
}
