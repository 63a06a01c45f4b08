import type { Fact } from '../fact.ts';
import { isDeed, isLabel } from '../moods/clause-kinds.ts';
import { gramsFactor, isBare } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isMeasure,
  measureOf,
  measuresIn,
  namesIn,
  previousIn,
  take,
} from '../reading/frame.ts';
import { isCrop, isMark, means, type Term } from '../reading/term.ts';
import { systemOfCrop } from './devices.ts';

/** `picked 1.2 kg off the buckets`, `1.2 kg of cucumbers`: mass that was brought in. */
export function recogniseHarvests(frame: Frame): Fact[] {
  const { places, terms } = frame;
  if (!places.hasAny(['pick']) && !places.hasWhere(isMass, 0, terms.length)) return [];
  return withMassOfNext(frame, inEveryClause(frame));
}

function isMass(term: Term): boolean {
  return isMeasure(term) && gramsFactor(term.measure) !== null;
}

/** `picked the cucumbers, 1.8 kg`: the mass that was missing stands in the next clause. */
function withMassOfNext(frame: Frame, facts: readonly Fact[]): Fact[] {
  return facts.flatMap((fact, n): Fact[] => {
    const before = facts[n - 1];
    const next = facts[n + 1];
    if (fact.amount.kind === 'missing' && next && followsIt(frame, fact, next)) return [];
    if (
      before?.amount.kind === 'missing' &&
      before.byDevice !== undefined &&
      followsIt(frame, before, fact)
    )
      return [{ byDevice: before.byDevice, ...fact }];
    return [fact];
  });
}

function followsIt(frame: Frame, missing: Fact, next: Fact): boolean {
  const c = frame.clauseOf[missing.at]!;
  return (
    frame.clauseOf[next.at] === c + 1 &&
    frame.clauses[c + 1]!.opens === 'comma' &&
    next.from === missing.from
  );
}

function inEveryClause(frame: Frame): Fact[] {
  let spoken: number | null = null;
  let counted: Clause | null = null;
  return frame.clauses.flatMap((clause) => {
    const countedBefore: Clause | null = counted;
    counted = goesOnCounting(frame, clause, counted);
    const own = inClause(frame, clause, (term, i) => means(term, 'pick') && !frame.taken[i])[0];
    // `harvest: bench 1.5 kg, buckets 800 g`: the word goes on over names and masses.
    const goesOn = isNameAndMass(frame, clause) || isMoreCrop(frame, clause);
    const verb = own ?? (spoken !== null && goesOn ? spoken : undefined);
    spoken = own ?? (verb === undefined && clause.from < clause.to ? null : spoken);
    const isOfCount = countedBefore !== null && isMassAlone(frame, clause);
    const crops = inClause(frame, isOfCount ? countedBefore : clause, isCrop);
    if (isOfCount) take(frame, ...measuresIn(frame, countedBefore));
    else if (verb === undefined && !isBroughtIn(frame, clause, crops.length)) return [];
    if (clauseHas(frame, clause, 'money', 'vessel') && verb === undefined) return [];
    const masses = measuresIn(frame, clause).filter(
      (i) => gramsFactor(measureOf(frame, i)) !== null,
    );
    const system = crops.length === 1 ? systemOfCrop(frame, frame.terms[crops[0]!]) : null;
    const byDevice = system === null ? {} : { byDevice: system };
    const each = clauseHas(frame, clause, 'each') ? { each: true } : {};
    if (masses.length > 0) {
      take(frame, ...masses);
      return masses.map(
        (at): Fact => ({
          quantity: 'harvest',
          amount: { kind: 'measure', measure: measureOf(frame, at) },
          at,
          from: Math.min(verb ?? at, at),
          to: Math.max(verb ?? at, at),
          ...byDevice,
          ...each,
          because: 'harvest',
        }),
      );
    }
    return verb === undefined ? [] : withoutMass(frame, clause, verb, byDevice, crops.length > 0);
  });
}

/** The clause with the crop that masses after it are of: `14 cucumbers off the buckets, 4.2 kg`. */
function goesOnCounting(frame: Frame, clause: Clause, before: Clause | null): Clause | null {
  if (clause.from === clause.to || (before !== null && isMassAlone(frame, clause))) return before;
  const isPlain = inClause(frame, clause, isBesideCount).length === clause.to - clause.from;
  const isOfOne = inClause(frame, clause, isCrop).length === 1;
  return isPlain && isOfOne && measuresIn(frame, clause).every((i) => isCountOrMass(frame, i))
    ? clause
    : null;
}

