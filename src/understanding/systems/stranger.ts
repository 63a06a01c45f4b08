import type { Fact } from '../fact.ts';
import { type Frame, isMeasure } from '../reading/frame.ts';
import type { Lexicon } from '../reading/lexicon.ts';
import { isCrop, isUnknown, means, type Term } from '../reading/term.ts';
import type { Mention } from './mention.ts';

/** A word at the clause's start, before its values, that is no word of the vocabulary: perhaps a name. */
export function strangerBefore(
  frame: Frame,
  fact: Fact,
  before: Mention | undefined,
): string | null {
  const clause = frame.clauses[frame.clauseOf[fact.at]!]!;
  if (before && before.lastClause === frame.clauseOf[fact.at]) return null;
  const { places, terms, lexicon } = frame;
  const { isStranger, isPlacedStranger } = testsFor(lexicon);
  const first = places.nextWhere(isStranger, clause.from);
  if (first < Math.min(fact.at, places.nextWhere(isMeasure, clause.from)))
    return terms[first]!.text;
  const placed = places.nextWhere(isPlacedStranger, fact.to + 1);
  return placed < clause.to ? terms[placed]!.text : null;
}

interface Tests {
  /** A crop, or neither in the vocabulary nor an ordinary word of the language. */
  readonly isStranger: (term: Term) => boolean;
  /** The same, where a name can stand. */
  readonly isPlacedStranger: (term: Term, i: number, terms: readonly Term[]) => boolean;
}

const tests = new WeakMap<Lexicon, Tests>();

function testsFor(lexicon: Lexicon): Tests {
  const known = tests.get(lexicon);
  if (known) return known;
  const isStranger = (term: Term) =>
    isCrop(term) || (isUnknown(term) && !lexicon.own.common.has(term.text));
  const made: Tests = {
    isStranger,
    isPlacedStranger: (term, i, terms) =>
      isStranger(term) && means(terms[i - 1], 'place', 'article'),
  };
  tests.set(lexicon, made);
  return made;
}
