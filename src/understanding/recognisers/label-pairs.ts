import type { Fact } from '../fact.ts';
import { type Clause, type Frame, isMeasure, isPadding } from '../reading/frame.ts';
import { isProbe, isUnknown, means, type Term } from '../reading/term.ts';
import { isDuration } from '../times/day-said.ts';
import { quantityOf } from './labels.ts';
import { pairNeighbours } from './pair-slots.ts';
import { isGivenAmount, mayBeDosed } from './products.ts';
import { believableReading, readingOf, type Slot } from './reading-fact.ts';

/** Pairs the labels and numbers of a clause, whichever comes first. */
export function labelledReadings(frame: Frame, clause: Clause): Fact[] {
  return runsOf(frame, clause).flatMap((slots) => pairsOf(frame, clause, slots));
}

function pairsOf(frame: Frame, clause: Clause, slots: readonly Slot[]): Fact[] {
  const facts: Fact[] = [];
  const pairs = pairNeighbours(frame, slots);
  const isPaired = (n: number) => pairs.some(({ label, number }) => label === n || number === n);
  for (const { label, number } of pairs) {
    const fact = readingOf(frame, clause, slots[label]!, slots[number]!.at);
    if (!fact) continue;
    facts.push(fact);
    if (label > number || isPaired(number + 1)) continue;
    const another = secondNumber(frame, clause, slots, number, slots[label]!);
    if (another) facts.push(another);
  }
  return facts;
}

/** `ph 5.8 5.9`, `ph from 5.4 to 5.8`: a second number that fits the same label and no other. */
function secondNumber(
  frame: Frame,
  clause: Clause,
  slots: readonly Slot[],
  n: number,
  label: Slot,
): Fact | null {
  const [first, second] = [slots[n]!, slots[n + 1]];
  if (second?.quantity !== null || mayBeDosed(frame, second.at)) return null;
  const between = frame.terms.slice(first.at + 1, second.at);
  if (between.some((term) => term.kind === 'name' || means(term, 'water'))) return null;
  return believableReading(frame, clause, label, second.at);
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
    // `ph rose by 0.3 to 6.2`: a step keeps nothing apart.
    const isStep = means(term, 'by', 'moved') && frame.taken[i + 1] === true;
    // `ph in two days from 6.1 to 5.8`: nor does how long it took.
    if (frame.timed[i] || isStep || (frame.taken[i] === true && isDuration(term))) continue;
    const quantity = quantityOf(frame, clause, i);
    if (quantity !== null) run.push({ at: i, quantity });
    else if (isMeasure(term)) {
      if (frame.taken[i] && means(frame.terms[i - 1], 'by', 'moved')) continue;
      if (frame.taken[i]) end();
      else if (!isGivenAmount(frame, i)) run.push({ at: i, quantity: null });
    } else if (parts(frame, term, i) && !saysWhichProbe(frame, clause, i)) end();
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
      'read-as',
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
      'each-time',
    );
  if (passes || isWhatItIs(frame, i)) return false;
  return !frame.taken[i] || isUnknown(term);
}

/** `pen a 5.8 pen b 6.0`, `by the pen 5.8 by the other 6.0`: which of several instruments it was read with. */
function saysWhichProbe({ terms, places }: Frame, clause: Clause, i: number): boolean {
  const term = terms[i];
  if (means(term, 'other-one')) return places.hasWhere(isProbe, clause.from, i);
  return isProbe(terms[i - 1]) && term?.kind === 'word' && term.word.shyProduct !== null;
}

/** `5.8 is what the dwc ph shows`: what the number is follows it. */
function isWhatItIs({ terms }: Frame, i: number): boolean {
  return means(terms[i], 'what') && means(terms[i - 1], 'link') && isMeasure(terms[i - 2]);
}
