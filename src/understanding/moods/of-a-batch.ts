import { unitIs } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  isMeasure,
  isVolumeTerm,
  namesIn,
} from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { Marker } from './hearsay.ts';

/**
 * `mixed 60 l at 1.6, put 30 in the bench`, `20 ml A and 20 ml B into 60 l, poured 40 into the bench`: what was mixed
 * beforehand is in no system; of it only what was poured counts.
 */
export function ofBatch(frame: Frame, clause: Clause, mark: Marker): void {
  if (!isBatch(frame, clause)) return;
  const poured = pouredAfter(frame, clause);
  if (poured === null) return;
  let first = frame.clauseOf[clause.from]!;
  while (first > 0 && isDoseAlone(frame, frame.clauses[first - 1]!)) first--;
  mark(frame.clauses[first]!.from, poured.from, 'not-a-reading');
}

/** What was emptied is what the litres are for. */
const ofNewSolution = ['empty-out', 'changed-solution', 'change', 'refill', 'fresh'] as const;

/** Litres of their own, mixed or with something put into them, and no system. */
function isBatch(frame: Frame, clause: Clause): boolean {
  if (namesIn(frame, clause).length > 0) return false;
  const litres = frame.places.nextWhere(isLitres, clause.from);
  if (litres >= clause.to) return false;
  if (clauseHas(frame, { from: 0, to: clause.to }, ...ofNewSolution)) return false;
  if (clauseHas(frame, clause, 'mixed')) return true;
  const leads = means(frame.terms[litres - 1], 'place') && !means(frame.terms[litres - 1], 'from');
  return leads && frame.places.hasWhere(isMillilitres, clause.from, litres);
}

/** The clause behind it that tells how much of it went into which system, and what it says before is of the batch. */
function pouredAfter(frame: Frame, clause: Clause): Clause | null {
  for (let c = frame.clauseOf[clause.from]! + 1; c < frame.clauses.length; c++) {
    const next = frame.clauses[c]!;
    if (next.sentence !== clause.sentence) return null;
    const isNamed = namesIn(frame, next).length > 0;
    const isTold = frame.places.hasWhere(isMeasure, next.from, next.to);
    if (!isNamed && (!isTold || isDoseAlone(frame, next))) continue;
    const isPoured = clauseHas(frame, next, 'add', 'top-up', 'fill', 'goes-in', 'add-plainly');
    return isNamed && isTold && isPoured ? next : null;
  }
  return null;
}

/** `20 ml A`: nothing but what went in. */
function isDoseAlone(frame: Frame, clause: Clause): boolean {
  return (
    namesIn(frame, clause).length === 0 &&
    frame.places.hasWhere(isMillilitres, clause.from, clause.to) &&
    !frame.places.hasWhere(isLitres, clause.from, clause.to)
  );
}

function isLitres(term: Term): boolean {
  return isVolumeTerm(term) && !isMillilitres(term);
}

function isMillilitres(term: Term): boolean {
  return isMeasure(term) && unitIs(term.measure, 'ml', 'cl');
}
