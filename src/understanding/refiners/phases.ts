import { isReading } from '../../greenhouse/quantity.ts';
import type { Fact } from '../fact.ts';
import { type Clause, type Frame } from '../reading/frame.ts';
import { isMark, means } from '../reading/term.ts';

/** Two readings of one quantity that a deed or a word like `now` parts: the first was before, the second is after. */
export function withPhases(frame: Frame, facts: readonly Fact[]): Fact[] {
  const ordered = [...facts].sort((a, b) => a.at - b.at);
  const phases = new Map<Fact, 'before' | 'after'>();
  ordered.forEach((second, n) => {
    if (!isReading(second.quantity)) return;
    const first = ordered.slice(0, n).findLast((fact) => fact.quantity === second.quantity);
    if (!first) return;
    if (saysAfterFirst(frame, second, first)) {
      phases.set(second, 'before');
      phases.set(first, 'after');
    } else if (areParted(frame, first, second, ordered)) {
      phases.set(first, phases.get(first) ?? 'before');
      phases.set(second, 'after');
    }
  });
  return ordered.map((fact) => {
    const phase = fact.phase ?? phases.get(fact);
    return phase === undefined ? fact : { ...fact, phase };
  });
}

function clauseAt(frame: Frame, fact: Fact): Clause {
  return frame.clauses[frame.clauseOf[fact.at]!]!;
}

function areParted(frame: Frame, first: Fact, second: Fact, facts: readonly Fact[]): boolean {
  const deedBetween = facts.some(
    (fact) => !isReading(fact.quantity) && fact.at > first.at && fact.at < second.at,
  );
  if (deedBetween) return true;
  if (
    frame.terms
      .slice(first.to, second.from + 1)
      .some((term) => isMark(term, '→') || (term.kind === 'stop' && term.cut === 'then'))
  )
    return true;
  const early = wordsAround(frame, first, second, 'first');
  const late = wordsAround(frame, first, second, 'second');
  const was =
    early.some((i) => means(frame.terms[i], 'was', 'before')) || isFromTo(frame, first, second);
  const now = late.some((i) => means(frame.terms[i], 'now', 'after'));
  return (
    (was && now) ||
    isFromTo(frame, first, second) ||
    early.some((i) => means(frame.terms[i], 'before')) ||
    (now && late.length > 0)
  );
}

/** `5.9 now, was 5.4 before`: the later said is the earlier. */
function saysAfterFirst(frame: Frame, second: Fact, first: Fact): boolean {
  const late = wordsAround(frame, first, second, 'second');
  const early = wordsAround(frame, first, second, 'first');
  const wasLate =
    late.some((i) => means(frame.terms[i], 'before')) ||
    late.some((i) => means(frame.terms[i], 'was') && !means(frame.terms[i], 'now'));
  const fromLate =
    means(frame.terms[second.at - 1], 'from') && !means(frame.terms[first.at - 1], 'from');
  if (fromLate && !late.some((i) => i > second.at && means(frame.terms[i], 'to'))) return true;
  const nowLate = late.some((i) => means(frame.terms[i], 'now', 'after'));
  const beforeEarly = early.some((i) => means(frame.terms[i], 'was', 'before'));
  const wasJustBefore = means(frame.terms[second.at - 1], 'was');
  return (
    wasLate &&
    !nowLate &&
    !beforeEarly &&
    (wasJustBefore || early.some((i) => means(frame.terms[i], 'now')))
  );
}

function isFromTo(frame: Frame, first: Fact, second: Fact): boolean {
  return (
    means(frame.terms[first.at - 1], 'from') &&
    frame.terms.slice(first.at + 1, second.at).some((term) => means(term, 'to'))
  );
}

/** Words of the first reading's clause up to it and a little beyond, or from there on to the end of the second's clause. */
function wordsAround(frame: Frame, first: Fact, second: Fact, which: 'first' | 'second'): number[] {
  const [from, to] =
    which === 'first'
      ? [clauseAt(frame, first).from, Math.min(first.to + 2, second.from)]
      : [first.to + 1, clauseAt(frame, second).to];
  const found: number[] = [];
  for (let i = from; i < to; i++) found.push(i);
  return found;
}
