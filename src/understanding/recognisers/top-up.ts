import type { Fact } from '../fact.ts';
import { isBare, isVolume, litresFactor } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isMeasure,
  isVolumeTerm,
  measureOf,
  measuresIn,
  namesIn,
  take,
} from '../reading/frame.ts';
import { isMark, type MeasureTerm, means, type Term } from '../reading/term.ts';
import type { Unit } from '../reading/word-list.ts';
import { fetchedAndPoured } from './fetched-and-poured.ts';
import { inOneClause } from './top-up-amounts.ts';
import { markAlone } from './top-up-mark.ts';
import { afterTopUp } from './top-up-order.ts';
import { isTakingOut, verbOf } from './top-up-verb.ts';

/** `topped up 12 l`, `5 l, then another 4`, `topped up to the brim`: water put in, and the level that is said to follow. */
export function recogniseTopUps(frame: Frame, told: readonly Fact[] = []): Fact[] {
  const facts: Fact[] = [];
  // The verb goes on governing while clauses hold nothing but amounts and names.
  let verb: number | null = null;
  let waiting: Fact | null = null;
  // A verb that has governed the clause before its own.
  let governed: number | null = null;
  const settle = () => {
    if (waiting) facts.push(waiting);
    waiting = null;
  };
  const behind = verbsBehind(frame);
  for (const [c, clause] of frame.clauses.entries()) {
    const poured = fetchedAndPoured(frame, c);
    if (poured) {
      settle();
      facts.push(poured.fact);
      verb = governed = poured.verb;
      continue;
    }
    const own = verbOf(frame, clause);
    const ahead = own === null ? (verbAhead(frame, c) ?? behind[c] ?? null) : null;
    if (ahead !== null) {
      settle();
      // Each stands for itself: the verb belongs to another clause.
      const found = inOneClause(frame, clause, ahead, false);
      facts.push(...found.map((fact) => ({ ...fact, from: fact.at, to: fact.at })));
      verb = ahead;
      governed = ahead;
      continue;
    }
    if (own !== null && own === governed && measuresIn(frame, clause).length === 0) {
      const missing = unsaidOfNext(frame, c, own);
      if (missing) facts.push(missing);
      continue;
    }
    // `gutters took 7 l, topped up`: what was told, said in another word.
    if (
      own !== null &&
      verb !== null &&
      lastTopUp(facts, frame, c) &&
      saysAgainOnly(frame, clause, own)
    )
      continue;
    const leaning =
      own === null &&
      verb !== null &&
      (isMoreOfTheSame(frame, clause, facts.at(-1)?.bareVolume === true) ||
        isLikeBefore(frame, clause, facts.at(-1)));
    if (own === null && !leaning) {
      const mark = verb === null ? null : markAlone(frame, clause, facts.at(-1));
      if (mark) {
        facts.push(mark);
        continue;
      }
      // `topped up the jars and the buckets, 2 l and 8 l`: the amounts come after the list.
      if (waiting && isOnlyNames(frame, clause)) continue;
      const inTurn = waiting ? amountsInTurn(frame, c) : [];
      if (inTurn.length > 0) {
        facts.push(...inTurn);
        waiting = null;
        verb = null;
        continue;
      }
      // `added 30 ml A, 30 ml B and 10 l of water`: the verb is of all three.
      if (verb !== null && told.some((fact) => isDoseIn(fact, clause))) continue;
      // `bench 3 cans, nothing for the gutters, half a jug for the jars`, `put, um, 7 litres in`: it goes on.
      if (!isOnlyBreath(frame, clause) && !isNoneForThem(frame, clause)) {
        settle();
        verb = null;
      }
      continue;
    }
    if (own !== null) {
      // `filled the buckets, it took 12 l`: the amount that was missing.
      if (namesIn(frame, clause).length > 0) settle();
      verb = own;
    }
    const like = leaning && isLikeBefore(frame, clause, facts.at(-1));
    const carried = own === null ? null : unitCarried(frame, c);
    const unitBefore = unitOf(facts.at(-1)) ?? carried;
    const found = inOneClause(
      frame,
      clause,
      verb!,
      own !== null,
      unitBefore,
      like || carried !== null,
    );
    if (found.length > 0) {
      if (leaning || namesIn(frame, clause).length === 0) endAtMark(facts, found);
      if (leaning || found.some(({ amount }) => amount.kind !== 'missing')) waiting = null;
      const missing = found.filter(({ amount }) => amount.kind === 'missing');
      facts.push(...found.filter(({ amount }) => amount.kind !== 'missing'));
      if (missing.length > 0) waiting = missing[0]!;
    }
  }
  settle();
  return withoutSum(
    frame,
    facts.filter((fact) => !isToldAgain(frame, fact)),
  );
}

