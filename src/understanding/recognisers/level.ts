import type { Fact } from '../fact.ts';
import { cmFactor, isVolume, unitIs } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isMeasure,
  isName,
  isPadding,
  measureOf,
  measuresIn,
  namesIn,
  nextIn,
  previousIn,
  take,
} from '../reading/frame.ts';
import { isMark, isUnknown, means, type Term } from '../reading/term.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { afterAmount, verbless } from './after-amount.ts';
import { fact } from './level-fact.ts';
import { fromBrim } from './level-from-brim.ts';
import { inWords, justLow } from './level-in-words.ts';
import { isByHowMuch, standsNow } from './level-moved-by.ts';
import { isHeightOfWater, isTalkOfLevel } from './level-talk.ts';
import { levelsMoved } from './levels-moved.ts';
import { noneLeft } from './none-left.ts';

/** How much is in a reservoir: in cm, per cent, words, litres left, or counted from the brim. */
export function recogniseLevels(frame: Frame, told: readonly Fact[]): Fact[] {
  return frame.clauses.flatMap((clause) => [
    ...levelsMoved(frame, clause),
    ...fromBrim(frame, clause).map(asItWas),
    ...noneLeft(frame, clause),
    ...measured(frame, clause).map(asItWas).map(besideChange).map(afterThat),
    ...inWords(frame, clause).map(afterThat),
    ...justLow(frame, clause),
  ]);

  /** `gave it 7 cans, it was down 10 cm`, `topped 8 l (was at 30 cm)`: before that was in it. */
  function asItWas(fact: Fact): Fact {
    const clause = frame.clauses[frame.clauseOf[fact.at]!]!;
    const isBefore =
      clauseHas(frame, clause, 'was') &&
      !clauseHas(frame, clause, 'after', 'now', 'then') &&
      told.some(({ quantity }) => quantity === 'top-up');
    return isBefore && fact.phase === undefined ? { ...fact, phase: 'before' } : fact;
  }

  /** `bench full again after 4 cans`: they are in it. */
  function afterThat(fact: Fact): Fact {
    const c = frame.clauseOf[fact.at]!;
    const isPoured = told.some(
      (other) => other.quantity === 'top-up' && frame.clauseOf[other.at] === c,
    );
    if (!isPoured || verbless(frame, frame.clauses[c]!) === null) return fact;
    return fact.phase === undefined ? { ...fact, phase: 'after' } : fact;
  }

  /** `changed the gutters, 3 l left over`: of what was mixed, as like as not, since it has just been filled. */
  function besideChange(fact: Fact): Fact {
    const isFilled = told.some(
      ({ quantity, amount }) => quantity === 'reservoir-change' && amount.kind === 'brim',
    );
    const isOver = isFilled && isOnlyLeftOver(frame, fact.at);
    const doubt = { kind: 'in-it-or-added', litres: 0 } as const;
    return isOver ? { ...fact, quantity: 'top-up', doubt } : fact;
  }
}

/** An amount that is left, in a clause of its own that names no system. */
function isOnlyLeftOver(frame: Frame, at: number): boolean {
  const clause = frame.clauses[frame.clauseOf[at]!]!;
  return (
    isVolume(measureOf(frame, at)) &&
    namesIn(frame, clause).length === 0 &&
    means(frame.terms[at + 1], 'left-over') &&
    !clauseHas(frame, clause, 'now', 'was', 'before', 'reservoir', 'solution')
  );
}

