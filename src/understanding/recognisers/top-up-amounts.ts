import type { Fact } from '../fact.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import type { Measure } from '../numbers/measure.ts';
import { isBare, isVolume, unitIs } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isMeasure,
  measureOf,
  measuresIn,
  namesIn,
  nextIn,
  take,
} from '../reading/frame.ts';
import { isUnknown, means, type Term } from '../reading/term.ts';
import type { Unit } from '../reading/word-list.ts';
import type { DoubtReason } from '../statement.ts';
import { isOnlyHeldAgainst } from './held-against.ts';
import { isPlural } from './not-readings.ts';
import { isDoseSized, someProduct } from './some-product.ts';
import { brimOrMark, type Target } from './top-up-mark.ts';
import { asksForAmount } from './top-up-missing.ts';
import { afterTopUp } from './top-up-order.ts';

/** `unitBefore`: that of the amount told last, for `4 cans, then 2 more`; `like`: it is told as that one was. */
export function inOneClause(
  frame: Frame,
  clause: Clause,
  verb: number,
  own: boolean,
  unitBefore: Unit | null = null,
  like = false,
): Fact[] {
  const parts = clauseHas(frame, clause, 'each') ? partsCounted(frame, clause) : null;
  const each = parts === null && clauseHas(frame, clause, 'each') ? { each: true } : {};
  const target = own ? brimOrMark(frame, clause, verb) : null;
  const volumes = measuresIn(frame, clause).filter(
    (i) =>
      isVolume(measureOf(frame, i)) &&
      !isWhatIsLeft(frame, clause, i) &&
      // `80 l after topping up 2 cans`: where it stands then.
      !clauseHas(frame, { from: i + 1, to: verb + 1 }, 'after'),
  );
  const before = target ? levelBefore(frame, clause, target) : null;
  const facts: Fact[] = [];
  for (const i of volumes) {
    if (i === target?.at || i === before?.at) continue;
    take(frame, i);
    const amount = someProduct(frame, clause, i);
    if (amount) {
      const doubt = { kind: 'which-product' as const, amount };
      const measure = measureOf(frame, i);
      facts.push({
        amount: { kind: 'measure', measure },
        ...shape(frame, i, verb),
        quantity: 'dose',
        doubt,
      });
      continue;
    }
    const doubt = doubtOf(frame, clause, i);
    facts.push({
      amount: { kind: 'measure', measure: times(measureOf(frame, i), parts) },
      ...shape(frame, i, verb),
      ...each,
      ...(doubt ? { doubt } : {}),
      ...(isTwice(frame, i) ? { each: true } : {}),
    });
  }
  if (facts.length === 0 && !before)
    facts.push(
      ...bareAmounts(frame, clause, verb, each, target?.at ?? null).map((fact) =>
        inUnitBefore(frame, clause, fact, unitBefore, like),
      ),
    );
  if (target) {
    take(frame, target.at);
    const after = facts.length > 0 ? { phase: 'after' as const } : { toMark: true };
    facts.push({
      quantity: 'level',
      amount: target.amount,
      at: target.at,
      from: verb,
      to: target.at,
      ...after,
      because: facts.length > 0 ? afterTopUp : 'topped up to a mark',
    });
    return before ? [before, ...facts] : facts;
  }
  const odd = measuresIn(frame, clause).find((i) => unitIs(measureOf(frame, i), 'unknown'));
  if (facts.length === 0 && odd !== undefined) {
    take(frame, odd);
    const value = measureOf(frame, odd).written;
    return [
      {
        amount: { kind: 'missing' },
        ...shape(frame, odd, verb),
        doubt: { kind: 'which-unit', quantity: 'top-up', value },
      },
    ];
  }
  const isUnsaid = asksForAmount(frame, clause, verb) || isOnlyHeldAgainst(frame, clause);
  if (facts.length === 0 && own && isUnsaid) {
    facts.push({ amount: { kind: 'missing' }, ...shape(frame, verb, verb) });
  }
  return facts;
}

