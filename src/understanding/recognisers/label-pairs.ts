import type { Fact } from '../fact.ts';
import { type Clause, type Frame, isMeasure, isPadding } from '../reading/frame.ts';
import { isUnknown, means, type Term } from '../reading/term.ts';
import { quantityOf } from './labels.ts';
import { believableReading, readingOf, type Slot } from './reading-fact.ts';

/** Pairs the labels and numbers of a clause, whichever comes first. */
export function labelledReadings(frame: Frame, clause: Clause): Fact[] {
  return runsOf(frame, clause).flatMap((slots) => pairsOf(frame, clause, slots));
}

function pairsOf(frame: Frame, clause: Clause, slots: readonly Slot[]): Fact[] {
  const facts: Fact[] = [];
  for (let n = 0; n < slots.length; n++) {
    const list = listPairs(slots, n);
    if (list > 0) {
      for (let k = 0; k < list; k++) {
        const fact = readingOf(frame, clause, slots[n + k]!, slots[n + list + k]!.at);
        if (fact) facts.push(fact);
      }
      n += 2 * list - 1;
      continue;
    }
    const [slot, next] = [slots[n]!, slots[n + 1]];
    if (!next) continue;
    const labelFirst = slot.quantity !== null && next.quantity === null;
    const numberFirst = slot.quantity === null && next.quantity !== null && numbersFirst(slots, n);
    if (!labelFirst && !numberFirst) continue;
    const [label, number] = labelFirst ? [slot, next] : [next, slot];
    const fact = readingOf(frame, clause, label, number.at);
    if (!fact) continue;
    facts.push(fact);
    n++;
    const another = labelFirst ? secondNumber(frame, clause, slots, n, label) : null;
    if (!another) continue;
    facts.push(another);
    n++;
  }
  return facts;
}

/** `ph/ec 5.8/1.7`: so many labels and then as many numbers, in order; 0 if it is no such list. */
function listPairs(slots: readonly Slot[], n: number): number {
  let labels = 0;
  while (slots[n + labels]?.quantity != null) labels++;
  if (labels < 2) return 0;
  const different =
    new Set(slots.slice(n, n + labels).map(({ quantity }) => quantity)).size === labels;
  let numbers = 0;
  while (slots[n + labels + numbers]?.quantity === null) numbers++;
  return different && numbers === labels ? labels : 0;
}

/** `ph 5.8 5.9`, `ph from 5.4 to 5.8`: a second number that fits the same label and no other. */
function secondNumber(
  frame: Frame,
  clause: Clause,
  slots: readonly Slot[],
  n: number,
  label: Slot,
): Fact | null {
  const [first, second, then] = [slots[n]!, slots[n + 1], slots[n + 2]];
  if (second?.quantity !== null) return null;
  if (then?.quantity != null && numbersFirst(slots, n + 1)) return null;
  const between = frame.terms.slice(first.at + 1, second.at);
  if (between.some((term) => term.kind === 'name' || means(term, 'water'))) return null;
  return believableReading(frame, clause, label, second.at);
}

/** The number belongs to the label after it if there are no more numbers than labels from here on. */
function numbersFirst(slots: readonly Slot[], n: number): boolean {
  const rest = slots.slice(n);
  const numbers = rest.filter(({ quantity }) => quantity === null).length;
  return numbers <= rest.length - numbers;
}

/** Labels and numbers in the order they stand, cut where something else stands between them. */
function runsOf(frame: Frame, clause: Clause): Slot[][] {
  const runs: Slot[][] = [];
  let run: Slot[] = [];
  const end = () => {
    if (run.length > 0) runs.push(run);
    run = [];
  };
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (frame.timed[i]) continue;
    const quantity = quantityOf(frame, clause, i);
    if (quantity !== null) run.push({ at: i, quantity });
    else if (isMeasure(term)) {
      if (frame.taken[i]) end();
      else run.push({ at: i, quantity: null });
    } else if (parts(frame, term, i)) end();
  }
  end();
  return runs;
}

/** Whether a word keeps a label and a number apart. */
function parts(frame: Frame, term: Term, i: number): boolean {
  const passes =
    isPadding(term) ||
    term.kind === 'name' ||
    means(
      term,
      'place',
      'inside',
      'water',
      'before',
      'after',
      'down',
      'rising',
      'reservoir',
      'low',
      'size',
      'to',
      'from',
      'with',
      'ish',
      'beyond',
      'today',
      'yesterday',
      'this',
      'morning',
      'and',
      'judged',
      'each',
      'both',
      'all',
      'between',
    );
  return !passes && (!frame.taken[i] || isUnknown(term));
}
