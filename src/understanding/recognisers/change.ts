import type { Fact } from '../fact.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import { isBare, isVolume } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  measureOf,
  namesIn,
  take,
  takeRange,
} from '../reading/frame.ts';
import { isUnknown, means, type Term } from '../reading/term.ts';
import { namesOthers } from '../systems/names-others.ts';
import { litresOf } from './change-litres.ts';
import { isOnlyAdded } from './fresh-water.ts';
import { partChanged } from './part-changed.ts';

/** `changed the gutter reservoir, 118 l fresh`, `emptied and refilled the jars`: everything out, mixed new. */
export function recogniseChanges(frame: Frame): Fact[] {
  const facts: Fact[] = [];
  for (let c = 0; c < frame.clauses.length; c++) {
    const clause = frame.clauses[c]!;
    const part = partChanged(frame, c);
    if (part !== null) {
      facts.push(part);
      continue;
    }
    const refilled = emptiedAndRefilled(frame, c);
    const verb = changeIn(frame, clause) ?? refilled?.verb ?? null;
    if (verb === null) continue;
    const { at, last } = litresOf(frame, c, verb, refilled?.clause ?? c + 1);
    if (at !== null) take(frame, at);
    takeRange(frame, verb, verb + 1);
    const end = Math.max(verb, at ?? verb, clause.to - 1);
    const shape = {
      quantity: 'reservoir-change' as const,
      at: verb,
      from: Math.min(verb, at ?? verb),
      to: end,
      because: 'reservoir change',
    };
    const each = clauseHas(frame, clause, 'each') ? { each: true } : {};
    const told: Fact =
      at === null
        ? { amount: { kind: 'brim' }, approximate: true, ...shape }
        : { ...shape, ...amountAt(frame, at), ...each };
    const before = facts.at(-1);
    // `emptied the jars and refilled with fresh mix`: told twice, in other words.
    const isSame =
      before !== undefined && frame.clauseOf[before.at] === c - 1 && saysNoMore(frame, clause);
    if (!isSame) facts.push(told);
    else if (at !== null) facts[facts.length - 1] = { ...told, from: before.from };
    for (let i = clause.from; i < clause.to; i++)
      if (
        means(frame.terms[i], 'change', 'changed-solution', 'refill', 'empty-out', 'fresh', 'fill')
      )
        take(frame, i);
    takeRefills(frame, c, last);
  }
  return facts;
}

/** Names nothing else that could have been changed. */
function saysNoMore(frame: Frame, clause: Clause): boolean {
  return namesIn(frame, clause).length === 0 && !clauseHas(frame, clause, 'all', 'both', 'same');
}

/** `refilled 140`: in the greenhouse's unit of volume. */
function amountAt(frame: Frame, at: number): Pick<Fact, 'amount' | 'bareVolume'> {
  const measure = measureOf(frame, at);
  return { amount: { kind: 'measure', measure }, ...(isBare(measure) ? { bareVolume: true } : {}) };
}

/** The verbs of the clauses that the change has read are no top-ups. */
function takeRefills(frame: Frame, c: number, last: number): void {
  for (const clause of frame.clauses.slice(c, last + 1)) {
    for (let i = clause.from; i < clause.to; i++) {
      if (means(frame.terms[i], 'refill', 'fill', 'top-up', 'add', 'fresh', 'mixed'))
        take(frame, i);
    }
  }
}

function changeIn(frame: Frame, clause: Clause): number | null {
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i];
    if (frame.taken[i]) continue;
    const isChanged = means(term, 'changed-solution') && !followedByThing(frame, clause, i + 1);
    if (isChanged && !isOnlyAdded(frame, clause, i)) return i;
    if (means(term, 'change') && changesSolution(frame, clause, i)) return i;
  }
  return null;
}

/** What was changed: the solution, a reservoir, or a system by its bare name; never a system's lid. */
function changesSolution(frame: Frame, clause: Clause, verb: number): boolean {
  let named = false;
  if (isThing(frame.terms[verb - 1]) && verb > clause.from && !isObjectAfter(frame, clause, verb))
    return false;
  for (let i = verb + 1; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (means(term, 'to') && !named) return false;
    if (means(term, 'reservoir', 'solution')) return !followedByThing(frame, clause, i + 1);
    if (term.kind === 'name') named = true;
    else if (means(term, 'to') && named) return leadsToSolution(frame, clause, i);
    else if (means(term, 'place') && named) return true;
    else if (means(term, 'all', 'both') && !means(term, 'filler')) named = true;
    else if (means(term, 'article', 'fresh', 'of', 'place', 'whole') || term.kind === 'mark')
      continue;
    else if (
      means(
        term,
        'filler',
        'with',
        'today',
        'yesterday',
        'this',
        'last',
        'at',
        'now',
        'link',
        'each',
        'after',
        'self',
        'morning',
        'night',
        'tonight',
        'at-hour',
        'ago',
      )
    )
      break;
    else if (term.kind === 'measure' || term.kind === 'clock') break;
    else return false;
  }
  if (named) return true;
  if (!onlyAmountAfter(frame, clause, verb)) return false;
  return standsBefore(frame, clause, verb) || isMixedNew(frame, clause, verb);
}

