import { isLabel } from '../moods/clause-kinds.ts';
import { readablesOf } from '../numbers/readables-of.ts';
import { type Clause, type Frame, isMeasure, isName, measureOf } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { TakingBack } from '../statement.ts';
import type { Named } from './named.ts';

/**
 * `scrap the 71, thermometer was dry`, `the 20 c is wrong`: one value of what was told before, said again to be struck
 * out. `named`: what the message names beside it.
 */
export function strikeValue(frame: Frame, named: () => Named): TakingBack | null {
  const numbers = frame.places.where(isMeasure);
  const at = numbers[0];
  if (numbers.length !== 1 || at === undefined) return null;
  const strikes = frame.places.where(isStriking);
  const strike = strikes[0];
  if (strike === undefined || strikes.length > 2) return null;
  const own = frame.clauses[frame.clauseOf[at]!]!;
  // `undo that, and log ph 6.0`: what is struck out stands before, and the value is news.
  if (strike < own.from || !onlyStrikes(frame, own)) return null;
  if (!frame.clauses.every((clause) => clause === own || addsNothing(frame, clause))) return null;
  const { system, quantity } = named();
  const given = readablesOf(measureOf(frame, at), frame.context.greenhouse.units, quantity);
  return given.length === 0 ? null : { kind: 'deny', system, quantity, given };
}

function isStriking(term: Term): boolean {
  return means(term, 'undo', 'strike-the', 'untrue');
}

/** The value, and words of striking it out. */
function onlyStrikes(frame: Frame, clause: Clause): boolean {
  const said = frame.terms.slice(clause.from, clause.to);
  return said.every(
    (term) =>
      isMeasure(term) ||
      isName(term) ||
      isStriking(term) ||
      (term.kind === 'mark' && term.text !== '?') ||
      isLabel(term) ||
      means(term, 'article', 'filler', 'link', 'pronoun', 'sorry', 'thanks', 'greeting', 'place') ||
      means(term, 'water', 'said-no', 'self', 'no-wait') ||
      isPlease(term),
  );
}

/** `please` asks for it here, and tells of nothing to be done. */
function isPlease(term: Term): boolean {
  return means(term, 'intention') && !means(term, 'tomorrow');
}

/** Why, or nothing: no system of its own. */
function addsNothing(frame: Frame, clause: Clause): boolean {
  return clause.closes !== 'question' && !frame.places.hasWhere(isName, clause.from, clause.to);
}
