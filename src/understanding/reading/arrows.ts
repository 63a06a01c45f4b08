import { isBare, unitIs } from '../numbers/quantity-of-measure.ts';
import { isMeasure } from './frame.ts';
import { markTerm } from './make-term.ts';
import { type Term, type WordTerm } from './term.ts';

/**
 * `ph 6.9>6.3 with 25 ml down`: beside an amount of millilitres the sign leads from what was read before to what was
 * read after. Without one it may as well say that the first is more than the second.
 */
export function withArrows(terms: readonly Term[]): readonly Term[] {
  if (!terms.some(isSign) || !terms.some(isMillilitres)) return terms;
  return terms.map((term, i): Term => {
    if (!isSign(term) || !isValue(terms[i - 1]) || !isValue(terms[i + 1])) return term;
    return markTerm(term, '→');
  });
}

function isSign(term: Term): term is WordTerm {
  return term.kind === 'word' && term.text === '>';
}

function isMillilitres(term: Term): boolean {
  return isMeasure(term) && unitIs(term.measure, 'ml');
}

/** With decimals, so no count. */
function isValue(term: Term | undefined): boolean {
  return isMeasure(term) && isBare(term.measure) && term.measure.decimals > 0;
}