/** `changed the jars to fresh solution`, `to 20 l`; not `to the other shelf`. */
function leadsToSolution(frame: Frame, clause: Clause, to: number): boolean {
  for (let i = to + 1; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (term.kind === 'measure' || means(term, 'solution', 'reservoir', 'fresh', 'brim'))
      return true;
    if (!means(term, 'article', 'about', 'filler')) return false;
  }
  return false;
}

/** `Tisch neu angesetzt: 580 l`: nothing after the verb that could have been changed instead. */
function onlyAmountAfter(frame: Frame, clause: Clause, verb: number): boolean {
  for (let i = verb + 1; i < clause.to; i++) {
    const term = frame.terms[i]!;
    const isAmount = term.kind === 'measure' && (isVolume(term.measure) || frame.taken[i] === true);
    const isSmall = means(term, 'filler', 'with', 'each', 'about', 'ish', 'now', 'in-all');
    if (!isAmount && !isSmall && term.kind !== 'mark' && frame.taken[i] !== true) return false;
  }
  return true;
}

/** `dwc changed`, `gutters: full change`, `die Lösung in der Wanne gewechselt`: nothing else that could have been changed. */
function standsBefore(frame: Frame, clause: Clause, verb: number): boolean {
  let named = false;
  for (let i = clause.from; i < verb; i++) {
    const term = frame.terms[i]!;
    if (term.kind === 'name' || means(term, 'reservoir', 'water')) named = true;
    else if (
      means(
        term,
        'pump',
        'venturi',
        'air-stones',
        'air-pump',
        'instrument',
        'buffer',
        'counted',
        'vessel',
      )
    )
      return false;
    else if (
      isUnknown(term) ||
      (term.kind === 'word' &&
        (term.word.product !== null || term.word.probe !== null || term.word.crop !== null))
    )
      return false;
  }
  return named;
}

/** `dwc rinsed and mixed new`: nothing but a solution is mixed, in what was named before. */
function isMixedNew(frame: Frame, clause: Clause, verb: number): boolean {
  const before = frame.clauses[frame.clauseOf[verb]! - 1];
  const joins = clause.opens === 'and' || clause.opens === 'comma' || clause.opens === 'then';
  return (
    verb === clause.from &&
    joins &&
    before !== undefined &&
    means(frame.terms[verb], 'refill') &&
    namesIn(frame, before).length > 0
  );
}

/** `air pump swapped on the left tub`: what was changed stands before the verb, and only its place after it. */
function isObjectAfter(frame: Frame, clause: Clause, verb: number): boolean {
  return verb + 1 < clause.to && !means(frame.terms[verb + 1], 'place');
}

function isThing(term: Term | undefined): boolean {
  return means(term, 'pump', 'venturi', 'air-stones', 'air-pump', 'instrument');
}

/** A noun after the system or the reservoir: `the bench filter`, `the reservoir lid`. */
function followedByThing(frame: Frame, clause: Clause, i: number): boolean {
  const after = i < clause.to ? frame.terms[i] : undefined;
  return (
    isUnknown(after) ||
    means(after, 'pump', 'venturi', 'air-stones', 'air-pump', 'instrument', 'buffer')
  );
}

/** `emptied the jars, scrubbed them and refilled them`: clauses of one deed; in which of them it was filled again. */
function emptiedAndRefilled(
  frame: Frame,
  c: number,
): { readonly verb: number; readonly clause: number } | null {
  const clause = frame.clauses[c]!;
  const emptied = inClause(
    frame,
    clause,
    (term, i) => means(term, 'empty-out') && !frame.taken[i],
  )[0];
  if (emptied === undefined || inClause(frame, clause, (term) => isUnknown(term)).length > 0)
    return null;
  const here = inClause(
    frame,
    clause,
    (term, i) => i > emptied && means(term, 'refill', 'fill', 'mixed'),
  )[0];
  if (here !== undefined) return { verb: emptied, clause: c + 1 };
  for (let d = c + 1; d < frame.clauses.length; d++) {
    const next = frame.clauses[d]!;
    const goesOn = next.opens === 'and' || next.opens === 'comma' || next.opens === 'then';
    if (!goesOn) return null;
    if (clauseHas(frame, next, 'refill', 'fill', 'fresh', 'mixed'))
      return namesOthers(frame, clause, next) ? null : { verb: emptied, clause: d };
    if (!isBetween(frame, next)) return null;
  }
  return null;
}

/** `, scrubbed them`, `, rinsed it well`: what else was done with the same system, and no amount. */
function isBetween(frame: Frame, clause: Clause): boolean {
  if (namesIn(frame, clause).length > 0) return false;
  return inClause(frame, clause, (term) => tellsOfElse(term)).length === 0;
}

function tellsOfElse(term: Term): boolean {
  return term.kind === 'measure' || isLabel(term) || means(term, 'top-up', 'add', 'not', 'did-not');
}