/**
 * `the 18 l went into the buckets, not the gutters`: an amount spoken of as known, and a system that did not get it.
 * What was told before is put right; logging it would count the water twice.
 */
function isToldAgain({ terms }: Frame, { at }: Fact): boolean {
  const before = terms[at - 1];
  const isKnown =
    (means(before, 'article', 'pronoun') && !means(before, 'indefinite')) || before?.text === "'s";
  // `the 12 l i added yesterday`: it was told then.
  if (isKnown && isOfEarlierDeed(terms, at)) return true;
  return (
    isKnown &&
    terms.some((term, i) => {
      const article = means(terms[i - 1], 'article') ? 1 : 0;
      return term.kind === 'name' && means(terms[i - 1 - article], 'not', 'instead-of');
    })
  );
}

/** The amount, whoever did it, and the verb: a clause of its own that says which water is meant. */
function isOfEarlierDeed(terms: readonly Term[], at: number): boolean {
  let i = at + 1;
  if (terms[i]?.kind === 'stop' || means(terms[i], 'pronoun')) i++;
  // `die 12 l die ich …`: the article leads the clause as well.
  if (means(terms[i], 'pronoun', 'that-clause', 'article') && !means(terms[i], 'self')) i++;
  return (
    means(terms[i], 'self', 'member') &&
    terms.slice(i, i + mostOfDeed).some((term) => means(term, 'add', 'top-up', 'fill'))
  );
}

/** `the 12 l that I had put in`: no further off is the verb. */
const mostOfDeed = 8;

/** `4 cans and 2 more, 60 l in all`: the sum of what was told is no more water; another sum is asked about. */
function withoutSum(frame: Frame, facts: readonly Fact[]): Fact[] {
  const inDispute = new Set<Fact>();
  const kept = facts.flatMap((fact, n): Fact[] => {
    const before = facts.slice(0, n).filter(({ quantity }) => quantity === 'top-up');
    const said = litresSaid(fact) ?? bareSum(fact, before.at(-1));
    if (!isInAll(frame, fact.at) || said === null || before.length === 0) return [fact];
    const amounts = before.map(litresSaid);
    if (amounts.includes(null)) return [fact];
    const sum = amounts.reduce<number>((so, litres) => so + litres!, 0);
    if (Math.abs(sum - said) <= 0.04 * sum) return [];
    // Parts of one system are as doubtful as their sum.
    if (countNames(frame, fact.at) <= 1) for (const part of before) inDispute.add(part);
    return [{ ...fact, doubt: { kind: 'conflict', quantity: 'top-up', values: [sum, said] } }];
  });
  return kept.filter((fact) => !inDispute.has(fact));
}

function isInAll({ terms }: Frame, at: number): boolean {
  return means(terms[at - 1], 'in-all') || means(terms[at + 1], 'in-all');
}

/** `3 cans and 2 cans, 5 in total`: a bare sum is in the unit of its parts. */
function bareSum({ amount, bareVolume }: Fact, part: Fact | undefined): number | null {
  if (!bareVolume || amount.kind !== 'measure' || part?.amount.kind !== 'measure') return null;
  const factor = litresFactor(part.amount.measure);
  return factor === null ? null : amount.measure.values[0]! * factor;
}

function countNames({ terms }: Frame, to: number): number {
  return terms.slice(0, to).filter(({ kind }) => kind === 'name').length;
}

function litresSaid({ quantity, amount, bareVolume }: Fact): number | null {
  if (quantity !== 'top-up' || amount.kind !== 'measure' || bareVolume) return null;
  const factor = litresFactor(amount.measure);
  return factor === null ? null : amount.measure.values[0]! * factor;
}

