import type { Danger } from '../../greenhouse/entry.ts';
import { isDeed, isLabel } from '../moods/clause-kinds.ts';
import type { Mood } from '../moods/mood.ts';
import { isVolume } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  measuresIn,
  nextIn,
  previousIn,
  take,
} from '../reading/frame.ts';
import { isCrop, means, type Term } from '../reading/term.ts';
import { productAt } from '../recognisers/products.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { isExplained } from './explained-water.ts';

/** What may hurt somebody, and the term that tells it. */
export interface DangerFound {
  readonly of: Danger;
  readonly at: number;
}

/**
 * `bench leaking`, `smoke from the pump`, `acid in my eye`: what a clause plainly says to be dangerous, whatever
 * else it tells; null where nothing is, or it is denied, asked, supposed, heard, or over.
 */
export function dangerIn(
  frame: Frame,
  clause: Clause,
  moods: readonly (Mood | null)[],
): DangerFound | null {
  const found = namedIn(frame, clause);
  if (!found || !isPlain(frame, clause, found.at, moods[found.at] ?? null)) return null;
  if (isDenied(frame, clause, found.at) || isOver(frame, clause, found.at)) return null;
  return found.of === 'leak' && isExplained(frame, found.at) ? null : found;
}

/** `what do I do if the bench leaks`: somebody wants to know what to do about it, before or after it happens. */
export function dangerAskedIn(frame: Frame): Danger | null {
  const asksWhat = frame.clauses.some((clause) =>
    clauseHas(frame, clause, 'what', 'how', 'due', 'job', 'need', 'do'),
  );
  if (!asksWhat) return null;
  for (const clause of frame.clauses) {
    const found = namedIn(frame, clause);
    if (found) return found.of;
  }
  return null;
}

/** Moods that leave a danger as real as it is: said in passing, or forgotten to be said. */
const STILL_REAL: ReadonlySet<Mood | null> = new Set([
  null,
  'not-a-reading',
  'target',
  'forgotten',
  'others',
]);

function isPlain(frame: Frame, clause: Clause, at: number, mood: Mood | null): boolean {
  // `leckt da was?` against `the bench is leaking what do I do?`.
  const end = clause.to - 1;
  const asksMore = frame.places.has('what', at, end) || frame.places.has('how', at, end);
  if (clause.closes === 'question' && (clause.from === at || !asksMore)) return false;
  if (STILL_REAL.has(mood)) return true;
  // `smoke coming out of the socket`, `leaking, I'll switch it off`: what is to come comes after.
  if (mood === 'intention') return !frame.places.has('intention', clause.from, at);
  return mood === 'question' && isToldBeforeAsking(frame, clause, at);
}

/** `the bench is leaking, what do I do?`: told, and then something is asked about it. */
function isToldBeforeAsking(frame: Frame, clause: Clause, at: number): boolean {
  const next = frame.clauses[(frame.clauseOf[clause.from] ?? 0) + 1];
  if (!next || clause.closes === 'question' || !clauseHas(frame, next, 'what', 'how')) return false;
  const opens = frame.terms[clause.from];
  return clause.from !== at && !means(opens, 'is-it', 'what', 'how', 'condition');
}

/** `5 litres of water on the floor`: how bad it is, and no reading of anything. */
export function takeDangerAmounts(frame: Frame, moods: readonly (Mood | null)[]): void {
  for (const clause of frame.clauses) {
    if (!dangerIn(frame, clause, moods)) continue;
    const tells = inClause(frame, clause, (term) => isDeed(term) || isLabel(term));
    if (tells.length === 0) take(frame, ...measuresIn(frame, clause));
  }
}

/** One of these is said where anything dangerous is. */
const ofDanger: readonly Concept[] = [
  'shock',
  'burning',
  'burnt-by-it',
  'spilling',
  'on-body',
  'on-floor',
  'leak',
  'wet',
  'beneath',
];

