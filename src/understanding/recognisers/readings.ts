import type { Quantity } from '../../greenhouse/quantity.ts';
import type { Fact } from '../fact.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import type { Measure } from '../numbers/measure.ts';
import { convert, isBare, isBelievable, unitIs } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  isMeasure,
  isPadding,
  measureOf,
  take,
} from '../reading/frame.ts';
import { isMark, isUnknown, means, type Term } from '../reading/term.ts';

/** Readings that a word names, before or after their number, or that a unit says by itself. */
export function recogniseReadings(frame: Frame): Fact[] {
  const facts: Fact[] = [];
  let heading: Heading | null = null;
  for (const [c, clause] of frame.clauses.entries()) {
    const found = labelled(frame, clause);
    facts.push(...found);
    facts.push(...acrossComma(frame, c));
    facts.push(...underHeading(frame, clause, heading));
    facts.push(...laterValue(frame, clause, facts.at(-1)));
    facts.push(...byUnit(frame, clause));
    heading = headingOf(frame, clause, found, heading);
  }
  return facts;
}

/** The quantity that a word names here. */
export function quantityOf(frame: Frame, clause: Clause, i: number): Quantity | null {
  const term = frame.terms[i]!;
  if (frame.taken[i]) return null;
  if (term.kind === 'word' && (term.word.product ?? '').startsWith('ph-')) return 'ph';
  if (means(term, 'ph')) return 'ph';
  if (means(term, 'ec', 'ppm-word', 'cf-word')) return 'ec';
  if (means(term, 'humidity')) return 'humidity';
  if (means(term, 'oxygen') && isOxygen(frame, clause, i)) return 'dissolved-oxygen';
  if (means(term, 'air', 'air-thermometer')) return 'air-temperature';
  if (term.kind === 'word' && term.word.probe !== null) {
    return quantityOfProbe(frame, clause, term.word.probe);
  }
  if (means(term, 'temperature'))
    return isOfTheAir(frame, clause) ? 'air-temperature' : 'water-temperature';
  return null;
}

/** `pen 5.8`, `the stick says 1.7`: a probe for one quantity names it where nothing else does. */
function quantityOfProbe(frame: Frame, clause: Clause, name: string): Quantity | null {
  const labels = frame.terms.slice(clause.from, clause.to).some((term) => isLabel(term));
  const measures =
    frame.context.greenhouse.probes.find((probe) => probe.name === name)?.measures ?? [];
  return labels || measures.length !== 1 ? null : measures[0]!;
}

/** `do` is oxygen only straight before or after its number. */
function isOxygen(frame: Frame, clause: Clause, i: number): boolean {
  const term = frame.terms[i]!;
  if (!means(term, 'do', 'is-it')) return true;
  let j = i + 1;
  while (
    j < clause.to &&
    (isMark(frame.terms[j], ':', '=', '-') || means(frame.terms[j], 'link', 'about'))
  )
    j++;
  const next = j < clause.to ? frame.terms[j] : undefined;
  if (isMeasure(next)) return isBare(next.measure) || unitIs(next.measure, 'mg-l', 'ppm');
  const before = i > clause.from ? frame.terms[i - 1] : undefined;
  return isMeasure(before) && (unitIs(before.measure, 'mg-l') || !next);
}

function isOfTheAir(frame: Frame, clause: Clause): boolean {
  return clauseHas(frame, clause, 'air', 'inside', 'air-thermometer');
}

interface Slot {
  readonly at: number;
  readonly quantity: Quantity | null;
}