function unitOf(fact: Fact | undefined): Unit | null {
  return fact?.quantity === 'top-up' && fact.amount.kind === 'measure'
    ? fact.amount.measure.unit
    : null;
}

/** `topped up to the brim, 12 l`: the litres that the mark left open. */
function endAtMark(facts: Fact[], found: readonly Fact[]): void {
  const mark = facts.at(-1);
  const litres = found.find(({ quantity }) => quantity === 'top-up');
  if (!mark?.toMark || !litres || litres.amount.kind === 'missing') return;
  facts[facts.length - 1] = { ...mark, toMark: false, phase: 'after', because: afterTopUp };
}

/** `bench and buckets topped up, 30 and 12`: whole numbers alone, as many as systems were named. */
function amountsInTurn(frame: Frame, c: number): Fact[] {
  const numbers: number[] = [];
  for (const clause of frame.clauses.slice(c)) {
    const [at, ...others] = measuresIn(frame, clause);
    const isAlone = frame.terms
      .slice(clause.from, clause.to)
      .every((term) => isMeasure(term) || means(term, 'filler', 'about', 'ish'));
    const measure = at === undefined ? undefined : (frame.terms[at] as MeasureTerm).measure;
    if (!measure || others.length > 0 || !isAlone || !isBare(measure) || !measure.whole) break;
    numbers.push(at!);
  }
  const [first] = numbers;
  if (first === undefined || numbers.length < 2 || countNames(frame, first) !== numbers.length)
    return [];
  take(frame, ...numbers);
  return numbers.map((at) => ({
    quantity: 'top-up',
    amount: { kind: 'measure', measure: (frame.terms[at] as MeasureTerm).measure },
    at,
    from: at,
    to: at,
    bareVolume: true,
    because: 'amounts in the order of the systems',
  }));
}

/** `5 l in Wanne und Rinnen nachgefüllt`, `Wanne 12 l und Rinnen 8 l nachgefüllt`: a verb that ends the list. */
function verbAhead(frame: Frame, c: number, before = 0): number | null {
  const clause = frame.clauses[c];
  const next = frame.clauses[c + 1];
  if (!clause || !next || !isNamedIn(frame, clause, before) || !isNamedIn(frame, next, before + 1))
    return null;
  if (!isMoreOfTheSame(frame, clause, false) || verbOf(frame, clause) !== null) return null;
  const verb = verbOf(frame, next);
  if (verb === null)
    return next.opens === 'comma' || next.opens === 'and'
      ? verbAhead(frame, c + 1, before + 1)
      : null;
  // `dwc 80 l, gutters 10 l topped up`: of two, the first may be what is in it.
  const isList = next.opens === 'and' || (next.opens === 'comma' && before > 0);
  if (!isList || verb !== next.to - 1) return null;
  for (let i = next.from; i < verb; i++) {
    const term = frame.terms[i]!;
    const isLitres = isMeasure(term) && isVolume(term.measure);
    const isSmall = means(
      term,
      'article',
      'place',
      'both',
      'filler',
      'each',
      'about',
      'solution',
      'of',
      'same',
      'alike',
    );
    if (term.kind !== 'name' && !isLitres && !isSmall) return null;
  }
  return verb;
}

/** Each of the list is of a system; the amounts alone (`bench, buckets and jars: 30 l, 12 l and 2 l added`) go on from one that is. */
function isNamedIn(frame: Frame, clause: Clause, before: number): boolean {
  return namesIn(frame, clause).length > 0 || before > 0;
}

/** Of each clause the verb that stands alone after it, or after the list that it opens: `2 cans in the dwc and 1 in the jars, topped up`. */
function verbsBehind(frame: Frame): readonly (number | null)[] {
  const verbs: (number | null)[] = [];
  for (let c = frame.clauses.length - 1; c >= 0; c--) {
    const [clause, next] = [frame.clauses[c]!, frame.clauses[c + 1]];
    const named = namesIn(frame, clause).length > 0;
    const goesOn = named && next?.opens === 'and' && namesIn(frame, next).length > 0;
    const later = goesOn ? (verbs[c + 1] ?? null) : null;
    const isOfList =
      later !== null &&
      verbOf(frame, clause) === null &&
      isMoreOfTheSame(frame, clause, false, true);
    verbs[c] = isOfList ? later : verbBehind(frame, c);
  }
  return verbs;
}