/** The worst first. */
function namedIn(frame: Frame, clause: Clause): DangerFound | null {
  if (!frame.places.hasAny(ofDanger)) return null;
  const first = (...concepts: readonly Concept[]): number =>
    inClause(frame, clause, (term) => means(term, ...concepts))[0] ?? -1;
  const ofPlants = inClause(frame, clause, (term) => isCrop(term) || means(term, 'plant-part'));
  const shock = first('shock');
  if (shock >= 0 && ofPlants.length === 0) return { of: 'shock', at: shock };
  const burning = first('burning');
  if (burning >= 0) return { of: 'fire', at: burning };
  const spill = spilledIn(frame, clause);
  if (spill >= 0) return { of: 'spill', at: spill };
  const leak = first('leak');
  if (leak >= 0) return { of: 'leak', at: leak };
  const wet = wetFloorIn(frame, clause);
  if (wet >= 0 && ofPlants.length === 0) return { of: 'leak', at: wet };
  const floor = first('on-floor');
  const isWater = measuresOfWater(frame, clause) && !clauseHas(frame, clause, 'take-away');
  return floor >= 0 && isWater ? { of: 'leak', at: floor } : null;
}

/** `floor under the bench is wet`, `da steht Wasser unter der Wanne`; -1: neither. */
function wetFloorIn(frame: Frame, clause: Clause): number {
  const [wet = -1] = inClause(frame, clause, (term) => means(term, 'wet'));
  if (wet >= 0 && clauseHas(frame, clause, 'floor')) return wet;
  const [lies = -1] = inClause(frame, clause, (term) => means(term, 'water', 'wet'));
  const isTold = inClause(frame, clause, (term) => term.kind === 'measure' || isDeed(term));
  if (lies < 0 || isTold.length > 0) return -1;
  const isBeneath = inClause(frame, clause, (term, i) => {
    const next = frame.terms[nextIn(frame, clause, i, (each) => means(each, 'article'))];
    return means(term, 'beneath') && next?.kind === 'name';
  });
  return isBeneath.length > 0 ? lies : -1;
}

/** `5 litres on the floor`. */
function measuresOfWater(frame: Frame, clause: Clause): boolean {
  return (
    inClause(frame, clause, (term) => term.kind === 'measure' && isVolume(term.measure)).length >
      0 && inClause(frame, clause, isDeed).length === 0
  );
}

/** Strong stuff out of its bottle, or any product on the skin, in an eye or swallowed; -1: none. */
function spilledIn(frame: Frame, clause: Clause): number {
  const at = (test: (term: Term, i: number) => boolean): number =>
    inClause(frame, clause, test)[0] ?? -1;
  const burnt = at((term) => means(term, 'burnt-by-it'));
  if (burnt >= 0) return burnt;
  const strong = at(
    (term, i) => means(term, 'caustic') || productAt(frame, i)?.startsWith('ph-') === true,
  );
  const onBody = at((term) => means(term, 'on-body'));
  const stuff = strong >= 0 ? strong : at((_, i) => productAt(frame, i) !== null);
  if (onBody >= 0 && stuff >= 0) return onBody;
  return strong >= 0 ? at((term) => means(term, 'spilling', 'on-floor')) : -1;
}

/** `no leaks`, `not leaking`, `leckt nicht mehr`: the denial stands right before it, or ends the clause after it. */
function isDenied(frame: Frame, clause: Clause, at: number): boolean {
  const isNot = (i: number): boolean => i >= 0 && isNotTerm(frame.terms[i]!);
  const isPadded = (term: Term): boolean =>
    means(term, 'article', 'filler', 'another', 'was', 'link', 'now') && !isNotTerm(term);
  const before = previousIn(frame, clause, at, isPadded);
  const after = nextIn(frame, clause, at, isPadded);
  return isNot(before) || (isNot(after) && clause.to - after <= 2);
}

function isNotTerm(term: Term): boolean {
  return means(term, 'no', 'not', 'did-not');
}

/** `fixed the leak`, `mopped up the water on the floor`, `leak is gone`, `stopped leaking`. */
function isOver(frame: Frame, clause: Clause, at: number): boolean {
  const isPadded = (term: Term): boolean => means(term, 'was', 'filler', 'now', 'link');
  const beside = [nextIn(frame, clause, at, isPadded), previousIn(frame, clause, at, isPadded)];
  if (beside.some((i) => means(frame.terms[i], 'ceased'))) return true;
  // `the drippers are dripping fine`: as they should.
  const next = frame.terms[at + 1];
  if (means(next, 'all-good') || (means(next, 'judged') && means(next, 'filler'))) return true;
  if (frame.places.has('intention', clause.from, at)) return true;
  return clauseHas(frame, clause, 'other-deed', 'clean', 'all-good', 'condition');
}