/** Pairs the labels and numbers of a clause, whichever comes first. */
function labelled(frame: Frame, clause: Clause): Fact[] {
  const facts: Fact[] = [];
  for (const slots of runsOf(frame, clause)) {
    for (let n = 0; n < slots.length; n++) {
      const [slot, next] = [slots[n]!, slots[n + 1]];
      if (!next) continue;
      const labelFirst = slot.quantity !== null && next.quantity === null;
      const numberFirst =
        slot.quantity === null && next.quantity !== null && numbersFirst(slots, n);
      if (!labelFirst && !numberFirst) continue;
      const [label, number] = labelFirst ? [slot, next] : [next, slot];
      const fact = readingOf(frame, clause, label, number.at);
      if (!fact) continue;
      facts.push(fact);
      n++;
      const another = labelFirst ? secondNumber(frame, clause, slots, n, label) : null;
      if (another) {
        facts.push(another);
        n++;
      }
    }
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
  const [first, second, then] = [slots[n]!, slots[n + 1], slots[n + 2]];
  if (second?.quantity !== null) return null;
  const isOfNextLabel = then?.quantity != null && numbersFirst(slots, n + 1);
  if (isOfNextLabel) return null;
  const between = frame.terms.slice(first.at + 1, second.at);
  if (between.some(({ kind }) => kind === 'name')) return null;
  const measure = measureOf(frame, second.at);
  const conversion = convert(
    label.quantity!,
    withLabelUnit(frame, label.at, measure),
    frame.context.greenhouse.units,
  );
  if (
    !conversion ||
    conversion.unitOpen ||
    !isBelievable(label.quantity!, conversion.values[0]!, null)
  )
    return null;
  const fact = readingOf(frame, clause, label, second.at);
  return fact && { ...fact, from: second.at, to: second.at };
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
    } else if (breaks(frame, term, i)) end();
  }
  end();
  return runs;
}

function breaks(frame: Frame, term: Term, i: number): boolean {
  if (
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
    )
  )
    return false;
  return !frame.taken[i] || isUnknown(term);
}

function readingOf(frame: Frame, clause: Clause, label: Slot, number: number): Fact | null {
  const measure = measureOf(frame, number);
  const quantity = label.quantity!;
  const asked = withLabelUnit(frame, label.at, measure);
  if (!convert(quantity, asked, frame.context.greenhouse.units)) return null;
  take(frame, label.at, number);
  takeCompanions(frame, clause, quantity);
  return {
    quantity,
    amount: { kind: 'measure', measure: asked },
    at: number,
    from: Math.min(label.at, number),
    to: Math.max(label.at, number),
    because: 'named quantity',
  };
}

/** `ppm 900`, `CF 14`: the label is the unit. */
function withLabelUnit(frame: Frame, label: number, measure: Measure): Measure {
  if (measure.unit !== null) return measure;
  const term = frame.terms[label];
  if (means(term, 'ppm-word')) return { ...measure, unit: { id: 'ppm', shy: false } };
  if (means(term, 'cf-word')) return { ...measure, unit: { id: 'cf', shy: false } };
  return measure;
}

/** `air` and `inside` beside `temp` belong to the same reading. */
function takeCompanions(frame: Frame, clause: Clause, quantity: Quantity): void {
  if (quantity !== 'air-temperature') return;
  for (let i = clause.from; i < clause.to; i++)
    if (means(frame.terms[i], 'air', 'inside', 'air-thermometer', 'temperature')) take(frame, i);
}

/** `ph is down, 5.4`: the number comes after a comma, alone. */
function acrossComma(frame: Frame, c: number): Fact[] {
  const clause = frame.clauses[c]!;
  const next = frame.clauses[c + 1];
  if (next?.opens !== 'comma') return [];
  let label: Slot | null = null;
  for (let i = clause.from; i < clause.to; i++) {
    const quantity = quantityOf(frame, clause, i);
    if (quantity !== null) label = { at: i, quantity };
    else if (label && (isMeasure(frame.terms[i]) || isUnknown(frame.terms[i]))) label = null;
  }
  if (!label) return [];
  const first = [...Array(next.to - next.from).keys()]
    .map((n) => next.from + n)
    .find((i) => !isPadding(frame.terms[i]!));
  if (first === undefined || !isMeasure(frame.terms[first]) || frame.taken[first]) return [];
  if (first + 1 < next.to && quantityOf(frame, next, first + 1) !== null) return [];
  const fact = readingOf(frame, clause, label, first);
  return fact ? [fact] : [];
}

interface Heading {
  readonly quantity: Quantity;
  readonly label: number;
}

