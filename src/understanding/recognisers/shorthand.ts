import type { SpokenUnits } from '../../greenhouse/greenhouse.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import type { Fact } from '../fact.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import type { Measure } from '../numbers/measure.ts';
import { convert, isBare, unitIs } from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure, isPadding, measureOf, take } from '../reading/frame.ts';
import { isCrop, isMark, isUnknown, means, type Term } from '../reading/term.ts';
import { readingByUnit } from './readings-by-unit.ts';

const places: readonly Quantity[] = ['ph', 'ec', 'water-temperature'];

/** What fits each place of the shorthand, bounds included. */
function fits(place: number, measure: Measure, units: SpokenUnits): boolean {
  const value = measure.values[0]!;
  switch (place) {
    case 0:
      return isBare(measure) && value >= 3 && value <= 9;
    case 1:
      return (isBare(measure) && value >= 0.1 && value <= 5) || isConductivity(measure);
    case 2:
      if (unitIs(measure, 'celsius', 'fahrenheit')) return true;
      if (!isBare(measure) && !unitIs(measure, 'degree')) return false;
      return units.temperature === 'C' ? value >= 5 && value <= 40 : value >= 41 && value <= 104;
    default:
      return false;
  }
}

/** `dwc 5.9/1.7` or `dwc 5.9 1.7 21`: pH, EC, water temperature, in that order. */
export function recogniseShorthand(frame: Frame, told: readonly Fact[] = []): Fact[] {
  const facts: Fact[] = [];
  let before: PlacedRow | null = null;
  for (let i = 0; i < frame.terms.length; i++) {
    if (!isMeasure(frame.terms[i]) || frame.taken[i]) continue;
    const numbers = numbersInARow(frame, i);
    if (numbers.length >= 2) {
      const hasPlace: boolean = isPlaced(frame, numbers, before);
      const share = hasPlace ? shareAmongLevels(frame, numbers, told) : null;
      if (share) facts.push(share);
      else if (hasPlace) facts.push(...readRow(frame, numbers));
      before = { at: i, hasPlace };
    }
    i = numbers.at(-1)!;
  }
  return facts;
}

/** Numbers with nothing but blanks, strokes, commas or `and` between them. */
function numbersInARow(frame: Frame, start: number): number[] {
  const numbers = [start];
  for (let i = start + 1; i < frame.terms.length; i++) {
    const term = frame.terms[i]!;
    if (isMeasure(term)) {
      if (frame.taken[i] || !isOfShorthand(term.measure) || isLabelledAfter(frame, i)) break;
      numbers.push(i);
    } else if (!separates(term)) break;
  }
  return isOfShorthand(measureOf(frame, start)) ? numbers : [start];
}

function isOfShorthand(measure: Measure): boolean {
  // `2 and 3 half full`: a share is of something.
  return (
    (isBare(measure) && !measure.share) ||
    unitIs(measure, 'celsius', 'fahrenheit', 'degree') ||
    isConductivity(measure)
  );
}

function isConductivity(measure: Measure): boolean {
  return unitIs(measure, 'ms-cm', 'us-cm', 'ppm', 'cf');
}

function separates(term: Term): boolean {
  return (
    isMark(term, '/', '-', ':', '|', '*') ||
    (term.kind === 'stop' &&
      (term.cut === 'comma' || term.cut === 'and' || term.cut === 'semicolon'))
  );
}

function isLabelledAfter(frame: Frame, i: number): boolean {
  return isLabel(frame.terms[i + 1]) && !isMeasure(frame.terms[i + 2]);
}

function readRow(frame: Frame, numbers: readonly number[]): Fact[] {
  const clause = frame.clauses[frame.clauseOf[numbers[0]!]!]!;
  const { units } = frame.context.greenhouse;
  const measures = numbers.map((i) => measureOf(frame, i));
  const fitting =
    numbers.length <= places.length &&
    !isFraction(frame, numbers) &&
    measures.every((measure, place) => fits(place, measure, units));
  if (!fitting && numbers.length > 1 && !isBare(measures.at(-1)!)) {
    // `dwc 5.9 21C`: only the number without a unit is in doubt.
    const last = numbers.at(-1)!;
    const rest = numbers.slice(0, -1);
    return [
      ...(rest.length > 1 ? readRow(frame, rest) : []),
      ...readingByUnit(frame, clause, last),
    ];
  }
  const [from, to] = [numbers[0]!, numbers.at(-1)!];
  take(frame, ...numbers);
  if (fitting) {
    return numbers.map((at, place) => ({
      quantity: places[place]!,
      amount: { kind: 'measure', measure: asIfInItsUnit(places[place]!, measures[place]!, units) },
      at,
      from,
      to,
      shorthand: true,
      because: 'shorthand',
    }));
  }
  return [
    {
      quantity: 'ph',
      amount: { kind: 'missing' },
      at: from,
      from,
      to,
      doubt: { kind: 'shorthand-does-not-fit' },
      because: 'shorthand',
    },
  ];
}

