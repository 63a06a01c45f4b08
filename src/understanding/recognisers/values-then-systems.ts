import type { SystemId } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import { isBare } from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { Slot } from './reading-fact.ts';
import { canBeOf, eachInTurn, labelAt } from './row-of-systems.ts';

/**
 * `ph 5.8, 5.9 and 6.0 for bench, buckets and gutters`, `5.8 5.9 in that order for bench buckets ph`: values first, and then as
 * many systems, each in its turn. Two that are joined by `and` alone are left to be asked about.
 */
export function valuesThenSystems(frame: Frame): Fact[] {
  const facts: Fact[] = [];
  let next = 0;
  for (const from of frame.places.within(isMeasure, 0, frame.terms.length)) {
    if (from < next) continue;
    next = endOfValues(frame, from);
    const row = rowFrom(frame, from, next);
    const label = row && labelOf(frame, row);
    if (!row || !label || !row.values.every((at) => canBeOf(frame, label, at))) continue;
    facts.push(...eachInTurn(frame, label, row.values, row.systems));
  }
  return facts;
}

interface Row {
  readonly values: readonly number[];
  readonly systems: readonly SystemId[];
  /** Behind the last name. */
  readonly end: number;
}

/** Behind a run of bare numbers and what joins them. */
function endOfValues({ terms, taken }: Frame, from: number): number {
  let end = from + 1;
  for (let i = from; i < terms.length; i++) {
    const term = terms[i]!;
    if (isMeasure(term) && isBare(term.measure) && !taken[i]) end = i + 1;
    else if (!isJoint(term)) break;
  }
  return end;
}

function rowFrom(frame: Frame, from: number, endOfRun: number): Row | null {
  const { terms } = frame;
  const values: number[] = [];
  let isInOrder = false;
  let i = from;
  for (; i < endOfRun; i++) {
    if (isMeasure(terms[i])) values.push(i);
    else isInOrder ||= isInTurn(terms[i]!);
  }
  if (values.length < 2) return null;
  for (; isLead(terms[i]); i++) isInOrder ||= isInTurn(terms[i]!);
  const systems: SystemId[] = [];
  let end = i;
  for (; i < terms.length; i++) {
    const term = terms[i]!;
    if (term.kind === 'name') {
      if (!term.sure || term.systems.length !== 1) return null;
      systems.push(term.systems[0]!);
      end = i + 1;
    } else if (!isJoint(term) && !isLead(term)) break;
    else isInOrder ||= isInTurn(term);
  }
  const fits = systems.length === values.length && new Set(systems).size === systems.length;
  const isPlain = values.length > 2 || isInOrder || terms[from + 1]!.kind === 'measure';
  return fits && isPlain ? { values, systems, end } : null;
}

/** Said before the values, or behind the last system. */
function labelOf(frame: Frame, { values, end }: Row): Slot | null {
  let before = values[0]! - 1;
  while (means(frame.terms[before], 'link', 'was', 'filler', 'about')) before--;
  const first = before < 0 ? null : labelAt(frame, before);
  const behind = end < frame.terms.length ? labelAt(frame, end) : null;
  // `ph 5.8 5.9 for bench buckets ec …`: the second leads on.
  return first ?? (behind && frame.terms[end + 1]?.kind !== 'measure' ? behind : null);
}

function isJoint(term: Term): boolean {
  return term.kind === 'stop' && (term.cut === 'comma' || term.cut === 'and');
}

function isInTurn(term: Term): boolean {
  return (term.kind === 'stop' && term.cut === 'comma') || means(term, 'respectively');
}

function isLead(term: Term | undefined): boolean {
  return means(term, 'place', 'for-somebody', 'article', 'respectively');
}