/** `ph: dwc 5.8, nft 6.1` and `ph 5.8 in the dwc and 6.1 in the nft`: the word stands before the first name and goes on. */
function headingOf(
  frame: Frame,
  clause: Clause,
  found: readonly Fact[],
  before: Heading | null,
): Heading | null {
  if (found.length === 1) {
    const [fact] = found;
    const label = frame.terms
      .slice(clause.from, clause.to)
      .findIndex((_, n) => quantityWord(frame, clause.from + n));
    const at = clause.from + label;
    const named = frame.terms.slice(0, at).some(({ kind }) => kind === 'name');
    return named || label < 0 ? null : { quantity: fact!.quantity, label: at };
  }
  return found.length === 0 && clause.from < clause.to ? before : null;
}

function quantityWord(frame: Frame, i: number): boolean {
  return means(frame.terms[i], 'ph', 'ec', 'temperature', 'oxygen', 'ppm-word', 'cf-word');
}

function underHeading(frame: Frame, clause: Clause, heading: Heading | null): Fact[] {
  if (!heading) return [];
  const numbers: number[] = [];
  let names = 0;
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (isMeasure(term) && !frame.taken[i]) numbers.push(i);
    else if (term.kind === 'name') names++;
    else if (!isPadding(term) && !means(term, 'place')) return [];
  }
  if (numbers.length !== 1 || names !== 1) return [];
  const fact = readingOf(
    frame,
    clause,
    { at: heading.label, quantity: heading.quantity },
    numbers[0]!,
  );
  return fact
    ? [{ ...fact, from: numbers[0]!, to: numbers[0]!, because: 'quantity said for the first' }]
    : [];
}

/** `ph was 5.4, now 6.1`, `5.4 → 6.1`: the second value of what was read last. */
function laterValue(frame: Frame, clause: Clause, last: Fact | undefined): Fact[] {
  if (last?.amount.kind !== 'measure') return [];
  const numbers: number[] = [];
  for (let i = clause.from; i < clause.to; i++) {
    if (isMeasure(frame.terms[i]) && !frame.taken[i] && isBare(measureOf(frame, i)))
      numbers.push(i);
  }
  if (numbers.length !== 1) return [];
  const at = numbers[0]!;
  const arrow = isMark(frame.terms[at - 1], '→');
  const says =
    clauseHas(frame, clause, 'now', 'before', 'after') ||
    (clauseHas(frame, clause, 'was') && clause.from > last.at);
  const from = means(frame.terms[at - 1], 'from') && clause.from > last.at;
  if (!arrow && !says && !from) return [];
  const measure = measureOf(frame, at);
  const conversion = convert(last.quantity, measure, frame.context.greenhouse.units);
  if (
    !conversion ||
    conversion.unitOpen ||
    !isBelievable(last.quantity, conversion.values[0]!, null)
  )
    return [];
  take(frame, at);
  return [
    {
      quantity: last.quantity,
      amount: { kind: 'measure', measure },
      at,
      from: at,
      to: at,
      because: 'later value of the same',
    },
  ];
}

/** `21.5C`, `1.7 mS`, `8.1 mg/l`, `27 inside`: the unit or the place says it. */
function byUnit(frame: Frame, clause: Clause): Fact[] {
  const facts: Fact[] = [];
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (!isMeasure(term) || frame.taken[i]) continue;
    const quantity = quantityByUnit(frame, clause, i, term.measure);
    if (quantity === null) continue;
    take(frame, i);
    takeCompanions(frame, clause, quantity);
    facts.push({
      quantity,
      amount: { kind: 'measure', measure: term.measure },
      at: i,
      from: i,
      to: i,
      because: 'unit or place says it',
    });
  }
  return facts;
}

function quantityByUnit(
  frame: Frame,
  clause: Clause,
  i: number,
  measure: Measure,
): Quantity | null {
  const air = isOfTheAir(frame, clause);
  if (unitIs(measure, 'celsius', 'fahrenheit', 'degree'))
    return air ? 'air-temperature' : 'water-temperature';
  if (unitIs(measure, 'ms-cm', 'us-cm', 'cf', 'ppm')) return 'ec';
  if (unitIs(measure, 'mg-l')) return 'dissolved-oxygen';
  if (isBare(measure) && air && isBesideInside(frame, clause, i)) return 'air-temperature';
  return null;
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