/** `2 cans into the jars, topped up`: the verb stands alone in the clause after. */
function verbBehind(frame: Frame, c: number): number | null {
  const clause = frame.clauses[c]!;
  const next = frame.clauses[c + 1];
  if (next?.opens !== 'comma' || !isMoreOfTheSame(frame, clause, false, true)) return null;
  const verb = verbOf(frame, next);
  if (verb === null || verbOf(frame, clause) !== null) return null;
  return isVerbAlone(frame, next, verb) ? verb : null;
}

/** `Nordtisch 20 l und die Südwanne nachgefüllt`: how much the second got is not said; null: the amount is of both. */
function unsaidOfNext(frame: Frame, c: number, verb: number): Fact | null {
  const [before, clause] = [frame.clauses[c - 1], frame.clauses[c]!];
  const endsInAmount = before !== undefined && isMeasure(frame.terms[before.to - 1]);
  if (!endsInAmount || namesIn(frame, before).length === 0) return null;
  const isNamed = namesIn(frame, clause).length > 0 && !clauseHas(frame, clause, 'same', 'alike');
  if (!isNamed) return null;
  const because = 'topped up';
  return {
    quantity: 'top-up',
    amount: { kind: 'missing' },
    at: verb,
    from: verb,
    to: verb,
    because,
  };
}

/** The water put in that the clause before told in litres. */
function lastTopUp(facts: readonly Fact[], frame: Frame, c: number): Fact | null {
  const last = facts.at(-1);
  const isTold = last?.quantity === 'top-up' && last.amount.kind === 'measure';
  return isTold && frame.clauseOf[last.at] === c - 1 ? last : null;
}

/** A verb that says no more than that it was put in; `filled up` may say that it is full. */
function saysAgainOnly(frame: Frame, clause: Clause, verb: number): boolean {
  return !means(frame.terms[verb], 'fill', 'refill') && isVerbAlone(frame, clause, verb);
}

function isVerbAlone(frame: Frame, clause: Clause, verb: number): boolean {
  return frame.terms
    .slice(clause.from, clause.to)
    .every((term, n) => clause.from + n === verb || isSmallBesideVerb(term));
}

function isSmallBesideVerb(term: Term): boolean {
  return means(term, 'filler', 'self', 'today', 'now', 'thanks', 'both', 'all');
}

/** `carried 4 cans, put 3 into the bench`: of what was brought, by the vessel that it was brought in. */
function unitCarried(frame: Frame, c: number): Unit | null {
  const { sentence } = frame.clauses[c]!;
  let b = c - 1;
  while (frame.clauses[b]?.sentence === sentence && namesIn(frame, frame.clauses[b]!).length > 0)
    b--;
  const before = frame.clauses[b];
  if (before?.sentence !== sentence || !isOfBringing(frame, before)) return null;
  const [at] = frame.places.within(isVolumeTerm, before.from, before.to);
  if (at === undefined) return null;
  const { unit, values } = (frame.terms[at] as MeasureTerm).measure;
  // `could only carry one can so bench got 10`: no part of one.
  const mostPut = Math.max(
    ...measuresIn(frame, frame.clauses[c]!).map((i) => measureOf(frame, i).values[0]!),
  );
  return unit && 'litres' in unit && mostPut <= values[0]! ? unit : null;
}

/** `carried 4 cans`, `took 3 cans out`: from where they were, to where they were needed. */
export function isOfBringing(frame: Frame, clause: Clause): boolean {
  if (clauseHas(frame, clause, 'goes-in', 'carry')) return true;
  if (!clauseHas(frame, clause, 'put-by')) return false;
  return inClause(frame, clause, (_, i) => isTakingOut(frame, clause, i)).length > 0;
}

/** `put, um, 7 litres in the row`: a clause of nothing that parts a verb from its amount. */
function isOnlyBreath({ terms }: Frame, { from, to }: Clause): boolean {
  if (to === from + 1 && means(terms[from], 'show')) return true;
  for (let i = from; i < to; i++)
    if (!means(terms[i], 'filler') || means(terms[i], 'link', 'did', 'greeting')) return false;
  return true;
}

