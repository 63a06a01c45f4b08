import type { Fact } from '../fact.ts';
import type { Frame } from '../reading/frame.ts';
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
  for (let i = clause.from; i < fact.at; i++) {
    const term = frame.terms[i]!;
    if (isStranger(frame, term) || isCrop(term)) return term.text;
    if (term.kind === 'measure') break;
  }
  for (let i = fact.to + 1; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if ((isStranger(frame, term) || isCrop(term)) && means(frame.terms[i - 1], 'place', 'article'))
      return term.text;
  }
  return null;
}

/** Neither in the vocabulary nor an ordinary word of the language. */
function isStranger(frame: Frame, term: Term): boolean {
  return isUnknown(term) && !frame.lexicon.own.common.has(term.text);
}
