import { belongsToGreenhouse, isReading, type Quantity } from '../../greenhouse/quantity.ts';
import type { Fact } from '../fact.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import { convert, isBare, isBelievable, isVolume } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isMeasure,
  isName,
  isPadding,
  measureOf,
  take,
} from '../reading/frame.ts';
import { isMark, isProbe, isUnknown, means, type Term } from '../reading/term.ts';
import { quantityOf } from './labels.ts';
import { mayBeDosed } from './products.ts';
import { isUsual, readingOf, type Slot } from './reading-fact.ts';

/** `ph is down, 5.4`: the number comes after a comma, alone; or behind an aside, as in `ph, which was fine, is now 5.4`. */
export function readingAcrossComma(frame: Frame, c: number): Fact | null {
  const clause = frame.clauses[c]!;
  const next = frame.clauses[isAside(frame, c + 1) ? c + 2 : c + 1];
  if (next?.opens !== 'comma') return null;
  let label: Slot | null = null;
  for (let i = clause.from; i < clause.to; i++) {
    const quantity = quantityOf(frame, clause, i);
    if (quantity !== null) label = { at: i, quantity };
    else if (label && (isMeasure(frame.terms[i]) || isUnknown(frame.terms[i]))) label = null;
  }
  if (!label) return null;
  // `ph is down, gutters 5.6`: the name leads its value, where none was named before.
  const mayName = !frame.places.hasWhere(isName, clause.from, clause.to);
  let first = next.from;
  while (
    first < next.to &&
    (isPadding(frame.terms[first]!) || (mayName && isName(frame.terms[first])))
  )
    first++;
  if (first >= next.to || !isMeasure(frame.terms[first]) || frame.taken[first]) return null;
  if (first + 1 < next.to && quantityOf(frame, next, first + 1) !== null) return null;
  return readingOf(frame, clause, label, first);
}

/** `, which was fine yesterday, is`: between commas, of what stands before it, with no number, label or name in it. */
function isAside(frame: Frame, c: number): boolean {
  const [aside, after] = [frame.clauses[c], frame.clauses[c + 1]];
  if (aside?.opens !== 'comma' || after?.opens !== 'comma') return false;
  const opens = means(frame.terms[aside.from], 'which', 'that-clause', 'article', 'pronoun');
  const told = inClause(
    frame,
    aside,
    (term, i) => isName(term) || isMeasure(term) || quantityOf(frame, aside, i) !== null,
  );
  return opens && told.length === 0 && means(frame.terms[after.from], 'link');
}

/** A quantity word that stands before any name and goes on for the names that follow. */
export interface Heading {
  readonly quantity: Quantity;
  readonly label: number;
}

/** `ph: dwc 5.8, nft 6.1` and `ph 5.8 in the dwc and 6.1 in the nft`. */
export function headingOf(
  frame: Frame,
  clause: Clause,
  found: readonly Fact[],
  before: Heading | null,
): Heading | null {
  if (found.length === 1) {
    const [fact] = found;
    const words = frame.terms.slice(clause.from, clause.to);
    const label = words.findIndex(
      (term) =>
        means(term, 'ph', 'ec', 'temperature', 'oxygen', 'ppm-word', 'cf-word') || isProbe(term),
    );
    const at = clause.from + label;
    // `the pen says 6.1 in the tower and 5.8 in the wall`: a probe says what it measures.
    // `ph: dwc 5.8, nft 6.1; ec: dwc 1.7, nft 1.3`: at the start of a sentence of its own.
    const { segment } = clause;
    const start = frame.clauses.find((other) => other.segment === segment)!.from;
    const opens = at === start && isMark(frame.terms[at + 1], ':');
    const named = frame.places.hasWhere(isName, opens ? at : 0, at);
    return named || label < 0 ? null : { quantity: fact!.quantity, label: at };
  }
  if (found.length > 0 || clause.from === clause.to) return null;
  return headOfLines(frame, clause) ?? before;
}

