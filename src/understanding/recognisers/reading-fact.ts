import type { Quantity } from '../../greenhouse/quantity.ts';
import type { Fact } from '../fact.ts';
import type { Measure } from '../numbers/measure.ts';
import { convert, isBelievable, isVolume } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  isMeasure,
  measureOf,
  take,
} from '../reading/frame.ts';
import { means } from '../reading/term.ts';

/** A label and what it names, or a number. */
export interface Slot {
  readonly at: number;
  /** null: a number. */
  readonly quantity: Quantity | null;
}

/** The reading that a label and a number make, if the number's unit lets it be one. */
export function readingOf(frame: Frame, clause: Clause, label: Slot, number: number): Fact | null {
  const quantity = label.quantity!;
  const measure = withLabelUnit(frame, label.at, measureOf(frame, number));
  if (!convert(quantity, measure, frame.context.greenhouse.units)) return null;
  take(frame, label.at, number);
  takeCompanions(frame, clause, quantity, Math.min(label.at, number), Math.max(label.at, number));
  // `ec fell 0.2`: by so much, or to there.
  const isStep = number > clause.from && means(frame.terms[number - 1], 'moved');
  const isOpen = isStep || isOfPoured(frame, clause, Math.min(label.at, number));
  return {
    quantity,
    amount: { kind: 'measure', measure: isOpen ? { ...measure, bound: true } : measure },
    at: number,
    from: Math.min(label.at, number),
    to: Math.max(label.at, number),
    because: 'named quantity',
  };
}

/** `topped up with 12 l of ec 1.5`, `20 l at ph 6`: of what was poured, as like as not. */
export function isOfPoured(frame: Frame, clause: Clause, first: number): boolean {
  if (!means(frame.terms[first - 1], 'of', 'at', 'with')) return false;
  if (!clauseHas(frame, clause, 'top-up', 'add', 'fill', 'mixed')) return false;
  const amount = means(frame.terms[first - 2], 'solution') ? first - 3 : first - 2;
  const term = frame.terms[amount];
  return amount >= clause.from && isMeasure(term) && isVolume(term.measure);
}

/** Another number for a label that has one; null where it could not be believed as such. */
export function believableReading(
  frame: Frame,
  clause: Clause,
  label: Slot,
  number: number,
): Fact | null {
  const measure = withLabelUnit(frame, label.at, measureOf(frame, number));
  const conversion = convert(label.quantity!, measure, frame.context.greenhouse.units);
  if (!conversion || conversion.unitOpen) return null;
  if (!isBelievable(label.quantity!, conversion.values[0]!, null)) return null;
  const fact = readingOf(frame, clause, label, number);
  return fact && { ...fact, from: number, to: number };
}

/** `ppm 900`, `CF 14`: the label is the unit. */
export function withLabelUnit(frame: Frame, label: number, measure: Measure): Measure {
  if (measure.unit !== null) return measure;
  const term = frame.terms[label];
  if (means(term, 'ppm-word')) return { ...measure, unit: { id: 'ppm', shy: false } };
  if (means(term, 'cf-word')) return { ...measure, unit: { id: 'cf', shy: false } };
  return measure;
}

/** `air` and `inside` beside `temp` belong to the same reading, as far as the next number or the water. */
export function takeCompanions(
  frame: Frame,
  clause: Clause,
  quantity: Quantity,
  from: number,
  to: number,
): void {
  if (quantity !== 'air-temperature') return;
  const takeFrom = (start: number, step: 1 | -1) => {
    for (let i = start; i >= clause.from && i < clause.to; i += step) {
      const term = frame.terms[i];
      if (isMeasure(term) || means(term, 'water')) return;
      if (means(term, 'air', 'inside', 'air-thermometer', 'temperature')) take(frame, i);
    }
  };
  for (let i = from; i <= to; i++) {
    if (means(frame.terms[i], 'air', 'inside', 'air-thermometer', 'temperature')) take(frame, i);
  }
  takeFrom(from - 1, -1);
  takeFrom(to + 1, 1);
}

/** `ec bench 2.2 row 5.9`: what another quantity would fit better is asked about. */
export function isUsual(quantity: Quantity, { values }: Measure): boolean {
  const value = values[0]!;
  if (quantity === 'ec') return value <= 5 || value >= 100;
  return quantity === 'ph' || value >= 10;
}
