import type { SystemId } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import type { Measure } from '../numbers/measure.ts';
import { isBare } from '../numbers/quantity-of-measure.ts';
import { type Clause, type Frame, isMeasure, isPadding } from '../reading/frame.ts';
import { isMark, means, type Term } from '../reading/term.ts';
import type { Heading } from './later-values.ts';
import { believableReading, isUsual, type Slot } from './reading-fact.ts';

/**
 * `ec bench 2.2 row 1.8 nft 1.3`, `ph 6.1 in the bench 5.9 in the buckets`: one word for all, then nothing but names and
 * numbers in turn. `found`: the first of them.
 */
export function readingsUnderLabel(
  frame: Frame,
  clause: Clause,
  heading: Heading | null,
  found: readonly Fact[],
): Fact[] {
  if (!heading || found.length !== 1 || heading.label < clause.from) return [];
  const label: Slot = { at: heading.label, quantity: heading.quantity };
  return pairsAfter(frame, clause, heading.label).flatMap(({ at, measure, system }) => {
    if (frame.taken[at] || !isUsual(heading.quantity, measure)) return [];
    const fact = believableReading(frame, clause, label, at);
    return fact ? [{ ...fact, inTurn: system, because: 'quantity said for the first' }] : [];
  });
}

interface Pair {
  readonly at: number;
  readonly measure: Measure;
  /** The one whose turn it is; undefined: the name is of several. */
  readonly system: SystemId | undefined;
}

/** Two pairs or more of a name and a bare number, all in the same order; none: something else stands there. */
function pairsAfter({ terms }: Frame, clause: Clause, label: number): readonly Pair[] {
  const inTurn: number[] = [];
  for (let i = label + 1; i < clause.to; i++) {
    const term = terms[i]!;
    if (isNameOrNumber(term)) inTurn.push(i);
    else if (!mayStandBetween(term)) return [];
  }
  if (inTurn.length < 4 || inTurn.length % 2 > 0) return [];
  const isNamedFirst = terms[inTurn[0]!]!.kind === 'name';
  const pairs: Pair[] = [];
  for (let n = 0; n < inTurn.length; n += 2) {
    const [one, other] = [inTurn[n]!, inTurn[n + 1]!];
    const [at, named] = isNamedFirst ? [other, one] : [one, other];
    const [term, name] = [terms[at]!, terms[named]!];
    if (!isMeasure(term) || name.kind !== 'name' || !isBare(term.measure)) return [];
    // `ph 6.1 bench 5.9 buckets`: whose the middle one is nobody can tell.
    if (!isNamedFirst && !isPlaced(terms, named)) return [];
    const system = name.sure && name.systems.length === 1 ? name.systems[0] : undefined;
    pairs.push({ at, measure: term.measure, system });
  }
  return pairs;
}

function isNameOrNumber(term: Term): boolean {
  return term.kind === 'name' || isMeasure(term);
}

function mayStandBetween(term: Term): boolean {
  return isPadding(term) || isMark(term, ':', '-', '=') || means(term, 'place', 'for-somebody');
}

function isPlaced(terms: readonly Term[], name: number): boolean {
  const lead = terms[means(terms[name - 1], 'article') ? name - 2 : name - 1];
  return means(lead, 'place', 'for-somebody');
}