/** `level 52cm`, `bench 80 %`, `95 l left`, `there's 95 l in the dwc`, `dwc at 95 l`. */
function measured(frame: Frame, clause: Clause): Fact[] {
  const facts: Fact[] = [];
  for (const i of measuresIn(frame, clause)) {
    if (isByHowMuch(frame, clause, i)) {
      facts.push(...standsNow(frame, clause, i));
      continue;
    }
    const measure = measureOf(frame, i);
    const length = cmFactor(measure) !== null;
    const percent = unitIs(measure, 'percent');
    const volume = isVolume(measure);
    const labelled = labelFor(frame, clause, i);
    if (
      !length &&
      !percent &&
      !volume &&
      !(labelled !== null && (measure.share || measure.unit === null))
    )
      continue;
    if (percent && nearHumidity(frame, clause, i)) continue;
    if (labelled !== null) {
      take(frame, labelled);
      facts.push(
        fact(
          frame,
          i,
          { kind: 'measure', measure },
          'level',
          Math.min(labelled, i),
          Math.max(labelled, i),
        ),
      );
    } else if (saysWhatIsThere(frame, clause, i, volume) || isUnderHeading(frame, clause)) {
      facts.push(fact(frame, i, { kind: 'measure', measure }, 'level by its unit'));
    } else if (saysAgain(frame, facts.at(-1), i)) {
      facts.push(fact(frame, i, { kind: 'measure', measure }, 'level said again'));
    }
  }
  return facts;
}

/** `level 52 cm (390 l)`: the level before it in another unit. */
function saysAgain(frame: Frame, before: Fact | undefined, i: number): boolean {
  if (!before) return false;
  const between = frame.terms.slice(before.at + 1, i);
  return between.every((term) => isMark(term, '=') || means(term, 'that-is', 'about', 'level'));
}

/** `levels: bench 400 l, dwc 95 l`: the word stands before the first name and goes on over names and amounts. */
function isUnderHeading(frame: Frame, clause: Clause): boolean {
  const [first] = frame.places.where(isOpenLabel);
  if (first === undefined || frame.clauseOf[first]! >= frame.clauseOf[clause.from]!) return false;
  const name = frame.places.nextWhere(isName, 0);
  return (
    name > first &&
    name < frame.terms.length &&
    !frame.places.hasWhere(isNoListOfAmounts, first + 1, clause.to)
  );
}

function isNoListOfAmounts(term: Term): boolean {
  return !(term.kind === 'name' || term.kind === 'stop' || isMeasure(term) || isPadding(term));
}

function nearHumidity(frame: Frame, clause: Clause, i: number): boolean {
  return (
    inClause(frame, clause, (term, j) => means(term, 'humidity') && Math.abs(i - j) < 5).length > 0
  );
}

/** The word `level` that belongs to a number, before or after it. */
function labelFor(frame: Frame, clause: Clause, i: number): number | null {
  const skip = (term: Parameters<typeof isPadding>[0]) =>
    (isPadding(term) && !isOpenLabel(term)) ||
    term.kind === 'name' ||
    (means(term, 'place', 'down', 'full', 'between') && !isOpenLabel(term));
  const before = previousIn(frame, clause, i, skip);
  if (before >= 0 && isOpenLabel(frame.terms[before]!) && !frame.taken[before]) return before;
  const after = nextIn(
    frame,
    clause,
    i,
    (term) => means(term, 'article', 'filler') && !isOpenLabel(term),
  );
  if (after < 0 || !isOpenLabel(frame.terms[after]!) || frame.taken[after]) return null;
  // `21 level 95 l`: the word belongs to the number after it.
  const then = nextIn(frame, clause, after, skip);
  return then >= 0 && isMeasure(frame.terms[then]) ? null : after;
}

function isOpenLabel(term: Parameters<typeof isPadding>[0]): boolean {
  return means(term, 'level');
}

