import { type Clause, clauseHas, type Frame } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import { isDeed, leansOnPrevious } from './clause-kinds.ts';
import { saysSender } from './says-sender.ts';

/** `told Olli to put 5 l in the jars`: where what somebody was told to do begins; nobody says that it was done. */
export function orderIn(frame: Frame, clause: Clause): number | null {
  const at = frame.places.within(isOrder, clause.from, clause.to)[0];
  if (at === undefined) return null;
  const isLed = isSomebody(frame, at + 1);
  if (!isLed && !isSomebody(frame, at - 1)) return null;
  const rest = { from: isLed ? at + 2 : at + 1, to: clause.to };
  let deed = rest.from;
  while (
    means(frame.terms[deed], 'to', 'place', 'filler', 'intention') &&
    !isDeed(frame.terms[deed])
  )
    deed++;
  const isToDo = deed < clause.to && isDeed(frame.terms[deed]);
  // `Tom gebeten 5 l in die Gläser zu kippen`: the verb ends the clause.
  const isLast =
    isDeed(frame.terms[clause.to - 1]) && means(frame.terms[clause.to - 2], 'to', 'place');
  return (isToDo || isLast) && !clauseHas(frame, rest, 'self') ? at : null;
}

/** `… and 10 l in the bench`: what leans on it was ordered as well. */
export function endOfOrder(frame: Frame, clause: Clause): number {
  return endOfLeaning(frame, clause, 'and');
}

/** `list for Olli: 5 l in the jars, 10 l in the bench`: a message goes on over commas. */
export function endOfMessage(frame: Frame, clause: Clause): number {
  return endOfLeaning(frame, clause, 'and', 'comma');
}

function endOfLeaning(frame: Frame, clause: Clause, ...cuts: readonly Clause['opens'][]): number {
  let c = frame.clauseOf[clause.from]!;
  for (;;) {
    const next = frame.clauses[c + 1];
    if (!next || !cuts.includes(next.opens) || !leansOnPrevious(frame, next))
      return frame.clauses[c]!.to;
    if (clauseHas(frame, next, 'orders', 'message')) return frame.clauses[c]!.to;
    c++;
  }
}

function isOrder(term: Term): boolean {
  return means(term, 'orders');
}

function isSomebody(frame: Frame, i: number): boolean {
  const term = frame.terms[i];
  if (means(term, 'member')) return !saysSender(frame, term);
  return means(term, 'third-person', 'another-person', 'hearsay');
}
