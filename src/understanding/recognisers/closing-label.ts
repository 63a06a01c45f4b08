import type { SystemId } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import { convert, isBare, isBelievable } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  type Frame,
  isMeasure,
  isPadding,
  measureOf,
  take,
} from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import { quantityOf } from './labels.ts';
import { readingOf, type Slot, withLabelUnit } from './reading-fact.ts';

/** `bench 6.1 dwc 5.8 jars 6.2, that's all pH`, `Tonne links 6,0 rechts 6,1 beide pH`: the quantity closes the row. */
export function readingsUnderClosing(frame: Frame): Fact[] {
  return frame.places.where(isWhole).flatMap((all) => {
    const label = labelClosing(frame, all);
    const row = label && rowBefore(frame, all);
    if (!label || !row || !fitsRow(frame, all, label, row)) return [];
    take(frame, all);
    return row.flatMap(({ at, system }) => {
      frame.taken[label.at] = false;
      const clause = frame.clauses[frame.clauseOf[at]!]!;
      const fact = readingOf(frame, clause, label, at);
      return fact ? [{ ...fact, from: at, to: at, inTurn: system }] : [];
    });
  });
}

interface Valued {
  readonly at: number;
  readonly system: SystemId;
}

function isWhole(term: Term): boolean {
  return means(term, 'all', 'both');
}

/** The quantity's word straight after `all`, with nothing said of another value in its clause. */
function labelClosing(frame: Frame, all: number): Slot | null {
  const clause: Clause = frame.clauses[frame.clauseOf[all]!]!;
  let at = all + 1;
  while (at < clause.to && means(frame.terms[at], 'filler', 'article', 'link', 'of')) at++;
  if (at >= clause.to) return null;
  const quantity = quantityOf(frame, { ...clause, from: all }, at);
  if (quantity === null) return null;
  for (let i = at + 1; i < clause.to; i++)
    if (!isPadding(frame.terms[i]!) && !means(frame.terms[i], 'thanks', 'today')) return null;
  return { at, quantity };
}

/** Names and bare numbers in turn, back to the sentence's start or to what is another saying. */
function rowBefore(frame: Frame, all: number): readonly Valued[] | null {
  const { sentence } = frame.clauses[frame.clauseOf[all]!]!;
  const start = frame.sentences[sentence]![0]!.from;
  const inTurn: number[] = [];
  for (let i = all - 1; i >= start; i--) {
    const term = frame.terms[i]!;
    if (term.kind === 'name' || isMeasure(term)) inTurn.unshift(i);
    else if (!isJoint(frame, i)) return null;
  }
  const row: Valued[] = [];
  for (let n = 0; n + 1 < inTurn.length; n += 2) {
    const [a, b] = [frame.terms[inTurn[n]!]!, frame.terms[inTurn[n + 1]!]!];
    const isNamedFirst = a.kind === 'name';
    const [name, number] = isNamedFirst ? [a, b] : [b, a];
    const at = inTurn[isNamedFirst ? n + 1 : n]!;
    if (name.kind !== 'name' || !name.sure || name.systems.length !== 1) return null;
    if (!isMeasure(number) || frame.taken[at] || !isBare(number.measure)) return null;
    row.push({ at, system: name.systems[0]! });
  }
  return inTurn.length % 2 === 0 && row.length > 1 ? row : null;
}

function isJoint(frame: Frame, i: number): boolean {
  const term = frame.terms[i]!;
  if (term.kind === 'stop' || frame.timed[i]) return true;
  return isPadding(term) || means(term, 'place', 'greeting', 'today', 'morning', 'evening');
}

/** Each system once, `both` of two, and every value one that such a reading can have. */
function fitsRow(frame: Frame, all: number, label: Slot, row: readonly Valued[]): boolean {
  if (new Set(row.map(({ system }) => system)).size !== row.length) return false;
  if (means(frame.terms[all], 'both') && row.length !== 2) return false;
  return row.every(({ at }) => {
    const measure = withLabelUnit(frame, label.at, measureOf(frame, at));
    const conversion = convert(label.quantity!, measure, frame.context.greenhouse.units);
    if (!conversion || conversion.unitOpen) return false;
    return isBelievable(label.quantity!, conversion.values[0]!, null);
  });
}