/** `jars 3/4`: three quarters full as likely as two readings. */
function isFraction(frame: Frame, numbers: readonly number[]): boolean {
  const [top, bottom] = numbers.map((i) => measureOf(frame, i));
  return (
    numbers.length === 2 &&
    isMark(frame.terms[numbers[0]! + 1], '/') &&
    top!.whole &&
    bottom!.whole &&
    top!.values[0]! < bottom!.values[0]!
  );
}

/** `bench half full, gutters 3/4, jars full`: among levels told in words it is one. */
function shareAmongLevels(
  frame: Frame,
  numbers: readonly number[],
  told: readonly Fact[],
): Fact | null {
  if (!isFraction(frame, numbers) || !told.some((fact) => isLevelInWords(frame, fact))) return null;
  const [top, bottom] = [numbers[0]!, numbers[1]!];
  const { from, to } = frame.clauses[frame.clauseOf[top]!]!;
  const isAlone = frame.terms
    .slice(from, to)
    .every((term, n) => term.kind === 'name' || isPadding(term) || numbers.includes(from + n));
  if (!isAlone) return null;
  take(frame, top, bottom);
  const measure = measureOf(frame, top);
  const value = measure.values[0]! / measureOf(frame, bottom).values[0]!;
  const share = { ...measure, values: [value], share: true, whole: false };
  return {
    quantity: 'level',
    amount: { kind: 'measure', measure: share },
    at: top,
    from: top,
    to: bottom,
    because: 'level in words',
  };
}

/** `half full`, `full`, `a third`: no litres and no depth. */
function isLevelInWords({ terms }: Frame, { quantity, amount, at }: Fact): boolean {
  if (quantity !== 'level' || amount.kind === 'missing') return false;
  const term = terms[at];
  return amount.kind !== 'measure' || (isMeasure(term) && term.measure.share);
}

/** In shorthand 41 °F is believed, though a bare number as low would be asked about. */
function asIfInItsUnit(quantity: Quantity, measure: Measure, units: SpokenUnits): Measure {
  if (quantity !== 'water-temperature' || convert(quantity, measure, units)?.unitOpen === false)
    return measure;
  return {
    ...measure,
    unit: { id: units.temperature === 'C' ? 'celsius' : 'fahrenheit', shy: false },
  };
}

/** A row of numbers and whether it stands where shorthand can: what stands before it holds for the next row. */
interface PlacedRow {
  readonly at: number;
  readonly hasPlace: boolean;
}

/** Straight after a name, or where its system is known from the talk and nothing else is said; or closed by a name. */
function isPlaced(frame: Frame, numbers: readonly number[], before: PlacedRow | null): boolean {
  const clause = frame.clauses[frame.clauseOf[numbers[0]!]!]!;
  for (let i = numbers[0]! - 1; i >= clause.from; i--) {
    if (before?.at === i) return before.hasPlace;
    const term = frame.terms[i]!;
    if (term.kind === 'name') return true;
    if (isForSomebody(frame, i)) continue;
    // A word that is no name, where one should stand: its system is asked.
    if (isUnknown(term) || isCrop(term)) return i === clause.from;
    if (
      !isPadding(term) &&
      !means(
        term,
        'yesterday',
        'today',
        'this',
        'morning',
        'at-hour',
        'evening',
        'night',
        'last',
        'place',
        'all',
        'both',
        'each',
      ) &&
      term.kind !== 'mark' &&
      term.kind !== 'clock' &&
      !frame.taken[i]
    )
      return false;
  }
  return true;
}

/** `dwc for grandad: 5.7 1.9`: on whose behalf it was measured. */
function isForSomebody({ terms }: Frame, i: number): boolean {
  const before = means(terms[i - 1], 'article', 'pronoun') ? i - 2 : i - 1;
  return means(terms[i], 'hearsay', 'member') && means(terms[before], 'for-somebody');
}