/** `ph` on a line of its own, above lines of a name and a number each. */
function headOfLines(frame: Frame, clause: Clause): Heading | null {
  const next = frame.clauses[frame.clauseOf[clause.from]! + 1];
  if (next?.opens !== 'line' || (clause.opens !== 'start' && clause.opens !== 'line')) return null;
  const words = inClause(frame, clause, (term) => !isMark(term, ':') && !isPadding(term));
  const [label] = words;
  if (words.length !== 1 || label === undefined) return null;
  const quantity = quantityOf(frame, clause, label);
  return quantity === null ? null : { quantity, label };
}

export function readingUnderHeading(
  frame: Frame,
  clause: Clause,
  heading: Heading | null,
): Fact | null {
  if (!heading) return null;
  const numbers: number[] = [];
  let names = 0;
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (isMeasure(term) && !frame.taken[i]) numbers.push(i);
    else if (term.kind === 'name') names++;
    else if (!isPadding(term) && !means(term, 'place')) return null;
  }
  if (numbers.length !== 1 || names !== 1) return null;
  const at = numbers[0]!;
  const fact = readingOf(frame, clause, { at: heading.label, quantity: heading.quantity }, at);
  return fact && { ...fact, from: at, to: at, because: 'quantity said for the first' };
}

/** `the left ph is 6.0 and the right is 6.1`: said of the next system in the same words. */
export function readingLikeBefore(frame: Frame, c: number): Fact | null {
  const [before, clause] = [frame.clauses[c - 1], frame.clauses[c]!];
  if (!before || clause.opens !== 'and' || !clauseHas(frame, clause, 'link')) return null;
  const labels: Slot[] = [];
  for (let i = before.from; i < before.to; i++) {
    const term = frame.terms[i];
    if (means(term, 'ph', 'ec', 'temperature')) {
      const quantity = means(term, 'ph') ? 'ph' : means(term, 'ec') ? 'ec' : 'water-temperature';
      labels.push({ at: i, quantity });
    }
  }
  const isTold = frame.terms
    .slice(before.from, before.to)
    .some((term, n) => term.kind === 'measure' && frame.taken[before.from + n] === true);
  if (labels.length !== 1 || !isTold) return null;
  return readingUnderHeading(frame, clause, {
    quantity: labels[0]!.quantity!,
    label: labels[0]!.at,
  });
}

/** `ph was 5.4, now 6.1`, `5.4 → 6.1`, `ph 5.8 and 6.1`: the second value of what was read last. `told`: in the order said. */
export function laterValue(frame: Frame, clause: Clause, told: readonly Fact[]): Fact | null {
  const last = told.at(-1);
  const quantity = quantityToRepeat(told);
  if (!last || quantity === null) return null;
  const at = onlyBareNumber(frame, clause);
  if (at === null || mayBeDosed(frame, at) || !isSecondValue(frame, clause, last, at)) return null;
  // `24 inside, the gutters were at 6.0`: what a system is named for is not of the air.
  if (belongsToGreenhouse(quantity) && frame.places.hasWhere(isName, last.at, at)) return null;
  if (quantity === 'level') return levelLikeBefore(frame, last, at);
  if (isBeforeDose(frame, clause, last, at)) {
    const fact = repeated(frame, quantity, at, 'how it was before the dose');
    return fact && { ...fact, phase: 'before' };
  }
  return repeated(frame, quantity, at, 'later value of the same');
}

/** `at 80 l, now 104 after topping up`: what is told behind the number is no word on what it is of. */
export function laterThan(frame: Frame, clause: Clause, told: readonly Fact[]): Fact | null {
  const at = onlyBareNumber(frame, clause);
  const earlier = at === null ? [] : told.filter((fact) => fact.at < at);
  return earlier.length === told.length ? null : laterValue(frame, clause, earlier);
}

