import { DateTime } from 'luxon';
import { type LocalDate, localDateOf, localTimeOf, plusDays } from '../../greenhouse/local-time.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { stems } from '../names/inflection.ts';
import { convert, isBelievable, isVolume } from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure, isName } from '../reading/frame.ts';
import { means, meansNothing, type Term } from '../reading/term.ts';
import { productAt } from '../recognisers/products.ts';
import type { Ask, DoseTarget } from '../statement.ts';
import { type Building, nothingSaid } from '../times/building.ts';
import { dayAt } from '../times/day-said.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { saysWater } from './asked-things.ts';

export function howMuch(
  frame: Frame,
  from: number,
  to: number,
  system: SystemId | null,
  has: (...concepts: readonly Concept[]) => boolean,
): Ask {
  const products = frame.terms.slice(from, to).flatMap((_, n) => productAt(frame, from + n) ?? []);
  const isPast = asksWhatWentIn(has);
  const target =
    isPast || has('use', 'left-over', 'pick') ? null : targetIn(frame, from, to, products, has);
  if (target) return { target, kind: 'how-much', system, product: products[0] ?? null };
  // `how much did we pick off the buckets`: what was weighed there.
  if (has('pick') && system !== null)
    return { kind: 'who', system, quantity: 'harvest', duty: null, chore: null };
  if (isPast && saysShortProduct(frame, from, to))
    return { kind: 'who', system, quantity: 'dose', duty: null, chore: null };
  if (products.length > 0) {
    return isPast && system !== null
      ? { kind: 'who', system, quantity: 'dose', duty: null, chore: null }
      : { kind: 'how-much', system, product: products[0]! };
  }
  if (has('use') && !has('need'))
    return { kind: 'use', system, ...daysAsked(frame, from, to, has) };
  if (has('left-over')) return { kind: 'last-reading', system, quantity: 'level' };
  if (isPast) return { kind: 'use', system, ...daysAsked(frame, from, to, has) };
  const isOfWater = has('top-up', 'fill', 'carry') || saysWater(frame, from, to);
  // `wie viel Wasser diese Woche`: what it took.
  if (
    isOfWater &&
    has('week', 'yesterday', 'this-month', 'last-month', 'season') &&
    !has('need', 'intention', 'due', 'carry', 'next')
  )
    return { kind: 'use', system, ...daysAsked(frame, from, to, has) };
  if ((isOfWater || countsVessels(frame, from, to)) && !has('ph', 'ec'))
    return { kind: 'what-is-due', system };
  return { kind: 'how-much', system, product: null };
}

/** `to get to 2.2`, `damit sie auf 5,8 kommt`: what the dose is to bring it to; null: nobody said. */
function targetIn(
  frame: Frame,
  from: number,
  to: number,
  products: readonly string[],
  has: (...concepts: readonly Concept[]) => boolean,
): DoseTarget | null {
  const { terms } = frame;
  const speaksOfProduct =
    products.length > 0 ||
    has('ph', 'ec') ||
    terms
      .slice(from, to)
      .some(
        (term) => term.kind === 'word' && (term.word.anyProduct || term.word.shyProduct !== null),
      );
  const isOfPh =
    products.some((product) => /^ph/iu.test(product)) || (products.length === 0 && has('ph'));
  const quantity = isOfPh ? 'ph' : 'ec';
  for (let i = from; i < to; i++) {
    const term = terms[i]!;
    if (!isMeasure(term) || isVolume(term.measure) || frame.timed[i]) continue;
    const { measure } = term;
    const isOfQuantity = means(terms[i - 1], quantity);
    const isNamed = isOfQuantity || measure.bound || means(terms[i - 1], 'place', 'to');
    const isCount = measure.unit === null && measure.whole && !isOfQuantity;
    // `for 6 plants` counts.
    if (isCount && !(isNamed && endsAmount(terms[i + 1], i + 1 === to))) continue;
    const [value] = convert(quantity, measure, frame.context.greenhouse.units)?.values ?? [];
    if (value === undefined || !isBelievable(quantity, value, null)) continue;
    if (speaksOfProduct || isNamed) return { quantity, value };
  }
  return null;
}

function endsAmount(next: Term | undefined, isEnd: boolean): boolean {
  return (
    isEnd || next === undefined || next.kind === 'mark' || isName(next) || means(next, 'place')
  );
}

/** `how much went in the gutters`, `wie viel hat die Wanne bekommen`: what was added, and not what is to be. */
function asksWhatWentIn(has: (...concepts: readonly Concept[]) => boolean): boolean {
  if (has('need', 'intention', 'ph', 'ec', 'pick', 'left-over')) return false;
  return has('goes-in') || (has('told-past') && has('received', 'top-up', 'add', 'fill'));
}

