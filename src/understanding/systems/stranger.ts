import type { Fact } from '../fact.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import { type Clause, type Frame, isMeasure } from '../reading/frame.ts';
import type { Lexicon } from '../reading/lexicon.ts';
import { isCrop, isUnknown, means, type Term } from '../reading/term.ts';
import type { Mention } from './mention.ts';

/** A word at the clause's start, before its values, that is no word of the vocabulary, or a planter: perhaps a name. */
export function strangerBefore(
  frame: Frame,
  fact: Fact,
  before: Mention | undefined,
): string | null {
  const clause = frame.clauses[frame.clauseOf[fact.at]!]!;
  if (before && before.lastClause === frame.clauseOf[fact.at]) return null;
  const { places, terms, lexicon } = frame;
  const planter = planterIn(frame, clause);
  if (planter !== null && planter < fact.at) {
    const isNumbered = isNumberOfPlanter(frame, clause, planter + 1);
    const first = isKindOfPlanter(terms[planter - 1]) ? planter - 1 : planter;
    const name = terms.slice(first, isNumbered ? planter + 2 : planter + 1);
    return name.map(({ text }) => text).join(' ');
  }
  const { isStranger, isPlacedStranger } = testsFor(lexicon);
  const first = places.nextWhere(isStranger, clause.from);
  if (first < Math.min(fact.at, places.nextWhere(isMeasure, clause.from)))
    return terms[first]!.text;
  const placed = places.nextWhere(isPlacedStranger, fact.to + 1);
  return placed < clause.to ? terms[placed]!.text : null;
}

/** `tub ph 6`, `the blue rack is at ph 5.9`: a planter that opens the clause, and what is told of it. */
function planterIn({ places, terms, lexicon }: Frame, clause: Clause): number | null {
  if (!places.has('planter', clause.from, clause.to)) return null;
  const opens = means(terms[clause.from], 'article') ? clause.from + 1 : clause.from;
  const at = isKindOfPlanter(terms[opens]) ? opens + 1 : opens;
  const term = terms[at];
  if (at >= clause.to || !means(term, 'planter') || lexicon.containers.has(term!.text)) return null;
  return tellsOfIt(terms[at + 1]) || isNumberOfPlanter({ terms }, clause, at + 1) ? at : null;
}

/** `blue`, `small`: which of the planters, by a word of no other use. */
function isKindOfPlanter(term: Term | undefined): boolean {
  return !means(term, 'planter') && (isUnknown(term) || means(term, 'counted', 'size'));
}

/** `tub 3 ph 6`: which of the planters, where it is told of behind it. */
export function isNumberOfPlanter(frame: Pick<Frame, 'terms'>, clause: Clause, i: number): boolean {
  const [number, next] = [frame.terms[i], frame.terms[i + 1]];
  if (i + 1 >= clause.to || !isMeasure(number) || !means(frame.terms[i - 1], 'planter'))
    return false;
  const { unit, whole, share } = number.measure;
  return unit === null && whole && !share && tellsOfIt(next);
}

function tellsOfIt(term: Term | undefined): boolean {
  return isLabel(term) || means(term, 'link', 'has', 'add', 'top-up', 'level');
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