/** `nothing for the gutters`: which of the systems got none. */
function isNoneForThem(frame: Frame, clause: Clause): boolean {
  return (
    namesIn(frame, clause).length > 0 &&
    clauseHas(frame, clause, 'not', 'no') &&
    !frame.places.hasWhere(tellsMoreThanNone, clause.from, clause.to)
  );
}

function tellsMoreThanNone(term: Term): boolean {
  return term.kind !== 'name' && !means(term, 'not', 'no', 'article', 'place', 'filler');
}

function isOnlyNames(frame: Frame, clause: Clause): boolean {
  return (
    namesIn(frame, clause).length > 0 &&
    frame.terms
      .slice(clause.from, clause.to)
      .every((term) => term.kind === 'name' || means(term, 'article', 'place', 'filler', 'both'))
  );
}

function isDoseIn({ quantity, at }: Fact, { from, to }: Clause): boolean {
  return quantity === 'dose' && at >= from && at < to;
}

/** Only amounts, names, `another`, `more`, and where to. */
function isMoreOfTheSame(
  frame: Frame,
  clause: Clause,
  bareBefore: boolean,
  /** The verb is told after it, so that a time may be too. */
  withTimes = false,
): boolean {
  if (clause.from === clause.to) return false;
  const isListed = clause.opens === 'and' && namesIn(frame, clause).length > 0;
  const mayBeTimed = withTimes || isListed || hasAnother(frame, clause);
  let amounts = 0;
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (frame.timed[i] && mayBeTimed) continue;
    if (isMeasure(term)) {
      if (
        frame.taken[i] ||
        !(
          isVolume(term.measure) ||
          (isBare(term.measure) &&
            (hasAnother(frame, clause) ||
              isInAll(frame, i) ||
              isOneForOne(frame, clause, bareBefore)))
        )
      )
        return false;
      amounts++;
    } else if (
      term.kind !== 'name' &&
      !isMark(term, ':', '-') &&
      // `another 5 now`; `now 100 l` is what is in it.
      !(mayBeTimed && means(term, 'now', 'just-now')) &&
      !means(
        term,
        'another',
        'place',
        'article',
        'filler',
        'each',
        'about',
        'ish',
        'self',
        'solution',
        'of',
        'after',
        'both',
        'all',
        'in-all',
      )
    ) {
      return false;
    } else if (means(term, 'left-over', 'below')) return false;
  }
  return amounts > 0;
}

/** `6 l into the jars, 20 into the gutters`: a whole number and where it went, in the same words as before. */
function isLikeBefore(frame: Frame, clause: Clause, before: Fact | undefined): boolean {
  if (before?.quantity !== 'top-up' || before.amount.kind !== 'measure') return false;
  const [at, ...others] = measuresIn(frame, clause);
  if (at === undefined || others.length > 0) return false;
  const { measure } = frame.terms[at] as MeasureTerm;
  const led = ledTo(frame, at);
  if (!isBare(measure) || !measure.whole || led === null) return false;
  const isAlone = frame.terms
    .slice(clause.from, clause.to)
    .every(
      (term, n) =>
        clause.from + n === at ||
        term.kind === 'name' ||
        means(term, 'place', 'article', 'filler', 'about', 'ish'),
    );
  return isAlone && led === ledTo(frame, before.at);
}

/** The word by which a number is led to the system that it went into. */
function ledTo(frame: Frame, at: number): string | null {
  const word = frame.terms[at + 1];
  const name = means(frame.terms[at + 2], 'article') ? at + 3 : at + 2;
  return means(word, 'place') && frame.terms[name]?.kind === 'name' ? word!.text : null;
}

/** `topped up the bench 40, jars 2`: a name and a number, as before. */
function isOneForOne(frame: Frame, clause: Clause, bareBefore: boolean): boolean {
  return (
    bareBefore && namesIn(frame, clause).length === 1 && measuresIn(frame, clause).length === 1
  );
}

function hasAnother(frame: Frame, clause: Clause): boolean {
  return clauseHas(frame, clause, 'another');
}
