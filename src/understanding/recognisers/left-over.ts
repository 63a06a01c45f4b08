import { isReading, type Quantity } from '../../greenhouse/quantity.ts';
import type { Fact } from '../fact.ts';
import type { Measure } from '../numbers/measure.ts';
import { gramsFactor, isBare, isVolume, unitIs } from '../numbers/quantity-of-measure.ts';
import { readablesOf } from '../numbers/readables-of.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  hasUnknown,
  inClause,
  isPadding,
  measureOf,
  measuresIn,
  namesIn,
  take,
} from '../reading/frame.ts';
import { isUnknown, means, type Term } from '../reading/term.ts';
import { isDoseSized, someProduct } from './some-product.ts';
import { isOfBringing } from './top-up.ts';

/** Numbers that nobody has claimed: what they are of is asked, unless they are plainly of something else. */
export function recogniseLeftOvers(frame: Frame, told: readonly Fact[]): Fact[] {
  return frame.clauses.flatMap((clause) =>
    measuresIn(frame, clause).flatMap((i) => leftOver(frame, clause, i, told)),
  );
}

/** `davon 8 l in die Wanne`, `8 l of it in the dwc`: a part of what was told before, and the system that it went into. */
function isPartPutIn(frame: Frame, clause: Clause, i: number): boolean {
  if (!means(frame.terms[i - 1], 'of-it') && !means(frame.terms[i + 1], 'of-it')) return false;
  const names = namesIn(frame, clause);
  const [name] = names;
  // In a message that tells of a vessel first, it may as well be what is in there.
  if (clause.from > 0) return false;
  if (names.length !== 1 || name === undefined || name < i) return false;
  const lead = frame.terms[means(frame.terms[name - 1], 'article') ? name - 2 : name - 1];
  return means(lead, 'place') && !means(lead, 'of', 'from', 'at');
}

function leftOver(frame: Frame, clause: Clause, i: number, told: readonly Fact[]): Fact[] {
  const measure = measureOf(frame, i);
  const value = frame.terms[i]!.text;
  const shape = { at: i, from: i, to: i, amount: { kind: 'measure' as const, measure } };
  if (
    unitIs(
      measure,
      'minute',
      'second',
      'hour',
      'day',
      'week',
      'month',
      'year',
      'minute-an-hour',
      'm',
    )
  )
    return [];
  if (clauseHas(frame, clause, 'take-away') && !namesIn(frame, clause).length) return [];
  if (isVolume(measure)) {
    const amount =
      someProduct(frame, clause, i) ?? (isSmallDose(frame, clause, i) ? measure.written : null);
    if (amount) {
      take(frame, i);
      return [
        {
          quantity: 'dose',
          doubt: { kind: 'which-product', amount },
          because: 'dose of no product named',
          ...shape,
        },
      ];
    }
    if (isOfSomethingElse(frame, clause, i)) return [];
    take(frame, i);
    if (isOnlyCarried(frame, clause, told)) return [];
    return [
      {
        quantity: 'top-up',
        because: 'volume without a verb',
        ...shape,
        ...(isPartPutIn(frame, clause, i)
          ? {}
          : { doubt: { kind: 'in-it-or-added' as const, litres: 0 } }),
        ...(clauseHas(frame, clause, 'each') ? { each: true } : {}),
      },
    ];
  }
  if (unitIs(measure, 'unknown')) {
    const isPutIn =
      clauseHas(frame, clause, 'add', 'top-up', 'fill') ||
      goesIntoSystem(frame, clause, i) ||
      isMoreAfterVolume(frame, clause, i);
    if (!isPutIn) return [];
    take(frame, i);
    return [
      {
        quantity: 'top-up',
        doubt: { kind: 'which-unit', quantity: 'top-up', value },
        because: 'unit of unknown size',
        ...shape,
      },
    ];
  }
  if (isAside(frame, clause, i)) return [];
  take(frame, i);
  const again = readAgain(frame, clause, i, told);
  if (again !== null) return [{ quantity: again, because: 'as it reads now', ...shape }];
  if (isWhereItStands(frame, clause, i) || isHeightOfIts(frame, clause, i))
    return [{ quantity: 'level', because: 'where it stands, in no unit', ...shape }];
  const quantity = gramsFactor(measure) !== null ? 'harvest' : 'ph';
  return [
    {
      quantity,
      doubt: { kind: 'which-quantity', value },
      because: isBare(measure) ? 'bare number' : 'nothing says what it is of',
      ...shape,
    },
  ];
}

/** `bench looks ok, water at 70`, `water at 70 in the bench`: too much for a temperature, so it says how high it stands. */
function isHeightOfIts(frame: Frame, clause: Clause, i: number): boolean {
  const measure = measureOf(frame, i);
  if (!isBare(measure) || !measure.whole || !clauseHas(frame, clause, 'water')) return false;
  const isPlain = frame.terms
    .slice(clause.from, clause.to)
    .every(
      (term, n) =>
        clause.from + n === i ||
        term.kind === 'name' ||
        isPadding(term) ||
        means(term, 'water', 'place', 'stands'),
    );
  const isTied = frame.terms.slice(clause.from, i).some((term) => means(term, 'at', 'link'));
  return isPlain && isTied && isNoReadingOfWater(frame, measure);
}

