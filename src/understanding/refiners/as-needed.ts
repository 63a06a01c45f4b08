import type { Fact } from '../fact.ts';
import type { Mood } from '../moods/mood.ts';
import type { Measure } from '../numbers/measure.ts';
import { isBare, isVolume, litresFactor } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  isMeasure,
  measuresIn,
  namesIn,
} from '../reading/frame.ts';
import { isUnknown, means, type Term } from '../reading/term.ts';

/**
 * `bench needs 5 cans, gave it 2`: of what was needed, so cans as well; `needed 25 ml ph down, gave it that`, `only had
 * 2, so put those in`: as much as was told.
 */
export function withWhatWasNeeded(
  frame: Frame,
  facts: readonly Fact[],
  moods: readonly (Mood | null)[],
): Fact[] {
  if (!facts.some(({ at }) => isTalkedOf(moods[at]))) return [...facts];
  const inOrder = facts.toSorted((a, b) => a.at - b.at);
  const forClauses = new SpokenOf(inOrder, moods);
  const told = new Set(
    facts.flatMap(({ at, amount }) => (amount.kind === 'missing' ? [] : [frame.clauseOf[at]])),
  );
  const given = frame.clauses.flatMap((clause, c): Fact[] => {
    const verb = told.has(c) ? null : verbOfGiving(frame, clause, moods);
    return verb === null
      ? []
      : asMuchAsTold(verb, forClauses.before(verb), mayBeOrder(frame, c, verb));
  });
  const forFacts = new SpokenOf(inOrder, moods);
  const inUnits = inOrder.map((fact) => {
    if (!fact.bareVolume || moods[fact.at]) return fact;
    const { last } = forFacts.before(fact.at);
    return last ? ofWhatWasNeeded(fact, last) : fact;
  });
  return [...inUnits, ...given];
}

interface Spoken {
  /** The amount spoken of last, and nothing done since. */
  readonly last: Fact | null;
  /** The last of them that is told in a unit of volume. */
  readonly stuff: Fact | null;
}

/** What was needed, wanted or asked for by a place in the message; asked from its beginning to its end. */
class SpokenOf {
  private readonly facts: readonly Fact[];
  private readonly moods: readonly (Mood | null)[];
  private next = 0;
  private spoken: Spoken = nothing;

  constructor(facts: readonly Fact[], moods: readonly (Mood | null)[]) {
    this.facts = facts;
    this.moods = moods;
  }

  before(at: number): Spoken {
    for (; this.next < this.facts.length && this.facts[this.next]!.at < at; this.next++) {
      const fact = this.facts[this.next]!;
      const mood = this.moods[fact.at];
      if (isTalkedOf(mood) && fact.amount.kind === 'measure') {
        const stuff = litresOf(fact) === null ? this.spoken.stuff : fact;
        this.spoken = { last: fact, stuff };
      } else if (!mood) this.spoken = nothing;
    }
    return this.spoken;
  }
}

const nothing: Spoken = { last: null, stuff: null };

const talks: readonly (Mood | null | undefined)[] = ['intention', 'target', 'hearsay'];

function isTalkedOf(mood: Mood | null | undefined): boolean {
  return talks.includes(mood);
}

/** The bare amount, in the unit of what was needed and of the same product. */
function ofWhatWasNeeded(fact: Fact, needed: Fact): Fact {
  if (fact.amount.kind !== 'measure' || needed.amount.kind !== 'measure') return fact;
  const { unit } = needed.amount.measure;
  if (!unit || !isVolume(needed.amount.measure)) return fact;
  const { bareVolume: _bare, ...rest } = fact;
  const measure: Measure = { ...fact.amount.measure, unit };
  return { ...rest, ...sameStuff(needed), amount: { kind: 'measure', measure } };
}

function sameStuff({ quantity, product, doubt }: Fact): Partial<Fact> {
  if (quantity !== 'dose') return { quantity: 'top-up' };
  return {
    quantity,
    ...(product === undefined ? {} : { product }),
    ...(doubt?.kind === 'which-product' ? { doubt } : {}),
  };
}

/** `gave it that`, `put those in`, `hab die reingetan`: as much as was spoken of last. */
function asMuchAsTold(verb: number, { last, stuff }: Spoken, isUnsure: boolean): Fact[] {
  if (last?.amount.kind !== 'measure') return [];
  const { measure } = last.amount;
  if (!stuff || (stuff !== last && !isBare(measure))) return [];
  const told: Fact = {
    quantity: 'top-up',
    amount: { kind: 'measure', measure: isUnsure ? { ...measure, bound: true } : measure },
    at: verb,
    from: verb,
    to: verb,
    bareVolume: true,
    because: 'as much as was needed',
  };
  return [ofWhatWasNeeded(told, stuff)];
}

/** `needs 5 cans, put those in`: done, or to be done by whoever reads it; `i only had 2, put those in` was done. */
function mayBeOrder(frame: Frame, c: number, verb: number): boolean {
  if (!means(frame.terms[verb], 'may-be-order')) return false;
  const [before, clause] = [frame.clauses[Math.max(c - 1, 0)]!, frame.clauses[c]!];
  return !clauseHas(frame, { from: before.from, to: clause.to }, 'self');
}

function litresOf({ amount }: Fact): number | null {
  return amount.kind === 'measure' ? litresFactor(amount.measure) : null;
}

/** The verb of a clause that says of something told before that it was given, and nothing else. */
function verbOfGiving(
  frame: Frame,
  clause: Clause,
  moods: readonly (Mood | null)[],
): number | null {
  if (namesIn(frame, clause).length > 0 || measuresIn(frame, clause).length > 0) return null;
  const verb = frame.places.nextWhere(isGiving, clause.from);
  if (verb >= clause.to || moods[verb]) return null;
  let pointsBack = false;
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (i === verb || frame.timed[i]) continue;
    if (isUnknown(term) || isMeasure(term) || !isSmall(term)) return null;
    pointsBack ||= means(term, 'pronoun', 'article', 'both', 'all');
  }
  return pointsBack ? verb : null;
}

function isGiving(term: Term): boolean {
  return means(term, 'add') && !means(term, 'link', 'place', 'has');
}

function isSmall(term: Term): boolean {
  return means(term, 'self', 'filler', 'pronoun', 'article', 'place', 'link', 'both', 'all', 'now');
}
