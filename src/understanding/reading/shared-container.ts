import type { Lexicon } from './lexicon.ts';
import { type MeasureTerm, means, type Term } from './term.ts';

/** More than so many cans go into nothing at a time. */
const mostContainers = 20;

/** `bench 3 cans, buckets 2, gutters one`: counts that stand for the container told before them. */
export function shareContainers(terms: readonly Term[], lexicon: Lexicon): readonly Term[] {
  const shared: Term[] = [];
  for (const [i, term] of terms.entries()) {
    const before = shared[i - 3];
    const isListed =
      shared[i - 1]?.kind === 'name' &&
      isCut(shared[i - 2]) &&
      isCut(terms[i + 1] ?? null) &&
      shared[i - 4]?.kind === 'name';
    const many = isListed && isOfContainers(before) ? asMany(term, before, lexicon) : null;
    shared.push(many ?? term);
  }
  return shared;
}

function isCut(term: Term | null | undefined): boolean {
  return term === null || term?.kind === 'stop';
}

function isOfContainers(term: Term | undefined): term is MeasureTerm {
  return term?.kind === 'measure' && term.measure.unit !== null && 'litres' in term.measure.unit;
}

function asMany(term: Term, like: MeasureTerm, lexicon: Lexicon): MeasureTerm | null {
  const count = countOf(term, lexicon);
  if (count === null || count > mostContainers) return null;
  const { from, to, text, glued } = term;
  const measure = {
    ...like.measure,
    values: [count],
    written: text,
    whole: true,
    share: false,
    decimals: 0,
  };
  return { kind: 'measure', from, to, text, glued, measure };
}

function countOf(term: Term, lexicon: Lexicon): number | null {
  if (term.kind === 'word') {
    const number = lexicon.own.phrases.get([term.text])?.number ?? null;
    return number ?? (means(term, 'indefinite') ? 1 : null);
  }
  if (term.kind !== 'measure' || term.measure.unit !== null) return null;
  // `a half`, `eine halbe`: with its article it is of a thing, and no level.
  const isPart = term.measure.share && term.text.includes(' ');
  return (term.measure.whole || isPart) && term.measure.values.length === 1
    ? term.measure.values[0]!
    : null;
}
