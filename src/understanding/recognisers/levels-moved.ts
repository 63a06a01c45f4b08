import type { Fact } from '../fact.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import type { Measure } from '../numbers/measure.ts';
import { cmFactor, isBare, isVolume, unitIs } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  isName,
  measureOf,
  measuresIn,
} from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { fact } from './level-fact.ts';
import { isHeightOfWater, isTalkOfLevel } from './level-talk.ts';

/** `went from 100 l to 80 l`, `down to 80 l from 95`, `von 100 auf 80 l gefallen`: how far the water has fallen. */
export function levelsMoved(frame: Frame, clause: Clause): Fact[] {
  const measures = measuresIn(frame, clause).filter((i) => !frame.timed[i]);
  const [first, second, ...others] = measures;
  if (first === undefined || second === undefined || others.length > 0) return [];
  const from = [first, second].find((i) => isLedBy(frame, i, 'from'));
  // `down to 80 l`: one phrase.
  const to = [first, second].find((i) => i !== from && isLedBy(frame, i, 'to', 'still-there'));
  if (from === undefined || to === undefined || !mayBeLevels(frame, clause)) return [];
  const [was, is] = inOneUnit(measureOf(frame, from), measureOf(frame, to));
  if (!was || !is || !isUnitOfLevel(frame, clause, is) || !isFall(was, is)) return [];
  return [
    { ...fact(frame, from, { kind: 'measure', measure: was }, 'level moved'), phase: 'before' },
    { ...fact(frame, to, { kind: 'measure', measure: is }, 'level moved'), phase: 'after' },
  ];
}

function isLedBy(frame: Frame, i: number, ...leads: readonly Concept[]): boolean {
  let j = i - 1;
  while (means(frame.terms[j], 'about') || frame.timed[j] === true) j--;
  return means(frame.terms[j], ...leads);
}

/** Of a system that is named, of no other quantity, and poured in by nobody. */
function mayBeLevels(frame: Frame, clause: Clause): boolean {
  return (
    frame.places.lastWhere(isName, clause.to) >= 0 &&
    !frame.places.hasWhere(isOtherLabel, clause.from, clause.to) &&
    !clauseHas(frame, clause, 'top-up', 'add', 'fill', 'refill', 'vessel', 'capacity', 'pick')
  );
}

function isOtherLabel(term: Term): boolean {
  return isLabel(term) && !means(term, 'level');
}

/** A number without a unit is told in the other's. */
function inOneUnit(was: Measure, is: Measure): readonly [Measure | null, Measure | null] {
  if (isBare(was) && isBare(is)) return [null, null];
  if (isBare(was)) return [{ ...was, unit: is.unit }, is];
  if (isBare(is)) return [was, { ...is, unit: was.unit }];
  return isVolume(was) === isVolume(is) ? [was, is] : [null, null];
}

/** Water falls by itself; where it has risen, somebody may have poured it in. */
function isFall(was: Measure, is: Measure): boolean {
  return was.values.length === 1 && is.values.length === 1 && is.values[0]! < was.values[0]!;
}

function isUnitOfLevel(frame: Frame, clause: Clause, measure: Measure): boolean {
  if (isVolume(measure)) return !unitIs(measure, 'ml', 'cl');
  if (unitIs(measure, 'percent')) return true;
  const isLength = cmFactor(measure) !== null;
  return isLength && (isHeightOfWater(frame, clause) || isTalkOfLevel(frame, clause));
}
