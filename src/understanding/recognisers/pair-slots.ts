import { convert, isBare, isBelievable } from '../numbers/quantity-of-measure.ts';
import { type Frame, measureOf } from '../reading/frame.ts';
import { type Slot, withLabelUnit } from './reading-fact.ts';

/** A label and the number beside it, as places in the run. */
export interface Pair {
  readonly label: number;
  readonly number: number;
}

/**
 * Which of the numbers beside a label is its own: the pairing of neighbours in which most fits. `5.8 ph 1.7 ec`
 * has its numbers first, `ph 5.8 ec 1.7` its labels; what is written in one (`5.8pH`) belongs together.
 */
export function pairNeighbours(frame: Frame, slots: readonly Slot[]): Pair[] {
  // best[n]: the best that can be made of the slots from n on.
  const best: { weight: number; pair: boolean }[] = [];
  const weightFrom = (n: number): number => best[n]?.weight ?? 0;
  for (let n = slots.length - 1; n >= 0; n--) {
    const weight = pairWeight(frame, slots, n);
    const paired = weight === 0 ? 0 : weight + weightFrom(n + 2);
    const alone = weightFrom(n + 1);
    best[n] =
      paired > 0 && paired >= alone
        ? { weight: paired, pair: true }
        : { weight: alone, pair: false };
  }
  const pairs: Pair[] = [];
  for (let n = 0; n < slots.length; n++) {
    if (!best[n]!.pair) continue;
    const isLabelFirst = slots[n]!.quantity !== null;
    pairs.push(isLabelFirst ? { label: n, number: n + 1 } : { label: n + 1, number: n });
    n++;
  }
  return pairs;
}

const unitFits = 3;
const believed = 2;
const unbelievable = 1;
const labelsComeFirst = 0.1;
const written = 1.5;

/** How well a slot and the one after it make a reading; 0 if they make none. */
function pairWeight(frame: Frame, slots: readonly Slot[], n: number): number {
  const [a, b] = [slots[n]!, slots[n + 1]];
  if (!b || (a.quantity === null) === (b.quantity === null)) return 0;
  const [label, number] = a.quantity === null ? [b, a] : [a, b];
  const measure = withLabelUnit(frame, label.at, measureOf(frame, number.at));
  const conversion = convert(label.quantity!, measure, frame.context.greenhouse.units);
  if (!conversion) return 0;
  const isBelieved =
    !conversion.unitOpen && isBelievable(label.quantity!, conversion.values[0]!, null);
  const fit = isBelieved
    ? isBare(measureOf(frame, number.at))
      ? believed
      : unitFits
    : unbelievable;
  const isInOne = b.at === a.at + 1 && frame.terms[b.at]!.glued;
  return fit + (a === label ? labelsComeFirst : 0) + (isInOne ? written : 0);
}
