import type { Fact } from '../fact.ts';
import { type Clause, clauseHas, type Frame, inClause, takeRange } from '../reading/frame.ts';
import { means } from '../reading/term.ts';

/**
 * `cleaned the pump filter in the bench`, `rinsed the air stones`: the parts that a clean is of. It is an
 * entry where the round has asked for a clean; else it is talk beside what is told.
 */
export function recogniseCleaning(frame: Frame): Fact[] {
  const { roundDuties, repliedTo } = frame.context;
  const asked = [...(roundDuties ?? []), ...(repliedTo?.kind === 'round' ? repliedTo.duties : [])];
  if (!asked.some(({ kind }) => kind === 'clean')) return [];
  return frame.clauses.flatMap((clause) => cleaningIn(frame, clause));
}

function cleaningIn(frame: Frame, clause: Clause): Fact[] {
  if (clauseHas(frame, clause, 'not', 'did-not', 'intention')) return [];
  const { filters } = frame.lexicon.own.vocabulary;
  const verb = inClause(frame, clause, (term, i) => means(term, 'clean') && !frame.taken[i])[0];
  const parts = inClause(
    frame,
    clause,
    (term, i) =>
      !frame.taken[i] && (means(term, 'air-stones', 'pump') || filters.includes(term.text)),
  );
  if (verb === undefined || parts.length === 0) return [];
  const [first, last] = [Math.min(verb, parts[0]!), Math.max(verb, parts.at(-1)!)];
  takeRange(frame, first, last + 1);
  return [
    {
      quantity: 'duty-done',
      amount: { kind: 'value', value: 1 },
      at: verb,
      from: first,
      to: last,
      duty: 'clean',
      because: 'a part was cleaned',
    },
  ];
}
