import type { SystemId } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import { convert, isBelievable } from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure, measureOf, take } from '../reading/frame.ts';
import { isMark, means, type Term } from '../reading/term.ts';
import { quantityOf } from './labels.ts';
import { readingOf, type Slot, withLabelUnit } from './reading-fact.ts';

/**
 * `pH: Tisch 6,1, Wanne 5,8; EC: 2,4, 1,9`, `bench, dwc: ph 6.1, 5.8, ec 2.2, 1.8`: one label, and as many values as
 * systems were named before it, each in its turn. Where a list of systems opens it, another count of values is
 * asked about.
 */
export function rowsOfSystems(frame: Frame): Fact[] {
  const facts: Fact[] = [];
  let last: { readonly list: List; readonly end: number } | null = null;
  for (let i = 0; i < frame.terms.length; i++) {
    const label = labelAt(frame, i);
    if (!label) continue;
    const list: List | null =
      last !== null && isOnlyStops(frame, last.end + 1, i) ? last.list : listBefore(frame, i);
    if (list === null && !isAnnounced(frame, i)) continue;
    const row = rowAfter(frame, label);
    if (row.length < 2) continue;
    const systems = namedBefore(frame, list?.from ?? 0, i);
    if (systems.length < 2 || !row.every((at) => canBeOf(frame, label, at))) continue;
    // `dwc and nft ph 5.8 and 6.1`: which one is right is asked for each of them.
    if (list?.isLoose && !leadsOn(frame, row)) continue;
    if (systems.length === row.length && !list?.isLoose)
      facts.push(...eachInTurn(frame, label, row, systems));
    else if (list !== null) facts.push(doesNotFit(frame, label, row));
    else continue;
    i = row.at(-1)!;
    last = list === null ? null : { list, end: i };
  }
  return facts;
}

/** The values, each of the system whose turn it is. */
export function eachInTurn(
  frame: Frame,
  label: Slot,
  row: readonly number[],
  systems: readonly SystemId[],
): Fact[] {
  return row.flatMap((at, n) => {
    frame.taken[label.at] = false;
    const clause = frame.clauses[frame.clauseOf[at]!]!;
    const fact = readingOf(frame, clause, label, at);
    return fact ? [{ ...fact, from: at, to: at, inTurn: systems[n]! }] : [];
  });
}

function doesNotFit(frame: Frame, label: Slot, row: readonly number[]): Fact {
  take(frame, label.at, ...row);
  return {
    quantity: label.quantity!,
    amount: { kind: 'missing' },
    at: row[0]!,
    from: row[0]!,
    to: row.at(-1)!,
    doubt: { kind: 'shorthand-does-not-fit' },
    because: 'another count of values than of systems',
  };
}

function isOnlyStops({ terms }: Frame, from: number, to: number): boolean {
  for (let i = from; i < to; i++) if (terms[i]!.kind !== 'stop') return false;
  return true;
}

/** The quantity that a word names, read or not. */
export function labelAt(frame: Frame, i: number): Slot | null {
  const clause = frame.clauses[frame.clauseOf[i]!]!;
  if (i >= clause.to || frame.terms[i]!.kind !== 'word') return null;
  const quantity = quantityOf(frame, clause, i);
  return quantity === null ? null : { at: i, quantity };
}

/** `EC: 2,4, 1,9`: it opens a clause, and a sign leads to its values. */
function isAnnounced({ terms, clauses, clauseOf }: Frame, i: number): boolean {
  return isMark(terms[i + 1], ':', '=') && i === clauses[clauseOf[i]!]!.from;
}

/** Names that are all its sentence says before a label. */
interface List {
  readonly from: number;
  /** Joined by `and` alone: whether each has its own value is not plain. */
  readonly isLoose: boolean;
}

/** `bench, buckets and gutters: ph`; null: something else is said before it. */
function listBefore(frame: Frame, i: number): List | null {
  const { sentence } = frame.clauses[frame.clauseOf[i]!]!;
  const { from } = frame.sentences[sentence]![0]!;
  let names = 0;
  let isLoose = true;
  for (let j = from; j < i; j++) {
    const term = frame.terms[j]!;
    if (term.kind === 'name') names++;
    else if (term.kind === 'stop') isLoose &&= term.cut !== 'comma';
    else if (isMark(term, ':', '=', '-', '/')) isLoose = false;
    else if (!isSmall(term)) return null;
  }
  return names > 0 ? { from, isLoose } : null;
}

/** `ph 6.2 and 5.8 ec 2.2 and 1.8`: another label stands behind the row. */
function leadsOn(frame: Frame, row: readonly number[]): boolean {
  const after = row.at(-1)! + 1;
  return after < frame.terms.length && labelAt(frame, after) !== null;
}

function isSmall(term: Term): boolean {
  return means(term, 'article', 'filler', 'place');
}

/** The bare numbers after the label with nothing but commas and the like between them, and no label after the last. */
function rowAfter(frame: Frame, label: Slot): number[] {
  const row: number[] = [];
  for (let i = label.at + 1; i < frame.terms.length; i++) {
    const term = frame.terms[i]!;
    const joins = term.kind === 'stop' && (term.cut === 'comma' || term.cut === 'and');
    const leads = row.length === 0 && means(term, 'link');
    if (isMeasure(term) && !frame.taken[i] && term.measure.unit === null) row.push(i);
    else if (!joins && !leads && !isMark(term, ':', '=', '/') && !means(term, 'about')) break;
  }
  const after = row.length > 0 ? row.at(-1)! + 1 : frame.terms.length;
  const clause = frame.clauses[frame.clauseOf[Math.min(after, frame.terms.length - 1)]!]!;
  const isOfNext =
    after < clause.to &&
    quantityOf(frame, clause, after) !== null &&
    !isMeasure(frame.terms[after + 1]) &&
    !isMark(frame.terms[after + 1], ':', '=');
  return isOfNext || isMoreOf(frame.terms[after]) ? [] : row;
}

/** `ph 6.0, 5.9 dwc`, `ph 6.1 was 5.9`: the last number is said of more than its turn. */
function isMoreOf(term: Term | undefined): boolean {
  return term?.kind === 'name' || means(term, 'was', 'now', 'before', 'after', 'to');
}

/** The systems named in between, each once and surely. */
function namedBefore(frame: Frame, from: number, to: number): readonly SystemId[] {
  const names = frame.terms.slice(from, to).flatMap((term) => (term.kind === 'name' ? [term] : []));
  const ids = names.flatMap(({ systems, sure }) => (sure && systems.length === 1 ? systems : []));
  return ids.length === names.length ? [...new Set(ids)] : [];
}

/** Whether a bare number can be of the label's quantity. */
export function canBeOf(frame: Frame, { at, quantity }: Slot, number: number): boolean {
  const measure = withLabelUnit(frame, at, measureOf(frame, number));
  const conversion = convert(quantity!, measure, frame.context.greenhouse.units);
  return (
    conversion !== null &&
    !conversion.unitOpen &&
    isBelievable(quantity!, conversion.values[0]!, null)
  );
}