/** `, 4.2 kg`, `and 350 g just now`: nothing else, and not so much of each. */
function isMassAlone(frame: Frame, clause: Clause): boolean {
  const masses = measuresIn(frame, clause).filter((i) => gramsFactor(measureOf(frame, i)) !== null);
  return (
    masses.length === 1 &&
    (clause.opens === 'comma' || clause.opens === 'and') &&
    !clauseHas(frame, clause, 'each') &&
    inClause(frame, clause, (term) => isMass(term) || isSaidOfMass(term)).length ===
      clause.to - clause.from
  );
}

function isBesideCount(term: Term): boolean {
  return (
    isMeasure(term) ||
    isCrop(term) ||
    term.kind === 'name' ||
    isMark(term, ':', '-') ||
    means(term, 'article', 'place', 'from') ||
    isSaidOfMass(term)
  );
}

function isSaidOfMass(term: Term): boolean {
  return means(
    term,
    'filler',
    'about',
    'in-all',
    'part-of-day',
    'yesterday',
    'evening',
    'morning',
    'today',
    'now',
    'just-now',
    'this',
  );
}

function isCountOrMass(frame: Frame, i: number): boolean {
  const measure = measureOf(frame, i);
  return gramsFactor(measure) !== null || (isBare(measure) && measure.whole);
}

/** Without a verb: a mass of a crop, or off a system. */
function isBroughtIn(frame: Frame, clause: Clause, crops: number): boolean {
  if (clauseHas(frame, clause, 'top-up', 'change', 'take-away', 'other-deed', 'money', 'unpicked'))
    return false;
  if (clauseHas(frame, clause, 'add'))
    return (
      (clauseHas(frame, clause, 'from') && (crops > 0 || namesIn(frame, clause).length > 0)) ||
      isYield(frame, clause, crops)
    );
  const names = namesIn(frame, clause);
  return (
    crops > 0 ||
    (names.length > 0 && clauseHas(frame, clause, 'from', 'place')) ||
    (names.length === 1 && isCalledByCrop(frame, names[0]!) && isNameAndMass(frame, clause))
  );
}

/** `strawberries 85 g`, of the Strawberry tower: its name is its crop's as well. */
function isCalledByCrop({ terms, lexicon }: Frame, name: number): boolean {
  const { text } = terms[name]!;
  return (lexicon.own.phrases.get([text])?.crop ?? null) !== null;
}

/** `bench gave us 3.4 kg of tomatoes`: the system gives, to somebody or of its crop. */
function isYield(frame: Frame, clause: Clause, crops: number): boolean {
  const verb = inClause(frame, clause, (term) => means(term, 'add'))[0]!;
  const subject = previousIn(frame, clause, verb, (term) => means(term, 'has', 'filler'));
  const receiver = frame.terms[verb + 1];
  return frame.terms[subject]?.kind === 'name' && (crops > 0 || means(receiver, 'self'));
}

/** `picked the jars`: how much is asked for; `picked 1.2` needs its unit. */
function withoutMass(
  frame: Frame,
  clause: Clause,
  verb: number,
  byDevice: Partial<Fact>,
  hasCrop: boolean,
): Fact[] {
  if (means(frame.terms[verb], 'other-deed', 'filler', 'take-away', 'link')) return [];
  const bare = measuresIn(frame, clause).find(
    (i) => isBare(measureOf(frame, i)) && !measureOf(frame, i).whole,
  );
  if (bare !== undefined) {
    take(frame, bare);
    return [
      {
        quantity: 'harvest',
        amount: { kind: 'measure', measure: measureOf(frame, bare) },
        at: bare,
        from: verb,
        to: bare,
        ...byDevice,
        because: 'harvest without unit',
      },
    ];
  }
  const named = namesIn(frame, clause).length > 0 || hasCrop;
  if (!named) return [];
  return [
    {
      quantity: 'harvest',
      amount: { kind: 'missing' },
      at: verb,
      from: verb,
      to: verb,
      ...byDevice,
      because: 'harvest without amount',
    },
  ];
}

/** `picked 1.2 kg of tomatoes and a handful of basil`: another crop, with no mass that could be logged. */
function isMoreCrop(frame: Frame, clause: Clause): boolean {
  return (
    clause.opens === 'and' &&
    inClause(frame, clause, isCrop).length > 0 &&
    !clauseHas(frame, clause, 'money', 'vessel') &&
    inClause(frame, clause, (term) => isDeed(term) || isLabel(term)).length === 0
  );
}

function isNameAndMass(frame: Frame, clause: Clause): boolean {
  const plain = inClause(
    frame,
    clause,
    (term) =>
      term.kind === 'name' ||
      isMeasure(term) ||
      term.kind === 'mark' ||
      means(term, 'article', 'place', 'from', 'filler', 'about', 'in-all', 'part-of-day') ||
      isCrop(term),
  );
  return (
    plain.length === clause.to - clause.from &&
    measuresIn(frame, clause).some((i) => gramsFactor(measureOf(frame, i)) !== null)
  );
}
