import type { Fact } from '../fact.ts';
import { convert } from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure, isPadding, measureOf, take } from '../reading/frame.ts';
import { isMark, means, type Term } from '../reading/term.ts';
import { quantityOf } from './labels.ts';
import { readingOf, type Slot, withLabelUnit } from './reading-fact.ts';

/** `ph, ec: 5.8, 1.7`, `ph and ec 5.8 and 1.7`, `ph/ec: dwc 5.8/1.7, nft 6.0/1.2`: labels, then values in their order. */
export function listedReadings(frame: Frame): Fact[] {
  const facts: Fact[] = labelledBehind(frame);
  for (let i = 0; i < frame.terms.length; i++) {
    const labels = labelsFrom(frame, i);
    // `7.5 ph, EC: 3.8`: the first has its number before it.
    if (labels.length < 2 || (isMeasure(frame.terms[i - 1]) && !frame.taken[i - 1])) continue;
    const first = valuesStart(frame, labels.at(-1)!.at + 1);
    const row = first === null ? null : rowFrom(frame, first.at, labels);
    if (first === null || row === null) {
      i = labels.at(-1)!.at;
      continue;
    }
    if (row.length < labels.length) {
      if (first.announced) facts.push(doesNotFit(frame, labels, row));
      i = row.at(-1)!;
      continue;
    }
    facts.push(...pairs(frame, labels, row));
    i = row.at(-1)!;
    for (let rows = nextRow(frame, i, labels); rows !== null; rows = nextRow(frame, i, labels)) {
      facts.push(...pairs(frame, labels, rows));
      i = rows.at(-1)!;
    }
  }
  return facts;
}

/** `gutters 1.3/5.9 ec/ph`, `5.9 and 1.3 for ph and ec`: values, then as many labels in their order and no more values. */
function labelledBehind(frame: Frame): Fact[] {
  const facts: Fact[] = [];
  for (let i = 0; i < frame.terms.length; i++) {
    if (!isFreeNumber(frame, i)) continue;
    const row = [i];
    let next = i + 1;
    while (
      next < frame.terms.length &&
      (isFreeNumber(frame, next) || separates(frame.terms[next]!))
    ) {
      if (isFreeNumber(frame, next)) row.push(next);
      next++;
    }
    if (means(frame.terms[next], 'for-somebody', 'link')) next++;
    const labels = row.length < 2 ? [] : labelsFrom(frame, next);
    i = next - 1;
    const last = labels.at(-1);
    if (!last || labels.length !== row.length) continue;
    // `EC: 0.6, 5.1 ph, temperature is 12`: the last has its number behind it, and so the first.
    if (isMeasure(frame.terms[besidePadding(frame, last.at, 1)])) continue;
    const before = besidePadding(frame, row[0]!, -1);
    const isLed = means(frame.terms[row[0]! - 1], 'link');
    const isOfLabel = before >= 0 && (isLed || labelAt(frame, before) !== null);
    if (!isOfLabel && row.every((at, n) => isOf(frame, labels[n]!, at)))
      facts.push(...pairs(frame, labels, row));
  }
  return facts;
}

/** The first term on that side that is no padding; -1 or beyond the last: none. */
function besidePadding({ terms }: Frame, i: number, step: 1 | -1): number {
  let j = i + step;
  while (j >= 0 && j < terms.length && isPadding(terms[j]!)) j += step;
  return j;
}

function isFreeNumber(frame: Frame, i: number): boolean {
  const term = frame.terms[i];
  return isMeasure(term) && !frame.taken[i] && term.measure.unit === null && !term.measure.share;
}

function labelAt(frame: Frame, i: number): Slot | null {
  const clause = frame.clauses[frame.clauseOf[i]!]!;
  if (frame.terms[i]!.kind !== 'word') return null;
  const quantity = quantityOf(frame, clause, i);
  return quantity === null ? null : { at: i, quantity };
}

