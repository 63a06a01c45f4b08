import { isReading, type Quantity } from '../../greenhouse/quantity.ts';
import type { Fact } from '../fact.ts';
import { type Clause, type Frame } from '../reading/frame.ts';
import { firstAt } from '../reading/places.ts';
import { isMark, means, type Term } from '../reading/term.ts';
import type { Concept } from '../vocabulary/concept.ts';

/** Two readings of one quantity that a deed or a word like `now` parts: the first was before, the second is after. */
export function withPhases(frame: Frame, facts: readonly Fact[]): Fact[] {
  const ordered = [...facts].sort((a, b) => a.at - b.at);
  const phases = new Map<Fact, 'before' | 'after'>();
  const latest = new Map<Quantity, Fact>();
  const deeds = ordered.filter(({ quantity }) => !isReading(quantity)).map(({ at }) => at);
  for (const second of ordered) {
    if (!isReading(second.quantity)) continue;
    const first = latest.get(second.quantity);
    latest.set(second.quantity, second);
    if (!first) continue;
    if (saysAfterFirst(frame, second, first)) {
      phases.set(second, 'before');
      phases.set(first, 'after');
    } else if (areParted(frame, first, second, deeds)) {
      phases.set(first, phases.get(first) ?? 'before');
      phases.set(second, 'after');
    }
  }
  return ordered.map((fact) => {
    const phase = fact.phase ?? phases.get(fact);
    return phase === undefined ? fact : { ...fact, phase };
  });
}

function clauseAt(frame: Frame, fact: Fact): Clause {
  return frame.clauses[frame.clauseOf[fact.at]!]!;
}

function areParted(frame: Frame, first: Fact, second: Fact, deeds: readonly number[]): boolean {
  const deed = deeds[firstAt(deeds, first.at + 1)];
  if (deed !== undefined && deed < second.at) return true;
  if (frame.places.hasWhere(turns, first.to, second.from + 1)) return true;
  if (isFromTo(frame, first, second)) return true;
  const early = wordsOfFirst(frame, first, second);
  if (says(frame, early, 'before')) return true;
  const late = wordsOfSecond(frame, first, second);
  return says(frame, late, 'now', 'after');
}

/** An arrow or a `then`. */
function turns(term: Term): boolean {
  return isMark(term, '→') || (term.kind === 'stop' && term.cut === 'then');
}

/** `5.9 now, was 5.4 before`: the later said is the earlier. */
function saysAfterFirst(frame: Frame, second: Fact, first: Fact): boolean {
  const late = wordsOfSecond(frame, first, second);
  const early = wordsOfFirst(frame, first, second);
  const wasLate = says(frame, late, 'before') || frame.places.hasWhere(wasAndIsNot, ...late);
  const fromLate =
    means(frame.terms[second.at - 1], 'from') && !means(frame.terms[first.at - 1], 'from');
  const afterSecond: Stretch = [Math.max(late[0], second.at + 1), late[1]];
  if (fromLate && !says(frame, afterSecond, 'to')) return true;
  const wasJustBefore = means(frame.terms[second.at - 1], 'was');
  return (
    wasLate &&
    !says(frame, late, 'now', 'after') &&
    !says(frame, early, 'was', 'before') &&
    (wasJustBefore || says(frame, early, 'now'))
  );
}

function wasAndIsNot(term: Term): boolean {
  return means(term, 'was') && !means(term, 'now');
}

function isFromTo(frame: Frame, first: Fact, second: Fact): boolean {
  return (
    means(frame.terms[first.at - 1], 'from') &&
    says(frame, [first.at + 1, second.at], 'to', 'still-there')
  );
}

/** Terms from the first up to but not including the second. */
type Stretch = readonly [from: number, to: number];

function says(frame: Frame, [from, to]: Stretch, ...concepts: readonly Concept[]): boolean {
  return concepts.some((concept) => frame.places.has(concept, from, to));
}

/** Of the first reading's clause, up to it and a little beyond. */
function wordsOfFirst(frame: Frame, first: Fact, second: Fact): Stretch {
  return [clauseAt(frame, first).from, Math.min(first.to + 2, second.from)];
}

/** From the first reading on to the end of the second's clause. */
function wordsOfSecond(frame: Frame, first: Fact, second: Fact): Stretch {
  return [first.to + 1, clauseAt(frame, second).to];
}