/** By its unit alone: cm and per cent of a named system; litres only where they are said to be there. */
function saysWhatIsThere(frame: Frame, clause: Clause, i: number, volume: boolean): boolean {
  const after = i + 1 < clause.to ? frame.terms[i + 1] : undefined;
  if (volume && means(after, 'left-over') && !means(frame.terms[i + 2], 'do'))
    return !isOfVessel(frame, clause, i) && !isLeftFor(frame, clause, i + 2);
  if (clauseHas(frame, clause, 'take-away', 'capacity', 'other-deed')) return false;
  if (volume && clauseHas(frame, clause, 'beside')) {
    if (namesIn(frame, clause).some((name) => isBeside(frame, clause, name))) return false;
  }
  if (volume)
    return (
      (clauseHas(frame, clause, 'there-is') && !isWhereItWent(frame, clause, whereTo)) ||
      isStillThere(frame, clause, i) ||
      isStandBefore(frame, clause, i) ||
      i < (afterAmount(frame, clause) ?? 0) ||
      isStandingAt(frame, clause, i) ||
      (isNow(frame, i) && !isAmountsByTime(frame, clause) && !isDoneByIt(frame, clause, i))
    );
  if (!isTalkOfLevel(frame, clause)) return false;
  if (means(after, 'left-over')) return true;
  if (means(after, 'deep')) return true;
  const named = namesIn(frame, clause).length > 0 || frame.places.hasWhere(isName, 0, clause.from);
  const isSize = clauseHas(frame, clause, 'size') && !isHeightOfWater(frame, clause);
  return named && !isSize && !clauseHas(frame, clause, 'humidity');
}

/** `half a can left, the rest went in the dwc`: of a container, where its clause names no system. */
function isOfVessel(frame: Frame, clause: Clause, i: number): boolean {
  const { unit } = measureOf(frame, i);
  return unit !== null && 'litres' in unit && namesIn(frame, clause).length === 0;
}

/** `3 cans left for the bench`: what is to go there. */
function isLeftFor({ terms }: Frame, clause: Clause, i: number): boolean {
  return i < clause.to && means(terms[i], 'for-somebody') && means(terms[i], 'place');
}

/** `gutters still 110 l`, `…, still 110 l`: of a system that was named, and in no vessel. */
function isStillThere(frame: Frame, clause: Clause, i: number): boolean {
  const isNamed = frame.places.lastWhere(isName, i) >= 0;
  const isLast = i + 1 === clause.to;
  return (
    isNamed &&
    isLast &&
    means(frame.terms[i - 1], 'still-there') &&
    !clauseHas(frame, clause, 'vessel')
  );
}

/** `300 l before topping up`, `before 90 l, now 105 l`: how it stood, of a system that was named. */
function isStandBefore(frame: Frame, clause: Clause, i: number): boolean {
  if (frame.places.lastWhere(isName, i) < 0 || clauseHas(frame, clause, 'vessel')) return false;
  const [before, after, deed] = [frame.terms[i - 1], frame.terms[i + 1], frame.terms[i + 2]];
  const leadsDeed = i + 2 < clause.to && means(deed, 'top-up', 'add', 'fill', 'refill');
  if (leadsDeed && means(after, 'before')) return true;
  const next = frame.clauses[frame.clauseOf[i]! + 1];
  const isLed = i > clause.from && means(before, 'before') && i + 1 === clause.to;
  return isLed && next !== undefined && clauseHas(frame, next, 'now', 'after');
}

/** `topped up 5 l this morning and 4 l now`: now as well as at the time before. */
function isAmountsByTime(frame: Frame, clause: Clause): boolean {
  const before = frame.clauses[frame.clauseOf[clause.from]! - 1];
  return (
    clause.opens === 'and' &&
    before !== undefined &&
    frame.timed.slice(before.from, before.to).includes(true) &&
    clauseHas(frame, before, 'top-up', 'add', 'fill')
  );
}

/** `the dwc takes 12 l now`, `drinks 12 l now`: what the system does, and not what is in it. */
function isDoneByIt(frame: Frame, clause: Clause, i: number): boolean {
  const name = frame.places.lastWhere(isName, i);
  if (name < clause.from) return false;
  return frame.terms
    .slice(name + 1, i)
    .some(
      (term) =>
        isUnknown(term) ||
        (means(term, 'use', 'took', 'could', 'is-it', 'take-away', 'add') &&
          !means(term, 'link', 'has')),
    );
}