function isNoReadingOfWater({ context }: Frame, measure: Measure): boolean {
  const { units } = context.greenhouse;
  return ofWater.every((quantity) => readablesOf(measure, units, quantity).length === 0);
}

/** `buckets were down to 80`, `gutters at 80`: a state of the system, and too much for any reading of its water. */
function isWhereItStands(frame: Frame, clause: Clause, i: number): boolean {
  const measure = measureOf(frame, i);
  const [name, ...others] = namesIn(frame, clause);
  if (name === undefined || name > i || others.length > 0) return false;
  if (!isBare(measure) || !measure.whole) return false;
  const between = frame.terms.slice(name + 1, i);
  const isState =
    between.some((term) => means(term, 'at', 'to', 'was', 'still-there') && !isUnknown(term)) &&
    between.every((term) => isPadding(term) || means(term, 'to', 'down', 'still-there'));
  const after = i + 1 < clause.to ? frame.terms[i + 1] : undefined;
  if (!isState || (after && !means(after, 'after', 'now', 'before', 'filler'))) return false;
  return isNoReadingOfWater(frame, measure);
}

const ofWater = ['ph', 'ec', 'water-temperature'] as const;

/** `ec was 1.7, added 6 l, now 1.5`: the one quantity read before something was done to it, that may be so much. */
function readAgain(
  frame: Frame,
  clause: Clause,
  i: number,
  told: readonly Fact[],
): Quantity | null {
  const measure = measureOf(frame, i);
  if (!isBare(measure) || !clauseHas(frame, clause, 'now', 'after')) return null;
  const isAlone = frame.terms
    .slice(clause.from, clause.to)
    .every((term, n) => clause.from + n === i || isPadding(term) || means(term, 'now', 'after'));
  if (!isAlone) return null;
  const before = told.filter(
    ({ at }) => at < i && frame.clauses[frame.clauseOf[at]!]!.sentence === clause.sentence,
  );
  const isChanged = before.some(({ quantity }) => quantity === 'top-up' || quantity === 'dose');
  const read = new Set(
    before
      .filter(({ quantity, doubt }) => isReading(quantity) && !doubt)
      .map(({ quantity }) => quantity),
  );
  return isChanged && read.size === 1 ? [...read][0]! : null;
}

/** `3 buckets into the bench`: nothing but an amount and where it went. */
function goesIntoSystem(frame: Frame, clause: Clause, i: number): boolean {
  const said = frame.terms.slice(i + 1, clause.to);
  return (
    said.some(({ kind }) => kind === 'name') &&
    said.every((term) => term.kind === 'name' || means(term, 'place', 'article', 'filler'))
  );
}

/** `2 cans into the bench and then another bottle`: nothing but more, after an amount of water. */
function isMoreAfterVolume(frame: Frame, clause: Clause, i: number): boolean {
  const before = frame.clauses[frame.clauseOf[i]! - 1];
  if (before?.sentence !== clause.sentence || !clauseHas(frame, clause, 'another')) return false;
  const isAlone = frame.terms
    .slice(clause.from, clause.to)
    .every((term, n) => clause.from + n === i || means(term, 'another', 'filler', 'article'));
  const volumes = inClause(
    frame,
    before,
    (term) =>
      term.kind === 'measure' && (isVolume(term.measure) || unitIs(term.measure, 'unknown')),
  );
  return isAlone && volumes.length > 0;
}

/** `down to 5.9 with 6 ml`: so little of a product that nothing names; not `Cal-Mag 10 ml`. */
function isSmallDose(frame: Frame, clause: Clause, i: number): boolean {
  return (
    isDoseSized(measureOf(frame, i)) && !frame.places.hasWhere(isStuff, clause.from, clause.to)
  );
}

function isStuff(term: Term): boolean {
  return isUnknown(term) || (term.kind === 'word' && term.word.anyProduct);
}

/** `could only carry one can so bench got 10`: how much was brought, where what went in is told as well. */
function isOnlyCarried(frame: Frame, clause: Clause, told: readonly Fact[]): boolean {
  if (namesIn(frame, clause).length > 0 || !isOfBringing(frame, clause)) return false;
  return told.some(
    ({ quantity, at, doubt }) =>
      quantity === 'top-up' &&
      !doubt &&
      frame.clauses[frame.clauseOf[at]!]!.sentence === clause.sentence,
  );
}

/** `2 l of vinegar`, `the 10 l heater`: the volume of a thing. */
function isOfSomethingElse(frame: Frame, clause: Clause, i: number): boolean {
  let j = i + 1;
  while (j < clause.to && means(frame.terms[j], 'of', 'article')) j++;
  return j < clause.to && isUnknown(frame.terms[j]);
}

/** A number in a sentence about something else, with words that the reader does not know. */
function isAside(frame: Frame, clause: Clause, i: number): boolean {
  if (namesIn(frame, clause).length === 0 && hasUnknown(frame, clause.from, clause.to)) return true;
  const after = i + 1 < clause.to ? frame.terms[i + 1] : undefined;
  return isUnknown(after) && measureOf(frame, i).whole;
}
