import type { Quantity } from '../../greenhouse/quantity.ts';
import type { Fact } from '../fact.ts';
import type { Measure } from '../numbers/measure.ts';
import { isBare, unitIs } from '../numbers/quantity-of-measure.ts';
import { type Clause, type Frame, isMeasure, isPadding, take } from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import { isOfTheAir } from './labels.ts';
import { takeCompanions } from './reading-fact.ts';

/** `21.5C`, `1.7 mS`, `8.1 mg/l`, `27 inside`: the unit or the place says it. */
export function readingsByUnit(frame: Frame, clause: Clause): Fact[] {
  const facts: Fact[] = [];
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (!isMeasure(term) || frame.taken[i]) continue;
    const quantity = quantityByUnit(frame, clause, i, term.measure);
    if (quantity === null) continue;
    take(frame, i);
    takeCompanions(frame, clause, quantity, i, i);
    const amount = { kind: 'measure' as const, measure: term.measure };
    facts.push({ quantity, amount, at: i, from: i, to: i, because: 'unit or place says it' });
  }
  return facts;
}

function quantityByUnit(
  frame: Frame,
  clause: Clause,
  i: number,
  measure: Measure,
): Quantity | null {
  const air = () => isOfTheAir(frame, clause, i);
  if (unitIs(measure, 'celsius', 'fahrenheit', 'degree'))
    return air() ? 'air-temperature' : 'water-temperature';
  if (unitIs(measure, 'ms-cm', 'us-cm', 'cf', 'ppm')) return 'ec';
  if (unitIs(measure, 'mg-l')) return 'dissolved-oxygen';
  return isBare(measure) && isBesideInside(frame, clause, i) ? 'air-temperature' : null;
}

function isBesideInside(frame: Frame, clause: Clause, i: number): boolean {
  for (let j = i + 1; j < clause.to; j++) {
    if (means(frame.terms[j], 'inside')) return true;
    if (!isPadding(frame.terms[j]!)) break;
  }
  for (let j = i - 1; j >= clause.from; j--) {
    if (means(frame.terms[j], 'inside') && !frame.taken[j]) return true;
    if (!isPadding(frame.terms[j]!)) break;
  }
  return false;
}