/** Labels with nothing but commas, `and` and strokes between them, each of another quantity. */
function labelsFrom(frame: Frame, start: number): Slot[] {
  const labels: Slot[] = [];
  for (let i = start; i < frame.terms.length; i++) {
    const label = labelAt(frame, i);
    if (label) {
      if (labels.some(({ quantity }) => quantity === label.quantity)) return [];
      labels.push(label);
    } else if (labels.length === 0 || !separates(frame.terms[i]!)) break;
  }
  return labels;
}

function separates(term: Term): boolean {
  return (
    isMark(term, '/', '+', '|', '&') ||
    (term.kind === 'stop' && (term.cut === 'comma' || term.cut === 'and')) ||
    means(term, 'article')
  );
}

/** Where the values start, and whether a colon or a verb says that these are they. */
function valuesStart(frame: Frame, from: number): { at: number; announced: boolean } | null {
  let announced = false;
  for (let i = from; i < frame.terms.length; i++) {
    const term = frame.terms[i]!;
    if (isMeasure(term)) return frame.taken[i] ? null : { at: i, announced };
    if (isMark(term, ':', '=')) announced = true;
    else if (
      isMark(term, '-') ||
      term.kind === 'name' ||
      means(term, 'link', 'article', 'place', 'about')
    )
      continue;
    else if (term.kind === 'stop' && (term.cut === 'comma' || term.cut === 'line')) continue;
    else return null;
  }
  return null;
}

/** As many values as labels, each fit for its own; fewer where the row ends; null if it is no row of theirs. */
function rowFrom(frame: Frame, start: number, labels: readonly Slot[]): number[] | null {
  const row: number[] = [];
  let i = start;
  for (; i < frame.terms.length && row.length < labels.length; i++) {
    const term = frame.terms[i]!;
    if (isMeasure(term)) {
      if (frame.taken[i] || !isOf(frame, labels[row.length]!, i)) break;
      row.push(i);
    } else if (!separates(term) && !isMark(term, '-', ';') && !means(term, 'about', 'ish')) break;
  }
  if (row.length === 0) return null;
  // `ph and ec 5.8, 1.7 ec`: the numbers have labels of their own.
  const last = row.at(-1)!;
  if (row.length < labels.length && labelAfter(frame, last)) return null;
  return row;
}

function labelAfter(frame: Frame, i: number): boolean {
  return i + 1 < frame.terms.length && labelAt(frame, i + 1) !== null;
}

function isOf(frame: Frame, label: Slot, number: number): boolean {
  const measure = withLabelUnit(frame, label.at, measureOf(frame, number));
  return convert(label.quantity!, measure, frame.context.greenhouse.units) !== null;
}

/** A name and as many numbers, without labels of their own: the next line of the same table. */
function nextRow(frame: Frame, after: number, labels: readonly Slot[]): number[] | null {
  let i = after + 1;
  while (frame.terms[i]?.kind === 'stop' || means(frame.terms[i], 'article')) i++;
  if (frame.terms[i]?.kind !== 'name') return null;
  i++;
  while (isMark(frame.terms[i], ':', '=', '-')) i++;
  if (!isMeasure(frame.terms[i])) return null;
  const row = rowFrom(frame, i, labels);
  return row?.length === labels.length && !labelAfter(frame, row.at(-1)!) ? row : null;
}

function pairs(frame: Frame, labels: readonly Slot[], row: readonly number[]): Fact[] {
  return row.flatMap((number, n) => {
    const clause = frame.clauses[frame.clauseOf[number]!]!;
    // The label may head other rows: it is not used up before the last.
    frame.taken[labels[n]!.at] = false;
    const fact = readingOf(frame, clause, labels[n]!, number);
    return fact ? [{ ...fact, from: number, to: number }] : [];
  });
}

function doesNotFit(frame: Frame, labels: readonly Slot[], row: readonly number[]): Fact {
  take(frame, ...row, ...labels.map(({ at }) => at));
  return {
    quantity: 'ph',
    amount: { kind: 'missing' },
    at: row[0]!,
    from: row[0]!,
    to: row.at(-1)!,
    doubt: { kind: 'shorthand-does-not-fit' },
    because: 'fewer values than labels',
  };
}
