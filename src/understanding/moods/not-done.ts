import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isMeasure,
  namesIn,
} from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import { isDeed, isLabel } from './clause-kinds.ts';

/**
 * `gutters not done, pump was screaming`, `didn't do the jars because the lid is stuck`: a deed that is denied of a
 * system, and what hindered it. Where the denial stands in the clause; null: it is denied without such a reason.
 */
export function notDoneAt(frame: Frame, clause: Clause): number | null {
  const at = deniedAt(frame, clause);
  if (at === null) return null;
  return saysWhy(frame, clause, at) || hindranceBeside(frame, clause) !== null ? at : null;
}

/** The clause after one that says why, else the clause before it, where that says no more than what was wrong. */
export function hindranceBeside(frame: Frame, clause: Clause): Clause | null {
  const c = frame.clauses.indexOf(clause);
  const [before, after] = [frame.clauses[c - 1], frame.clauses[c + 1]];
  if (after && after.sentence <= clause.sentence + 1 && hindranceIn(frame, after)) return after;
  if (!before || before.sentence < clause.sentence - 1) return null;
  return hindranceIn(frame, before) ? before : null;
}

/** `gutters not done`, `haven't done the jars`, `didn't top up the jars`; not what was only meant, or done but for some. */
function deniedAt(frame: Frame, clause: Clause): number | null {
  if (namesIn(frame, clause).length === 0) return null;
  if (clauseHas(frame, clause, 'except', 'intention', 'condition', 'tomorrow', 'tonight', 'all'))
    return null;
  if (tellsValue(frame, clause)) return null;
  const deeds = inClause(
    frame,
    clause,
    (term) => means(term, 'done', 'did', 'do', 'clean') || (isDeed(term) && !means(term, 'broken')),
  );
  const denial = inClause(frame, clause, (term) => means(term, 'not', 'did-not'))[0];
  return deeds.length > 0 && denial !== undefined ? denial : null;
}

function saysWhy(frame: Frame, clause: Clause, at: number): boolean {
  return inClause(
    frame,
    clause,
    (term, i) => i > at && means(term, 'because') && !means(term, 'article'),
  ).some((i) => frame.terms.slice(i + 1, clause.to).some(saysMore));
}

/** A number or what it would be of; `do` is a deed here, and no oxygen. */
function tellsValue(frame: Frame, clause: Clause): boolean {
  const isValue = (term: Term) => isMeasure(term) || (isLabel(term) && !means(term, 'do'));
  return inClause(frame, clause, isValue).length > 0;
}

/** `pump was screaming`, `key won't turn`, `no time`, `lid is stuck`: it tells of nothing but what was in the way. */
function hindranceIn(frame: Frame, clause: Clause): boolean {
  if (clause.from >= clause.to) return false;
  const says = (...concepts: Parameters<typeof means>[1][]): boolean =>
    inClause(frame, clause, (term) => means(term, ...concepts)).length > 0;
  if (clauseHas(frame, clause, 'intention', 'condition', 'tomorrow', 'tonight', 'done'))
    return false;
  if (says('member', 'third-person', 'did', 'greeting', 'thanks')) return false;
  if (tellsValue(frame, clause)) return false;
  if (
    says(
      'hindered',
      'leak',
      'labouring',
      'burning',
      'shock',
      'broken',
      'no-power',
      'no-bubbles',
      'no-flow',
    )
  )
    return true;
  return says('not', 'did-not', 'no', 'could-not') && inClause(frame, clause, saysMore).length > 0;
}

/** What is missing or does not go; `no need`, `sorry, no` tell of nothing. */
function saysMore(term: Term): boolean {
  const small = means(
    term,
    'not',
    'did-not',
    'filler',
    'self',
    'pronoun',
    'link',
    'article',
    'has',
    'need',
    'sorry',
    'all-good',
    'judged',
    'place',
  );
  return term.kind === 'word' && !small && !(means(term, 'no') && means(term, 'said-no'));
}
