import { gramsFactor, isVolume } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isMeasure,
  measureOf,
} from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';

/** `gave the bench 2 cans more than usual`: how much it was has still to be told. */
export function isOnlyHeldAgainst(frame: Frame, clause: Clause): boolean {
  return (
    inClause(frame, clause, (term, i) => isMeasure(term) && isHeldAgainst(frame, clause, i))
      .length > 0
  );
}

/**
 * `8 l more than usual`, `2 cans less`, `5 l too much`, `3 Liter mehr gegeben als gestern`: how far an amount is from another one
 * that nobody tells, and not how much it was.
 */
export function isHeldAgainst(frame: Frame, clause: Clause, i: number): boolean {
  const measure = measureOf(frame, i);
  if (!isVolume(measure) && gramsFactor(measure) === null) return false;
  if (saysMore(frame, i) && clauseHas(frame, { from: i, to: clause.to }, 'than')) return true;
  let word = i + 1;
  while (word < clause.to && isOfAmount(frame.terms[word]!)) word++;
  if (word >= clause.to) return false;
  const said = frame.terms[word];
  if (isMeasure(frame.terms[word + 1])) return false;
  if (means(said, 'compared', 'fewer', 'too-much', 'too-little')) return true;
  return means(said, 'another') && clauseHas(frame, { from: word, to: clause.to }, 'than');
}

/** `2 more cans`: between the number and what it counts. */
function saysMore({ terms, lexicon }: Frame, i: number): boolean {
  const { another } = lexicon.own.vocabulary.words;
  return terms[i]!.text.split(' ').some((word) => another.includes(word));
}

/** `8 l of water more than usual`: what it is an amount of. */
function isOfAmount(term: Term): boolean {
  return means(term, 'of', 'solution') && !means(term, 'another');
}
