import { isDeed, isLabel } from '../moods/clause-kinds.ts';
import { type Frame, frameOf, isMeasure, isName } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { Statement } from '../statement.ts';
import { questionsOf, readAnswer } from './read-answer.ts';

/** `the buckets, sorry was on the phone`: the first clause names what was asked for, and the rest tells nothing. */
export function answerAndChatter(frame: Frame): readonly Statement[] | null {
  if (questionsOf(frame).length === 0) return null;
  const { context, lexicon, folded, terms, places } = frame;
  const [first, next] = frame.clauses.filter(({ from, to }) => to > from);
  if (!first || !next || first.from > 0 || !places.hasWhere(isName, 0, first.to)) return null;
  if (places.hasWhere(isMoreThanChatter, next.from, terms.length)) return null;
  const answer = readAnswer(frameOf(context, lexicon, folded, terms.slice(0, first.to)));
  const isAnswered = answer?.every((one) => one.kind === 'answered' && one.drafts.length > 0);
  return isAnswered ? answer : null;
}

function isMoreThanChatter(term: Term): boolean {
  if (term.kind === 'stop') return term.cut === 'question';
  if (isName(term) || isMeasure(term) || isLabel(term)) return true;
  if (isDeed(term) && !means(term, 'link', 'filler')) return true;
  return means(
    term,
    'not',
    'did-not',
    'no',
    'said-no',
    'yes',
    'except',
    'or',
    'other-one',
    'maybe',
    'meant',
    'rather',
    'condition',
    'intention',
    'done',
    'did',
    'all',
    'both',
  );
}