/** `95 l now`, `now 95 l`: after something was poured, where it stands; not `a can now`, `12 l just now`. */
function isNow(frame: Frame, i: number): boolean {
  const { unit } = measureOf(frame, i);
  if (unit !== null && 'litres' in unit) return false;
  const isOnlyNow = (term: Parameters<typeof means>[0]) =>
    means(term, 'now') && means(term, 'just-now') && !means(term, 'moment-ago');
  return isOnlyNow(frame.terms[i + 1]) || isOnlyNow(frame.terms[i - 1]);
}

/** `dwc at 95 l`, `bench is down to 300 l`, `jars have 18 l`: a state, tied to its system by a verb. */
function isStandingAt(frame: Frame, clause: Clause, i: number): boolean {
  if (clauseHas(frame, clause, 'top-up', 'fill', 'refill', 'pick')) return false;
  // `total for the gutters is 2 jugs today`: what was given in all, as like as not.
  const { unit } = measureOf(frame, i);
  const isOfVessels = unit !== null && 'litres' in unit;
  if (isOfVessels && clauseHas(frame, clause, 'in-all')) return false;
  // `did the jars with 3 l`: what was given, as like as not.
  if (clauseHas(frame, clause, 'did', 'done') && means(frame.terms[i - 1], 'with')) return false;
  let j = i - 1;
  let tied = false;
  while (
    j >= clause.from &&
    (isPadding(frame.terms[j]!) || means(frame.terms[j], 'place', 'to', 'has', 'down'))
  ) {
    const term = frame.terms[j]!;
    const isVerb = means(term, 'link') && (means(term, 'is-it') || !means(term, 'filler'));
    if (means(term, 'at', 'has', 'was') || (isVerb && !means(term, 'add', 'of'))) tied = true;
    j--;
  }
  const after = i + 1 < clause.to ? frame.terms[i + 1] : undefined;
  // `hat 12 l gezogen`: what it did, and not what is in it.
  const isDeedOfIts = isUnknown(after) || means(after, 'took', 'use', 'need', 'take-away');
  if (isDeedOfIts && !means(after, 'now') && after === frame.terms[clause.to - 1]) return false;
  // `in den Gläsern sind 18 l` tells what is there, `in den Tisch waren es 20 l` may tell what was poured.
  const mayHaveGone = clauseHas(frame, clause, 'was') ? orWhere : whereTo;
  if (isWhereItWent(frame, clause, mayHaveGone)) return false;
  if (tied && j < clause.from) return standsOfItself(frame, clause, i);
  return tied && j >= clause.from && frame.terms[j]!.kind === 'name';
}

/** `neben der Wanne stehen 20 l`: by the system, and not in it. */
function isBeside({ terms }: Frame, { from }: Clause, name: number): boolean {
  const lead =
    means(terms[name - 1], 'article') && !means(terms[name - 1], 'beside') ? name - 2 : name - 1;
  return lead >= from && means(terms[lead], 'beside');
}

/** `3 Kannen in den Tisch, steht jetzt auf 400 l`: of the system that its sentence has named before. */
function standsOfItself({ places, sentences, terms }: Frame, clause: Clause, i: number): boolean {
  if (!means(terms[i - 1], 'at', 'now')) return false;
  const start = sentences[clause.sentence]![0]!.from;
  const saysStand = terms
    .slice(clause.from, clause.to)
    .some((term) => means(term, 'stands') || (means(term, 'at') && means(term, 'read-as')));
  return saysStand && places.lastWhere(isName, clause.from) >= start;
}

const whereTo: readonly Concept[] = ['where-to'];
const orWhere: readonly Concept[] = ['where-to', 'where-or-where-to'];

/** `into the bench it was 20 l`, `in die Wanne waren es 20 l`: the system that it went into. */
function isWhereItWent(frame: Frame, clause: Clause, saying: readonly Concept[]): boolean {
  const { terms } = frame;
  const [name] = namesIn(frame, clause);
  if (name === undefined) return false;
  const lead = means(terms[name - 1], 'article') ? name - 2 : name - 1;
  if (lead < clause.from || !means(terms[lead], 'place')) return false;
  return means(terms[lead], ...saying) || means(terms[name - 1], ...saying);
}
