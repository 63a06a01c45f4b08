import type { SystemId } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import { convert, isBelievable } from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure, measureOf } from '../reading/frame.ts';
import { isMark, means } from '../reading/term.ts';
import { quantityOf } from './labels.ts';
import { readingOf, type Slot, withLabelUnit } from './reading-fact.ts';

/**
 * `pH: Tisch 6,1, Wanne 5,8; EC: 2,4, 1,9`: one label, and as many values as systems were named before it, each in
 * its turn. As many as do not fit are asked about.
 */
export function rowsOfSystems(frame: Frame): Fact[] {
  const facts: Fact[] = [];
  for (let i = 0; i < frame.terms.length; i++) {
    const label = headOfRow(frame, i);
    if (!label) continue;
    const row = rowAfter(frame, label);
    if (row.length < 2) continue;
    const systems = namedBefore(frame, i);
    if (systems.length < 2) continue;
    if (systems.length !== row.length || !row.every((at) => isUsual(frame, label, at))) continue;
    for (const [n, at] of row.entries()) {
      frame.taken[label.at] = false;
      const clause = frame.clauses[frame.clauseOf[at]!]!;
      const fact = readingOf(frame, clause, label, at);
      if (fact) facts.push({ ...fact, from: at, to: at, inTurn: systems[n]! });
    }
    i = row.at(-1)!;
  }
  return facts;
}

/** A quantity's word that opens what it is said of: a clause, or behind a colon. */
function headOfRow(frame: Frame, i: number): Slot | null {
  const clause = frame.clauses[frame.clauseOf[i]!]!;
  if (i >= clause.to || frame.terms[i]!.kind !== 'word') return null;
  const isAnnounced = isMark(frame.terms[i + 1], ':', '=');
  const opens = isAnnounced && (i === clause.from || followsList(frame, i));
  const quantity = opens ? quantityOf(frame, clause, i) : null;
  return quantity === null ? null : { at: i, quantity };
}

/** `bench, buckets, gutters ph:`: nothing but the names before it in its sentence. */
function followsList(frame: Frame, i: number): boolean {
  const { sentence } = frame.clauses[frame.clauseOf[i]!]!;
  return frame.terms
    .slice(frame.sentences[sentence]![0]!.from, i)
    .every(
      (term) => term.kind === 'name' || term.kind === 'stop' || means(term, 'article', 'filler'),
    );
}

/** The bare numbers after the label with nothing but commas and the like between them, and no label after the last. */
function rowAfter(frame: Frame, label: Slot): number[] {
  const row: number[] = [];
  for (let i = label.at + 1; i < frame.terms.length; i++) {
    const term = frame.terms[i]!;
    const joins = term.kind === 'stop' && (term.cut === 'comma' || term.cut === 'and');
    if (isMeasure(term) && !frame.taken[i] && term.measure.unit === null) row.push(i);
    else if (!joins && !isMark(term, ':', '=', '/') && !means(term, 'link', 'about')) break;
  }
  const after = row.length > 0 ? row.at(-1)! + 1 : frame.terms.length;
  const clause = frame.clauses[frame.clauseOf[Math.min(after, frame.terms.length - 1)]!]!;
  const isOfNext = after < clause.to && quantityOf(frame, clause, after) !== null;
  return isOfNext || frame.terms[after]?.kind === 'name' ? [] : row;
}

/** The systems named up to there, each once and surely. */
function namedBefore(frame: Frame, to: number): readonly SystemId[] {
  const names = frame.terms.slice(0, to).flatMap((term) => (term.kind === 'name' ? [term] : []));
  const ids = names.flatMap(({ systems, sure }) => (sure && systems.length === 1 ? systems : []));
  return ids.length === names.length ? [...new Set(ids)] : [];
}

function isUsual(frame: Frame, { at, quantity }: Slot, number: number): boolean {
  const measure = withLabelUnit(frame, at, measureOf(frame, number));
  const conversion = convert(quantity!, measure, frame.context.greenhouse.units);
  return (
    conversion !== null &&
    !conversion.unitOpen &&
    isBelievable(quantity!, conversion.values[0]!, null)
  );
}
