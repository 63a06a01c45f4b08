import type { Fact } from '../fact.ts';
import type { Mood } from '../moods/mood.ts';
import type { Measure } from '../numbers/measure.ts';
import { isBare, isVolume, litresFactor } from '../numbers/quantity-of-measure.ts';
import { type Clause, type Frame, isMeasure, measuresIn, namesIn } from '../reading/frame.ts';
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
  const needed = facts.filter(
    ({ at, amount }) => isTalkedOf(moods[at]) && amount.kind === 'measure',
  );
  if (needed.length === 0) return [...facts];
  const before = (at: number): Fact | undefined => {
    const told = needed.findLast((fact) => fact.at < at);
    // What was done since is no more of what was needed.
    const isOver = facts.some(
      (fact) => !moods[fact.at] && fact.at > (told?.at ?? 0) && fact.at < at,
    );
    return isOver ? undefined : told;
  };
  const given = frame.clauses.flatMap((clause) =>
    givenAsTold(frame, clause, moods, facts, needed, before),
  );
  const inUnits = facts.map((fact) => {
    const told = fact.bareVolume && !moods[fact.at] ? before(fact.at) : undefined;
    return told ? ofWhatWasNeeded(fact, told) : fact;
  });
  return [...inUnits, ...given];
}

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
function givenAsTold(
  frame: Frame,
  clause: Clause,
  moods: readonly (Mood | null)[],
  facts: readonly Fact[],
  needed: readonly Fact[],
  before: (at: number) => Fact | undefined,
): Fact[] {
  const verb = verbOfGiving(frame, clause, moods);
  if (
    verb === null ||
    facts.some((fact) => frame.clauseOf[fact.at] === frame.clauseOf[verb] && !isOpen(fact))
  )
    return [];
  const last = before(verb);
  if (last?.amount.kind !== 'measure') return [];
  const { measure } = last.amount;
  const stuff = isBare(measure)
    ? needed.findLast((fact) => fact.at < last.at && litresOf(fact) !== null)
    : last;
  if (!stuff || litresOf(stuff) === null) return [];
  const told: Fact = {
    quantity: 'top-up',
    amount: { kind: 'measure', measure },
    at: verb,
    from: verb,
    to: verb,
    bareVolume: true,
    because: 'as much as was needed',
  };
  return [ofWhatWasNeeded(told, stuff)];
}

function isOpen({ amount }: Fact): boolean {
  return amount.kind === 'missing';
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
  const isVerb = (term: Term): boolean =>
    means(term, 'add') && !means(term, 'link', 'place', 'has');
  const verb = frame.terms.findIndex(
    (term, i) => i >= clause.from && i < clause.to && isVerb(term),
  );
  if (verb < 0 || moods[verb]) return null;
  let pointsBack = false;
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (i === verb || frame.timed[i]) continue;
    if (isUnknown(term) || isMeasure(term) || !isSmall(term)) return null;
    pointsBack ||= means(term, 'pronoun', 'article', 'both', 'all');
  }
  return pointsBack ? verb : null;
}

function isSmall(term: Term): boolean {
  return means(term, 'self', 'filler', 'pronoun', 'article', 'place', 'link', 'both', 'all', 'now');
}
