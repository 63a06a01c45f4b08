import type { Fact } from '../fact.ts';
import type { Measure } from '../numbers/measure.ts';
import { litresFactor } from '../numbers/quantity-of-measure.ts';
import { clauseHas, type Frame, isMeasure, namesIn } from '../reading/frame.ts';
import { means } from '../reading/term.ts';

/** Parts told in round numbers may miss their total by this share of it. */
const MISS_SHARE = 0.02;

/**
 * `20 ml A in all, 10 dwc and 10 bench`, `of the 20 ml A 10 dwc and 10 bench`, `20 ml A, 10 dwc and 10 bench`: the
 * parts are what was given, and the total is none of them. A total said to be one is asked about where its parts do
 * not make it up.
 */
export function withParts(frame: Frame, facts: readonly Fact[]): Fact[] {
  // Each part has a system of its own: that bounds how far they reach.
  const reach = factsASystem * frame.context.greenhouse.systems.length;
  return facts.reduce<Fact[]>(
    (read, fact, at) => {
      if (!mayBeTotal(fact)) return read;
      const next = facts.slice(at + 1, at + 1 + reach);
      const parts = next.filter((other) => isPart(frame, other, fact));
      return isTotal(frame, fact, parts) ? parted(frame, read, fact, parts) : read;
    },
    [...facts],
  );
}

/** A part, and what is told beside it of the same system. */
const factsASystem = 3;

function parted(frame: Frame, facts: readonly Fact[], total: Fact, parts: readonly Fact[]): Fact[] {
  if (parts.length === 0) return [...facts];
  const { measure } = total.amount as { readonly measure: Measure };
  const makesUp = makeUp(frame, parts, total);
  return facts.flatMap((fact): Fact[] => {
    if (fact === total) return makesUp ? [] : [asked(total, measure)];
    if (!makesUp || !parts.includes(fact)) return [fact];
    const own = partOf(fact);
    const amount = {
      kind: 'measure' as const,
      measure: { ...own, unit: own.unit ?? measure.unit },
    };
    // What it is of, is told by the total unless by itself.
    if (fact.doubt == null) return [{ ...fact, amount }];
    const { at, from, to } = fact;
    return [{ ...total, amount, at, from, to, because: 'part of a total' }];
  });
}

/** Whether the parts, each of a system of its own, come to the total. */
function makeUp(frame: Frame, parts: readonly Fact[], total: Fact): boolean {
  const measure = partOf(total);
  const whole = measure.values[0] ?? 0;
  const sum = parts.reduce((held, part) => held + inUnitOf(measure, partOf(part)), 0);
  return (
    parts.every((part) => hasItsOwnSystem(frame, part, total)) &&
    Math.abs(sum - whole) <= MISS_SHARE * whole
  );
}

function asked(total: Fact, { written }: Measure): Fact {
  const { quantity } = total;
  return { ...total, doubt: { kind: 'shared-amount', quantity, amount: written } };
}

function mayBeTotal({ quantity, amount, each }: Fact): boolean {
  if (each || (quantity !== 'dose' && quantity !== 'top-up' && quantity !== 'level')) return false;
  if (amount.kind !== 'measure' || amount.measure.unit === null) return false;
  return litresFactor(amount.measure) !== null;
}

/** An amount that is said to be all of it, or that others after it come to. */
function isTotal(frame: Frame, fact: Fact, parts: readonly Fact[]): boolean {
  const clause = frame.clauses[frame.clauseOf[fact.from]!]!;
  if (clauseHas(frame, clause, 'in-all') || isTakenFrom(frame, fact)) return true;
  return parts.length > 1 && !hasItsOwnSystem(frame, fact, fact) && makeUp(frame, parts, fact);
}

/** `of the 20 ml`, `von den 20 ml`; no `from 60 to 90 l`. */
function isTakenFrom({ terms }: Frame, { from }: Fact): boolean {
  return means(terms[from - 1], 'article') && means(terms[from - 2], 'of', 'from');
}

/** A later amount of the same breath: of the same kind, or one that nothing else says the meaning of. */
function isPart(frame: Frame, fact: Fact, total: Fact): boolean {
  if (fact.at <= total.to || fact.amount.kind !== 'measure') return false;
  if (fact.doubt == null && fact.quantity !== total.quantity) return false;
  if (fact.product !== undefined && fact.product !== total.product) return false;
  const [first, own] = [total, fact].map(({ at }) => frame.clauses[frame.clauseOf[at]!]!);
  const { measure } = fact.amount;
  return (
    (own!.sentence === first!.sentence || own!.sentence === first!.sentence + 1) &&
    (measure.unit === null || litresFactor(measure) !== null)
  );
}

/** It stands in a clause with one system and, but for the total, no other amount. */
function hasItsOwnSystem(frame: Frame, { at }: Fact, total: Fact): boolean {
  const clause = frame.clauses[frame.clauseOf[at]!]!;
  const others = frame.places
    .within(isMeasure, clause.from, clause.to)
    .filter((i) => i !== at && (i < total.from || i > total.to));
  return others.length === 0 && namesIn(frame, clause).length === 1;
}

function partOf({ amount }: Fact): Measure {
  return (amount as { readonly measure: Measure }).measure;
}

/** A part in the total's unit, which it has unless it says another. */
function inUnitOf(total: Measure, part: Measure): number {
  const value = part.values[0] ?? 0;
  const factor = litresFactor(part);
  return factor === null ? value : (value * factor) / (litresFactor(total) ?? 1);
}