/** `5 ml` is hardly water, and `2 l of stuff` may be anything. */
function doubtOf(frame: Frame, clause: Clause, i: number): DoubtReason | null {
  const written = frame.terms[i]!.text;
  if (unknownStuff(frame, clause, i)) return { kind: 'which-quantity', value: written };
  return isDoseSized(measureOf(frame, i)) ? { kind: 'which-product', amount: written } : null;
}

/** `5 l twice`: how much it was in all is asked. */
function isTwice({ terms }: Frame, i: number): boolean {
  return means(terms[i + 1], 'twice') || means(terms[i - 1], 'twice');
}

/** `6 buckets with 2 l each`: how many parts of one system; their count is taken. */
function partsCounted(frame: Frame, clause: Clause): number | null {
  const names = namesIn(frame, clause);
  const [name] = names;
  const count = name === undefined ? undefined : frame.terms[name - 1];
  if (names.length !== 1 || !isMeasure(count) || !isBare(count.measure) || !count.measure.whole)
    return null;
  if (!isPlural(frame, frame.terms[name!]!.text)) return null;
  take(frame, name! - 1);
  return count.measure.values[0]!;
}

function times(measure: Measure, count: number | null): Measure {
  return count === null
    ? measure
    : { ...measure, values: measure.values.map((value) => value * count) };
}

/** `4 cans, then 2 more`: more of the same. */
function inUnitBefore(
  frame: Frame,
  clause: Clause,
  fact: Fact,
  unit: Unit | null,
  like: boolean,
): Fact {
  if (!unit || fact.amount.kind !== 'measure') return fact;
  if (!like && !clauseHas(frame, clause, 'another')) return fact;
  return {
    ...fact,
    amount: { kind: 'measure', measure: { ...fact.amount.measure, unit } },
    bareVolume: false,
  };
}

/** `from 60 l to 90 l`: where the level stood before; a bare number is in the unit of the mark. */
function levelBefore(frame: Frame, clause: Clause, target: Target): Fact | null {
  const at = measuresIn(frame, clause).find(
    (i) => i < target.at && means(frame.terms[i - 1], 'from'),
  );
  if (at === undefined || target.amount.kind !== 'measure') return null;
  const measure = measureOf(frame, at);
  const unit = isBare(measure) ? target.amount.measure.unit : measure.unit;
  take(frame, at);
  return {
    quantity: 'level',
    amount: { kind: 'measure', measure: { ...measure, unit } },
    at,
    from: at,
    to: at,
    phase: 'before',
    because: 'level before a top-up',
  };
}

function shape(frame: Frame, i: number, verb: number): Omit<Fact, 'amount'> {
  return {
    quantity: 'top-up',
    at: i,
    from: Math.min(i, verb),
    to: Math.max(i, verb),
    because: means(frame.terms[verb], 'add') ? 'verb of adding' : 'topped up',
  };
}

/** `3 l left` is a level. */
function isWhatIsLeft(frame: Frame, clause: Clause, i: number): boolean {
  const after = frame.terms[i + 1];
  return (
    i + 1 < clause.to &&
    means(after, 'left-over', 'below', 'down') &&
    !means(after, 'place', 'filler')
  );
}

/** `2 l of vinegar`: not water, and no product known. */
function unknownStuff(frame: Frame, clause: Clause, i: number): boolean {
  let j = i + 1;
  while (j < clause.to && means(frame.terms[j], 'of', 'article')) j++;
  const after = j < clause.to ? frame.terms[j] : undefined;
  return (
    isUnknown(after) ||
    (j > i + 1 &&
      after?.kind === 'word' &&
      (after.word.crop !== null || (after.word.anyProduct && !means(after, 'solution')))) ||
    (after?.kind === 'word' && after.word.anyProduct && unitIs(measureOf(frame, i), 'ml', 'cl'))
  );
}

