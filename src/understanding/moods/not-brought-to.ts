import { unitIs } from '../numbers/quantity-of-measure.ts';
import { type Clause, type Frame, isMeasure } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import { isLabel } from './clause-kinds.ts';

/** `couldn't get the dwc under ph 6`: a value that was not reached is no reading, and no work that failed. Where it stands. */
export function notBroughtTo(frame: Frame, clause: Clause): number | null {
  const could = frame.places.within(isInability, clause.from, clause.to)[0];
  if (could === undefined) return null;
  for (let i = could + 1; i < clause.to; i++) {
    if (!means(frame.terms[i], 'to', 'beyond', 'below')) continue;
    const value = readingFrom(frame, clause, i);
    if (value !== null) return value;
  }
  return null;
}

function isInability(term: Term): boolean {
  return means(term, 'could-not', 'could');
}

/** A value that is read, and no depth or amount. */
function readingFrom(frame: Frame, clause: Clause, lead: number): number | null {
  let at = lead + 1;
  while (at < clause.to && !isMeasure(frame.terms[at])) {
    const term = frame.terms[at];
    if (!isLabel(term) && !means(term, 'article', 'link', 'about', 'filler')) return null;
    at++;
  }
  const term = frame.terms[at];
  if (at >= clause.to || !isMeasure(term)) return null;
  if (unitIs(term.measure, 'celsius', 'fahrenheit', 'degree', 'ms-cm', 'us-cm', 'ppm', 'cf'))
    return at;
  const isBare =
    term.measure.unit === null && frame.places.hasWhere(isLabelTerm, clause.from, clause.to);
  return isBare ? at : null;
}

function isLabelTerm(term: Term): boolean {
  return isLabel(term) && !means(term, 'level');
}
