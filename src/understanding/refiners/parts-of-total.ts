import type { Fact } from '../fact.ts';
import type { Measure } from '../numbers/measure.ts';
import { litresFactor } from '../numbers/quantity-of-measure.ts';
import { clauseHas, type Frame, isMeasure, namesIn } from '../reading/frame.ts';

/** Parts told in round numbers may miss their total by this share of it. */
const MISS_SHARE = 0.02;

/**
 * `20 ml A in all, 10 dwc and 10 bench`: the parts are what was given, and the total is none of them. A total
 * whose parts do not make it up is asked about.
 */
export function withParts(frame: Frame, facts: readonly Fact[]): Fact[] {
  return facts.reduce<Fact[]>(
    (read, fact) => (isTotal(frame, fact) ? parted(frame, read, fact) : read),
    [...facts],
  );
}

function parted(frame: Frame, facts: readonly Fact[], total: Fact): Fact[] {
  const parts = facts.filter((fact) => isPart(frame, fact, total));
  if (parts.length === 0) return [...facts];
  const { measure } = total.amount as { readonly measure: Measure };
  const whole = measure.values[0] ?? 0;
  const sum = parts.reduce((held, part) => held + inUnitOf(measure, partOf(part)), 0);
  const makesUp =
    parts.every((part) => hasItsOwnSystem(frame, part)) &&
    Math.abs(sum - whole) <= MISS_SHARE * whole;
  return facts.flatMap((fact): Fact[] => {
    if (fact === total) return makesUp ? [] : [asked(total, measure)];
    if (!makesUp || !parts.includes(fact)) return [fact];
    const own = partOf(fact);
    const amount = {
      kind: 'measure' as const,
      measure: { ...own, unit: own.unit ?? measure.unit },
    };
    const { at, from, to } = fact;
    return [{ ...total, amount, at, from, to, because: 'part of a total' }];
  });
}

function asked(total: Fact, { written }: Measure): Fact {
  const { quantity } = total;
  return { ...total, doubt: { kind: 'shared-amount', quantity, amount: written } };
}

/** An amount beside which it says that it is all of it. */
function isTotal(frame: Frame, { quantity, amount, from, each }: Fact): boolean {
  if (each || (quantity !== 'dose' && quantity !== 'top-up' && quantity !== 'level')) return false;
  if (amount.kind !== 'measure' || amount.measure.unit === null) return false;
  const clause = frame.clauses[frame.clauseOf[from]!]!;
  return clauseHas(frame, clause, 'in-all') && litresFactor(amount.measure) !== null;
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

/** It stands in a clause with one system and no other amount. */
function hasItsOwnSystem(frame: Frame, { at }: Fact): boolean {
  const clause = frame.clauses[frame.clauseOf[at]!]!;
  const measures = frame.terms.slice(clause.from, clause.to).filter((term) => isMeasure(term));
  return measures.length === 1 && namesIn(frame, clause).length === 1;
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