/** After a verb of adding a bare number is in the greenhouse's unit of volume. */
function bareAmounts(
  frame: Frame,
  clause: Clause,
  verb: number,
  each: { readonly each?: boolean },
  except: number | null,
): Fact[] {
  const straight = straightAfter(frame, clause, verb);
  const bare =
    straight === null
      ? measuresIn(frame, clause).filter(
          (i) => i !== except && isBare(measureOf(frame, i)) && (i > verb || i === verb - 1),
        )
      : [straight];
  // A label may own the number, and products have amounts of their own.
  const labelled = straight === null && inClause(frame, clause, isLabel).length > 0;
  const dosed =
    inClause(frame, clause, (term, i) => frame.taken[i] === true && isProduct(term)).length > 0;
  const isListed = bare.length > 1 && bare.every((i) => frame.terms[i - 1]?.kind === 'name');
  const unfit = bare.length === 0 || (bare.length > 1 && !isListed);
  if (labelled || dosed || unfit || bare.some((i) => hasProductsOrUnknown(frame, clause, i)))
    return [];
  take(frame, ...bare);
  return bare.map((i): Fact => {
    const value = countedName(frame, clause, i);
    if (value !== null) {
      const doubt = { kind: 'which-unit' as const, quantity: 'top-up' as const, value };
      return { amount: { kind: 'missing' }, ...shape(frame, i, verb), doubt };
    }
    return {
      amount: { kind: 'measure', measure: measureOf(frame, i) },
      ...shape(frame, i, verb),
      bareVolume: true,
      ...each,
    };
  });
}

/** `bench 6.2 2.4 20 topped up 50`: readings, the verb, and a number that closes the clause or comes before its system. */
function straightAfter(frame: Frame, clause: Clause, verb: number): number | null {
  const readings = measuresIn(frame, { ...clause, to: verb });
  const isOfReadings =
    readings.length > 1 || inClause(frame, { ...clause, to: verb }, isLabel).length > 0;
  const at = nextIn(frame, clause, verb, (term) => means(term, 'about', 'with', 'another'));
  if (readings.length === 0 || !isOfReadings || at < 0 || !isMeasure(frame.terms[at])) return null;
  const end = frame.terms[at + 1];
  const closes = at + 1 === clause.to || end?.kind === 'name' || means(end, 'place');
  const alone = measuresIn(frame, { ...clause, from: verb }).length === 1;
  return isBare(measureOf(frame, at)) && closes && alone ? at : null;
}

/** `topped up 6 buckets`, `3 buckets into the bench`: how many vessels, and not how many litres. */
function countedName(frame: Frame, clause: Clause, i: number): string | null {
  const name = i + 1 < clause.to ? frame.terms[i + 1] : undefined;
  const measure = measureOf(frame, i);
  const isListed = frame.terms[i - 1]?.kind === 'name';
  if (name?.kind !== 'name' || name.everyday || !measure.whole || isListed) return null;
  return isPlural(frame, name.text) ? `${measure.written} ${name.text}` : null;
}

function isProduct(term: Term): boolean {
  return term.kind === 'word' && (term.word.product !== null || term.word.shyProduct !== null);
}

/** `3 air stones`, `2 pumps`: what is put in and is no water. */
function isThing(term: Term | undefined): boolean {
  const isProbe = term?.kind === 'word' && term.word.probe !== null;
  return (
    isProbe || means(term, 'air-stones', 'air-pump', 'pump', 'venturi', 'instrument', 'plant-part')
  );
}

function hasProductsOrUnknown(frame: Frame, clause: Clause, i: number): boolean {
  const after = i + 1 < clause.to ? frame.terms[i + 1] : undefined;
  if (isUnknown(after) || isThing(after)) return true;
  return (
    inClause(
      frame,
      clause,
      (term, j) =>
        term.kind === 'word' &&
        !frame.taken[j] &&
        (term.word.product !== null || term.word.anyProduct) &&
        !means(term, 'solution'),
    ).length > 0
  );
}