/** `war bei 80 l, jetzt 104`: in the unit of volume that the level before it was told in. */
function levelLikeBefore(frame: Frame, { amount }: Fact, at: number): Fact | null {
  if (amount.kind !== 'measure' || !isVolume(amount.measure)) return null;
  const measure = { ...measureOf(frame, at), unit: amount.measure.unit };
  take(frame, at);
  return {
    quantity: 'level',
    amount: { kind: 'measure', measure },
    at,
    from: at,
    to: at,
    phase: 'after',
    because: 'later value of the same',
  };
}

/** A number without a label as one of that quantity, if it can be believed. */
export function repeated(
  frame: Frame,
  quantity: Quantity,
  at: number,
  because: string,
): Fact | null {
  const measure = measureOf(frame, at);
  const conversion = convert(quantity, measure, frame.context.greenhouse.units);
  if (!conversion || conversion.unitOpen || !isBelievable(quantity, conversion.values[0]!, null))
    return null;
  take(frame, at);
  return { quantity, amount: { kind: 'measure', measure }, at, from: at, to: at, because };
}

/** `jars were 5.3, 3 ml up, now 5.9`: before the dose stood a number that only the value after it tells what it is of. */
export function earlierValue(frame: Frame, later: Fact, told: readonly Fact[]): Fact | null {
  const dose = told.at(-1);
  if (dose?.quantity !== 'dose' || told.some(({ quantity }) => quantity === later.quantity))
    return null;
  const clause = wordsBefore(frame, dose.from);
  const at = clause ? onlyBareNumber(frame, clause) : null;
  if (!clause || at === null || !onlySmallWords(frame, clause, at, isName)) return null;
  return repeated(frame, later.quantity, at, 'earlier value of the same');
}

/** What its clause says before a term; the clause before, where it opens one. */
function wordsBefore(frame: Frame, i: number): Clause | null {
  let c = frame.clauseOf[i]!;
  if (frame.clauses[c]!.from < i) return { ...frame.clauses[c]!, to: i };
  do c--;
  while (c >= 0 && frame.clauses[c]!.from === frame.clauses[c]!.to);
  return frame.clauses[c] ?? null;
}

/** What was read last; but after a dose, what the dose changes: `now 5.8` after pH up can only be the pH. */
function quantityToRepeat(told: readonly Fact[]): Quantity | null {
  const last = told.at(-1);
  const read =
    told.findLast(({ quantity, amount }) => isReading(quantity) && amount.kind === 'measure')
      ?.quantity ?? null;
  if (last?.quantity !== 'dose') return last && isReading(last.quantity) ? read : null;
  if (last.product?.startsWith('ph-')) return 'ph';
  return read === 'ec' ? 'ec' : null;
}

function onlyBareNumber(frame: Frame, clause: Clause): number | null {
  let found: number | null = null;
  for (let i = clause.from; i < clause.to; i++) {
    if (!isMeasure(frame.terms[i]) || frame.taken[i] || !isBare(measureOf(frame, i))) continue;
    if (found !== null) return null;
    found = i;
  }
  return found;
}

function isSecondValue(frame: Frame, clause: Clause, last: Fact, at: number): boolean {
  if (isMark(frame.terms[at - 1], '→') || isArrow(frame, at - 1)) return true;
  if (clauseHas(frame, clause, 'now', 'before', 'after')) return true;
  // `3 ml up, then 5.8`: a whole number could be as many millilitres more.
  const isDose = last.quantity === 'dose';
  if (isDose && clause.opens === 'then')
    return measureOf(frame, at).decimals > 0 && onlySmallWords(frame, clause, at);
  if (isBeforeDose(frame, clause, last, at)) return true;
  if (isDose || clause.from <= last.at) return false;
  if (clauseHas(frame, clause, 'was') || means(frame.terms[at - 1], 'from')) return true;
  if (isOfAnotherProbe(frame, clause, at) || isReadWithAnother(frame, clause, last, at))
    return true;
  const timed = frame.timed.slice(clause.from, clause.to).includes(true);
  const isListed = timed || clause.opens === 'and' || isAnother(frame, clause, last, at);
  return isListed && onlySmallWords(frame, clause, at);
}

