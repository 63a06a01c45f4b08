import { isBare } from '../numbers/quantity-of-measure.ts';
import { measureTerm } from './make-term.ts';
import { type MeasureTerm, means, type Term } from './term.ts';

/** `nft 5.9 1.3, strike the 1.3, pen was wet, 1.2`: a value said again to be struck out, and the one in its place. */
export function withoutStruck(terms: readonly Term[]): readonly Term[] {
  const at = terms.findIndex((term) => means(term, 'strike-the'));
  const struck = terms[at + 1];
  if (at < 1 || struck?.kind !== 'measure' || terms[at - 1]?.kind !== 'stop') return terms;
  const value = struck.measure.values[0];
  const said = terms.slice(0, at).findLastIndex((term) => isOf(term, value));
  const [first, better] = [terms[said], terms.findIndex((_, i) => i > at + 1 && isAlone(terms, i))];
  if (first?.kind !== 'measure') return terms;
  // Nothing takes its place: it is left out.
  if (better < 0)
    return [...terms.slice(0, said), ...terms.slice(said + 1, at - 1), ...terms.slice(at + 2)];
  const { measure } = terms[better] as MeasureTerm;
  const right = measureTerm(first, { ...measure, unit: measure.unit ?? first.measure.unit });
  return [
    ...terms.slice(0, said),
    right,
    ...terms.slice(said + 1, at - 1),
    ...terms.slice(better + 1),
  ];
}

function isOf(term: Term, value: number | undefined): boolean {
  return term.kind === 'measure' && term.measure.values[0] === value;
}

/** A bare number that is all its clause says. */
function isAlone(terms: readonly Term[], i: number): boolean {
  const [term, before, after] = [terms[i]!, terms[i - 1], terms[i + 1]];
  const isCut = before?.kind === 'stop' && (after === undefined || after.kind === 'stop');
  return isCut && term.kind === 'measure' && isBare(term.measure);
}