/** `how much A went in the gutters`: a product by its letter, straight after the words that ask. */
function saysShortProduct(frame: Frame, from: number, to: number): boolean {
  return frame.terms
    .slice(from, to)
    .some(
      (term, n) =>
        term.kind === 'word' &&
        term.word.shyProduct !== null &&
        means(frame.terms[from + n - 1], 'how-much'),
    );
}

/** `how many cans till Friday`: what water is carried in. */
function countsVessels(frame: Frame, from: number, to: number): boolean {
  const { endings } = frame.lexicon.own.vocabulary;
  const names = frame.context.greenhouse.containers.map(({ name }) => name.toLowerCase());
  return frame.terms.slice(from, to).some((term) => {
    if (term.kind !== 'word') return false;
    const word = term.text.split(' ').at(-1)!;
    return [word, ...stems(word, endings)].some((form) => names.includes(form));
  });
}

/** `since Sunday`, `on the 24th`: a day that the question names. */
function daySaidIn(
  frame: Frame,
  from: number,
  to: number,
): { readonly day: LocalDate; readonly isSince: boolean } | null {
  for (let i = from; i < to; i++) {
    const building: Building = { from: i, to: i, ...nothingBuilt };
    dayAt(frame, i, frame.terms[i]!, building);
    const { day } = building.said;
    if (day === null) continue;
    return { day, isSince: [i - 1, i - 2].some((at) => means(frame.terms[at], 'since')) };
  }
  return null;
}

const nothingBuilt = {
  said: nothingSaid,
  since: false,
  until: false,
  earlier: false,
  headDay: null,
};

/** `in June`: the latest that has begun; `may` alone is no month. */
function monthIn(
  frame: Frame,
  from: number,
  to: number,
  today: LocalDate,
): { from: LocalDate; to: LocalDate } | null {
  const named = frame.terms
    .slice(from, to)
    .find(
      (term, n) =>
        saysMonth(term) && (isOnlyMonth(term) || means(frame.terms[from + n - 1], 'place')),
    );
  if (named?.kind !== 'word' || named.word.month === null) return null;
  const [year, thisMonth] = today.split('-').map(Number);
  const first = DateTime.utc(
    named.word.month > thisMonth! ? year! - 1 : year!,
    named.word.month,
    1,
  );
  const last = first.endOf('month').toISODate() as LocalDate;
  return { from: first.toISODate() as LocalDate, to: last < today ? last : today };
}

function firstOfMonth(date: LocalDate): LocalDate {
  return `${date.slice(0, 8)}01` as LocalDate;
}

/** `june`, and not `may`. */
function isOnlyMonth(term: Term): boolean {
  return term.kind === 'word' && meansNothing(term.word.concepts);
}

function saysMonth(term: Term): boolean {
  return term.kind === 'word' && term.word.month !== null;
}

/** The days a question about water use is about: this week where it does not say. */
export function daysAsked(
  frame: Frame,
  from: number,
  to: number,
  has: (...concepts: readonly Concept[]) => boolean,
): { from: LocalDate; to: LocalDate; isWhole?: true } {
  const { greenhouse, writtenAtMs } = frame.context;
  const today = localDateOf(writtenAtMs, greenhouse.timeZone);
  const weekday = localTimeOf(writtenAtMs, greenhouse.timeZone).weekday;
  const monday = plusDays(today, 1 - weekday);
  const said = daySaidIn(frame, from, to);
  if (said && said.day <= today) return { from: said.day, to: said.isSince ? today : said.day };
  const month = monthIn(frame, from, to, today);
  if (month) return month;
  if (has('this-month')) return { from: firstOfMonth(today), to: today };
  if (has('last-month')) {
    const to = plusDays(firstOfMonth(today), -1);
    return { from: firstOfMonth(to), to };
  }
  if (has('season'))
    return {
      isWhole: true,
      from: localDateOf(frame.context.existsSinceMs, greenhouse.timeZone),
      to: today,
    };
  if (has('yesterday')) return { from: plusDays(today, -1), to: plusDays(today, -1) };
  if (has('today')) return { from: today, to: today };
  const week = frame.terms
    .slice(from, to)
    .find((term) => means(term, 'week') || (term.kind === 'measure' && term.measure.unit !== null));
  const isLast = frame.terms.slice(from, to).some((term) => means(term, 'last', 'long-ago'));
  if (week && isLast && week.kind === 'word' && !/\d/.test(week.text))
    return { from: plusDays(monday, -7), to: plusDays(monday, -1) };
  if (has('week')) return { from: monday < today ? monday : plusDays(today, -6), to: today };
  return { from: plusDays(today, -6), to: today };
}