/** `5 ml ph down in the bench, was 6.5`: how it stood, so that it was dosed. */
function isBeforeDose(frame: Frame, clause: Clause, last: Fact, at: number): boolean {
  return (
    last.quantity === 'dose' &&
    clause.from > last.at &&
    measureOf(frame, at).decimals > 0 &&
    clauseHas(frame, clause, 'was') &&
    !clauseHas(frame, clause, 'now', 'after') &&
    onlySmallWords(frame, clause, at)
  );
}

/** `bench: ph 6.2, 6.3`: as like the value just read as another of it can be, and nothing says which holds. */
function isAnother(frame: Frame, { opens, from, to }: Clause, last: Fact, at: number): boolean {
  if (opens !== 'comma' && opens !== 'semicolon' && opens !== 'line') return false;
  const isOfRow = last.quantity === 'ph' || last.quantity === 'ec';
  if (!isOfRow && last.quantity !== 'water-temperature') return false;
  // `target ec is 2.4, it is at 2.1` says more than another number.
  const isAlone = frame.terms
    .slice(from, to)
    .every((term, n) => from + n === at || term.kind === 'mark' || means(term, 'about', 'ish'));
  return (
    isAlone &&
    isUsual(last.quantity, measureOf(frame, at)) &&
    frame.terms
      .slice(last.at + 1, from)
      .every((term) => term.kind === 'stop' || isPadding(term) || isLabel(term))
  );
}

/** `…, the new one says 5.9`: by something else that was read, which is not named again. */
function isOfAnotherProbe(frame: Frame, clause: Clause, at: number): boolean {
  const isOther = (term: Term): boolean => means(term, 'other-one', 'fresh', 'another');
  return (
    means(frame.terms[at - 1], 'link', 'read-as') &&
    frame.terms.slice(clause.from, at - 1).some((term) => isOther(term)) &&
    onlySmallWords(frame, clause, at, isOther)
  );
}

/** `ph 6.1 by the pen, 6.4 by the strip`, `1.25 with the stick, 1.31 with the old one`: as near to it as another reading of the same. */
function isReadWithAnother(
  frame: Frame,
  { opens, from, to }: Clause,
  last: Fact,
  at: number,
): boolean {
  if (opens !== 'comma' || at !== from || last.amount.kind !== 'measure') return false;
  const { terms } = frame;
  const isWith = means(terms[at + 1], 'with', 'by', 'place') && at + 2 < to;
  // `1.25 (pen a), 1.31 (pen b)`.
  const isBeside = at + 1 < to && isProbe(terms[at + 1]);
  if (!isWith && !isBeside) return false;
  const [first, second] = [last.amount.measure.values[0]!, measureOf(frame, at).values[0]!];
  const isNear = Math.max(first, second) <= mostApart * Math.min(first, second);
  return (
    isNear &&
    terms
      .slice(at + 2, to)
      .every(
        (term) =>
          means(
            term,
            'article',
            'instrument',
            'size',
            'fresh',
            'pronoun',
            'other-one',
            'another',
          ) ||
          isProbe(term) ||
          (isBeside && term.kind === 'word' && term.word.shyProduct !== null),
      )
  );
}

/** Two instruments that read one thing are not further apart. */
const mostApart = 1.3;

/** `6.9>6.3`: between two bare numbers it leads from one to the other. */
function isArrow({ terms }: Frame, i: number): boolean {
  const before = terms[i - 1];
  return terms[i]?.text === '>' && before?.kind === 'measure' && isBare(before.measure);
}

function onlySmallWords(
  frame: Frame,
  clause: Clause,
  at: number,
  passes: (term: Term) => boolean = () => false,
): boolean {
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (i !== at && !frame.timed[i] && !isPadding(term) && !passes(term)) return false;
  }
  return true;
}
