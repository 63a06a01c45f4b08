import { measureTerm } from './make-term.ts';
import { type MeasureTerm, means, type Term } from './term.ts';

/** `2 cans, the second one only half full`: of the vessels told before, one was not full. */
export function countOneInPart(terms: readonly Term[]): readonly Term[] {
  const counted = [...terms];
  for (let i = 1; i < counted.length; i++) {
    const share = counted[i]!;
    if (share.kind !== 'measure' || !share.measure.share || !means(counted[i + 1], 'full'))
      continue;
    const cut = startOfClause(counted, i) - 1;
    const end = i + 2;
    const isWhole = end >= counted.length || counted[end]!.kind === 'stop';
    const of = cut > 0 && isWhole ? vesselsBefore(counted, cut) : null;
    if (of === null || !counted.slice(cut + 1, i).every(isOfOne)) continue;
    if (!counted.slice(cut + 1, i).some(isOrdinal)) continue;
    const { term, at } = of;
    const value = term.measure.values[0]! - 1 + share.measure.values[0]!;
    counted[at] = measureTerm(term, { ...term.measure, values: [value], whole: false });
    counted.splice(cut, end - cut);
    i = cut;
  }
  return counted;
}

function startOfClause(terms: readonly Term[], i: number): number {
  let from = i;
  while (from > 0 && terms[from - 1]!.kind !== 'stop') from--;
  return from;
}

/** The one whole number of containers in the clause that a cut closes. */
function vesselsBefore(
  terms: readonly Term[],
  cut: number,
): { readonly term: MeasureTerm; readonly at: number } | null {
  const from = startOfClause(terms, cut);
  const measures = terms
    .slice(from, cut)
    .flatMap((term, n) => (term.kind === 'measure' ? [{ term, at: from + n }] : []));
  const [only] = measures;
  if (!only || measures.length > 1) return null;
  const { unit, whole, values } = only.term.measure;
  return unit !== null && 'litres' in unit && whole && values[0]! >= 1 ? only : null;
}

function isOrdinal(term: Term): boolean {
  return term.kind === 'word' && (term.word.ordinal !== null || means(term, 'last'));
}

/** `the second one only`, `die zweite nur`. */
function isOfOne(term: Term): boolean {
  const isCount =
    term.kind === 'measure' && term.measure.values[0] === 1 && term.measure.unit === null;
  return (
    isOrdinal(term) ||
    isCount ||
    (term.kind === 'word' && term.word.number === 1) ||
    means(term, 'article', 'filler', 'link', 'vessel', 'about')
  );
}
