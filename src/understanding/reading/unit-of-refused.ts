import { isBare } from '../numbers/quantity-of-measure.ts';
import { measureTerm } from './make-term.ts';
import { means, type Term } from './term.ts';

/** `took 9 not 7 min`, `12 instead of 10 litres`: the unit said with the number that is refused is of the one that holds. */
export function withUnitsOfRefused(terms: readonly Term[]): readonly Term[] {
  if (!terms.some(isRefusing)) return terms;
  return terms.map((term, i) => {
    const refused = terms[i + 2];
    if (term.kind !== 'measure' || refused?.kind !== 'measure' || !isRefusing(terms[i + 1]!))
      return term;
    const { unit, decimals } = refused.measure;
    if (unit === null || !isBare(term.measure) || decimals !== term.measure.decimals) return term;
    return measureTerm(term, { ...term.measure, unit });
  });
}

function isRefusing(term: Term): boolean {
  return means(term, 'not', 'instead-of') && !means(term, 'did-not', 'link');
}
