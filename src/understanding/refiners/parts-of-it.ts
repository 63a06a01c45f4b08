import type { Fact } from '../fact.ts';
import type { Mood } from '../moods/mood.ts';
import type { Measure } from '../numbers/measure.ts';
import { isBare, litresFactor } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  type Frame,
  isMeasure,
  isPadding,
  namesIn,
  nextIn,
} from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';

/**
 * `topped up 20 l, 8 l of it in the dwc`: what went where is the part, and of the rest it is asked where it went.
 * `added 20 ml A to the bench, half of it was spilled`: how much went in, nobody has said.
 */
export function withPartsOfIt(
  frame: Frame,
  facts: readonly Fact[],
  moods: readonly (Mood | null)[],
): Fact[] {
  const plain = (fact: Fact) => moods[fact.at] === null;
  return frame.places
    .where(isOfIt)
    .reduce<Fact[]>((read, at) => partedAt(frame, read, at, plain), [...facts]);
}

function isOfIt(term: Term): boolean {
  return means(term, 'of-it');
}

function partedAt(
  frame: Frame,
  facts: readonly Fact[],
  ofIt: number,
  isPlain: (fact: Fact) => boolean,
): Fact[] {
  const clause = frame.clauses[frame.clauseOf[ofIt]!]!;
  const at = partAt(frame, clause, ofIt);
  if (at === null || tellsWhatItIs(frame, clause, Math.max(at, ofIt))) return [...facts];
  const totals = facts.filter((fact) => isPlain(fact) && isTotal(frame, fact, clause));
  if (totals.length === 0) return [...facts];
  const others = facts.filter((fact) => fact.at < clause.from || fact.at >= clause.to);
  const own = facts.filter((fact) => !others.includes(fact) && !isPart(fact, at));
  const parted = others.flatMap((fact) => (totals.includes(fact) ? inDoubt(fact) : [fact]));
  const [total] = totals;
  const split = totals.length === 1 && total ? splitAt(frame, total, clause, at) : null;
  const read = split
    ? [...others.flatMap((fact) => (fact === total ? [split.rest] : [fact])), split.part]
    : parted;
  return [...read, ...own].sort((a, b) => a.at - b.at);
}

/** `of which 8 l was rainwater` tells what it was, and not where it went. */
function tellsWhatItIs(frame: Frame, clause: Clause, last: number): boolean {
  const next = nextIn(frame, clause, last, isPadding);
  return next >= 0 && means(frame.terms[next], 'other-water', 'solution', 'fresh');
}

/** The amount before the words, or after them. */
function partAt(frame: Frame, clause: Clause, ofIt: number): number | null {
  const near = [ofIt - 1, ofIt + 1, ofIt + 2].find(
    (i) => i >= clause.from && i < clause.to && isMeasure(frame.terms[i]),
  );
  return near ?? null;
}

/** What was given in the same breath, or in the sentence before. */
function isTotal(frame: Frame, { quantity, amount, at }: Fact, clause: Clause): boolean {
  if (at >= clause.from || (quantity !== 'dose' && quantity !== 'top-up')) return false;
  const { sentence } = frame.clauses[frame.clauseOf[at]!]!;
  const isNear = sentence === clause.sentence || sentence === clause.sentence - 1;
  return isNear && amount.kind === 'measure' && litresFactor(amount.measure) !== null;
}

function isPart({ at, from, to }: Fact, part: number): boolean {
  return at === part || (from <= part && part <= to);
}

/** How much of it went in is asked; where something about it was asked before, that comes first. */
function inDoubt(total: Fact): Fact {
  return total.doubt == null ? { ...total, amount: { kind: 'missing' } } : total;
}

/** Only where the part is an amount that went into a system of its own, and of the total none was named. */
function splitAt(
  frame: Frame,
  total: Fact,
  clause: Clause,
  at: number,
): { readonly rest: Fact; readonly part: Fact } | null {
  const term = frame.terms[at];
  if (term?.kind !== 'measure' || term.measure.share || total.doubt != null) return null;
  const told = frame.clauses[frame.clauseOf[total.at]!]!;
  if (namesIn(frame, clause).length !== 1 || namesIn(frame, told).length > 0) return null;
  const { measure } = total.amount as { readonly measure: Measure };
  const value = inUnitOf(measure, term.measure);
  const left = measure.values[0]! - (value ?? Number.POSITIVE_INFINITY);
  if (value === null || left <= 0) return null;
  const ofPart: Measure = { ...measure, values: [value], written: term.text };
  const ofRest: Measure = { ...measure, values: [left] };
  return {
    part: { ...total, amount: { kind: 'measure', measure: ofPart }, at, from: at, to: at },
    rest: { ...total, amount: { kind: 'measure', measure: ofRest }, isOfOther: true },
  };
}

/** A part in the total's unit, which it has unless it says another. */
function inUnitOf(total: Measure, part: Measure): number | null {
  if (isBare(part)) return part.values[0]!;
  const [own, whole] = [litresFactor(part), litresFactor(total)];
  return own === null || whole === null ? null : (part.values[0]! * own) / whole;
}
