import type { Quantity } from '../../greenhouse/quantity.ts';
import type { Fact } from '../fact.ts';
import type { Measure } from '../numbers/measure.ts';
import { isBare, unitIs } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  isMeasure,
  isName,
  isPadding,
  measureOf,
  namesIn,
  take,
} from '../reading/frame.ts';
import { isMark, means } from '../reading/term.ts';
import { isOfTheAir } from './labels.ts';
import { isOfPoured, takeCompanions } from './reading-fact.ts';

/** `21.5C`, `1.7 mS`, `8.1 mg/l`, `27 inside`: the unit or the place says it. */
export function readingsByUnit(frame: Frame, clause: Clause): Fact[] {
  const facts: Fact[] = [];
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (!isMeasure(term) || frame.taken[i] || isInShorthand(frame, clause, i)) continue;
    facts.push(...readingByUnit(frame, clause, i));
  }
  return facts;
}

/** What the number's unit or place says it is; nothing where they do not say it. */
export function readingByUnit(frame: Frame, clause: Clause, i: number): Fact[] {
  const measure = measureOf(frame, i);
  const quantity = quantityByUnit(frame, clause, i, measure);
  if (quantity === null) return [];
  take(frame, i);
  takeCompanions(frame, clause, quantity, i, i);
  const isPoured = quantity === 'ec' && isOfPoured(frame, clause, i);
  const amount = {
    kind: 'measure' as const,
    measure: isPoured ? { ...measure, bound: true } : measure,
  };
  return [{ quantity, amount, at: i, from: i, to: i, because: 'unit or place says it' }];
}

function quantityByUnit(
  frame: Frame,
  clause: Clause,
  i: number,
  measure: Measure,
): Quantity | null {
  const air = () =>
    isOfTheAir(frame, clause, i) || isSpokenOfInside(frame, clause) || isInHere(frame, clause);
  if (unitIs(measure, 'celsius', 'fahrenheit', 'degree'))
    return air() ? 'air-temperature' : 'water-temperature';
  if (unitIs(measure, 'ms-cm', 'us-cm', 'cf', 'ppm')) return 'ec';
  if (unitIs(measure, 'mg-l')) return 'dissolved-oxygen';
  return isBare(measure) && isBesideInside(frame, clause, i) ? 'air-temperature' : null;
}

/** `34 Grad drin`, with no system named. */
function isInHere(frame: Frame, clause: Clause): boolean {
  return clauseHas(frame, clause, 'in-here') && namesIn(frame, clause).length === 0;
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

/** `it's boiling in here, 38 degrees`: the clause before has said where, and this one names nothing. */
function isSpokenOfInside(frame: Frame, clause: Clause): boolean {
  const before = frame.clauses[frame.clauses.indexOf(clause) - 1];
  if (before?.sentence !== clause.sentence || clause.opens !== 'comma') return false;
  const said = frame.terms.slice(before.from, before.to);
  const isWhole = !said.some((term) => term.kind === 'name' || isMeasure(term));
  const namesNothing = frame.terms
    .slice(clause.from, clause.to)
    .every((term) => isMeasure(term) || isPadding(term));
  return isWhole && namesNothing && said.some((term) => means(term, 'inside'));
}

/** `t12 6.1 840 ppm`, `5.8/840ppm/67F`: a conductivity or temperature in its place after a bare number that a name leads. */
function isInShorthand(frame: Frame, clause: Clause, i: number): boolean {
  let j = i - 1;
  for (; j >= clause.from; j--) {
    const term = frame.terms[j]!;
    if (frame.taken[j] || !(isMeasure(term) || isMark(term, '/', '-', '|'))) break;
  }
  const first = frame.terms[j + 1]!;
  const lead = frame.terms[j];
  return j + 1 < i && isMeasure(first) && isBare(first.measure) && j >= clause.from && isName(lead);
}
