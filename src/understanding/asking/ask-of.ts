import type { DutyKind } from '../../greenhouse/duty.ts';
import { type LocalDate, localDateOf, localTimeOf, plusDays } from '../../greenhouse/local-time.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { convert, isBare, isBelievable, isVolume } from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import { systemOfCrop, systemOfDevice } from '../recognisers/devices.ts';
import { productAt } from '../recognisers/products.ts';
import { systemRepliedTo } from '../refiners/settle.ts';
import type { Ask, EntryStatement } from '../statement.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { adviceAsk } from './advice-ask.ts';

/** What a question asks, from the words in it; `unknown` where they tell nothing. */
export function askOf(
  frame: Frame,
  from: number,
  to: number,
  entries: readonly EntryStatement[],
): Ask {
  const terms = frame.terms.slice(from, to);
  const has = (...concepts: readonly Concept[]) => terms.some((term) => means(term, ...concepts));
  const starts = (...concepts: readonly Concept[]) =>
    means(
      terms.find((term) => term.kind === 'word'),
      ...concepts,
    ) || terms.slice(0, 3).some((term) => means(term, ...concepts) && term.kind === 'word');
  const system = systemAsked(frame, from, to, entries);
  const quantity = quantityAsked(frame, from, to);
  const measured = terms.findIndex(isMeasure);

  if (has('help')) return { kind: 'help' };
  const sum = adviceAsk(frame, from, to, system);
  if (sum) return sum;
  if (starts('who')) return { kind: 'who', system, quantity: deedAsked(frame, from, to) };
  if (starts('why')) return { kind: 'why', system, exactly: has('exactly') };
  if (starts('how-long') && !has('next')) return { kind: 'how-long', system };
  if (starts('when'))
    return has('last-out', 'empty', 'low') && !has('due', 'next', 'need')
      ? { kind: 'how-long', system }
      : { kind: 'when-next', system, duty: dutyAsked(frame, from, to) };
  if (starts('how-much')) return howMuch(frame, from, to, system, has);
  if (measured >= 0 && (has('judged') || starts('is-it')))
    return isItRight(frame, from + measured, system, quantity);
  if (starts('show') || has('picture')) return { kind: 'show', system };
  if (starts('is-it') && has('last-out')) return { kind: 'how-long', system };
  if (
    (has('due', 'job') && !has('most-recent', 'use')) ||
    starts('anything') ||
    (has('what') && has('due', 'job', 'need', 'do')) ||
    (has('need') && system !== null && !quantity)
  )
    return { kind: 'what-is-due', system };
  if (has('use') && has('week', 'yesterday', 'today'))
    return { kind: 'use', system, ...daysAsked(frame, from, to, has) };
  const said = entries.at(-1);
  if (starts('is-it') && has('judged', 'pronoun') && said && quantity === null) {
    return {
      kind: 'is-it-right',
      system: said.draft.system,
      quantity: said.draft.quantity,
      value: said.draft.value,
    };
  }
  if (has('due')) return { kind: 'what-is-due', system };
  if (starts('is-it') && (has('need') || topsUp(terms))) return { kind: 'what-is-due', system };
  if (starts('is-it') && has('judged') && quantity !== null)
    return { kind: 'is-it-right', system, quantity, value: null };
  if (
    quantity !== null &&
    (starts('what', 'how', 'which') || has('most-recent') || starts('is-it'))
  )
    return { kind: 'last-reading', system, quantity };
  if (starts('how', 'which', 'what', 'is-it') && (has('going', 'judged') || system !== null))
    return { kind: 'how-is-it-going', system };
  return starts('judged', 'next') && said
    ? {
        kind: 'is-it-right',
        system: said.draft.system,
        quantity: said.draft.quantity,
        value: said.draft.value,
      }
    : { kind: 'unknown' };
}

function topsUp(terms: readonly Term[]): boolean {
  return terms.some((term) =>
    means(term, 'top-up', 'change', 'changed-solution', 'add-plainly', 'add'),
  );
}

function systemAsked(
  frame: Frame,
  from: number,
  to: number,
  entries: readonly EntryStatement[],
): SystemId | null {
  const terms = frame.terms.slice(from, to);
  const named = new Set(
    terms.flatMap((term) => (term.kind === 'name' && term.sure ? term.systems : [])),
  );
  if (named.size === 1) return [...named][0]!;
  if (named.size > 1) return null;
  for (const term of terms) {
    const system =
      systemOfCrop(frame, term) ??
      (means(term, 'venturi', 'air-stones', 'air-pump') ? systemOfDevice(frame, term) : null);
    if (system !== null) return system;
  }
  const refers = terms.some((term) => means(term, 'pronoun'));
  const spokenOf = refers ? entries.at(-1)?.draft.system : undefined;
  return spokenOf ?? systemRepliedTo(frame.context);
}

function quantityAsked(frame: Frame, from: number, to: number): Quantity | null {
  for (let i = from; i < to; i++) {
    const term = frame.terms[i];
    if (means(term, 'ph')) return 'ph';
    if (means(term, 'ec', 'ppm-word', 'cf-word')) return 'ec';
    if (means(term, 'humidity')) return 'humidity';
    if (means(term, 'oxygen') && !means(term, 'do')) return 'dissolved-oxygen';
    if (means(term, 'air', 'inside') && !means(term, 'air-pump')) return 'air-temperature';
    if (means(term, 'temperature')) return 'water-temperature';
    if (means(term, 'level') || (means(term, 'how') && means(frame.terms[i], 'level')))
      return 'level';
  }
  const wide: readonly (readonly [Concept, Quantity])[] = [
    ['top-up', 'top-up'],
    ['changed-solution', 'reservoir-change'],
    ['change', 'reservoir-change'],
    ['pick', 'harvest'],
    ['calibrate', 'calibration'],
  ];
  const asksLast = frame.terms.slice(from, to).some((term) => means(term, 'most-recent'));
  if (!asksLast) return null;
  for (const [concept, quantity] of wide)
    if (frame.terms.slice(from, to).some((term) => means(term, concept))) return quantity;
  return null;
}

function deedAsked(frame: Frame, from: number, to: number): Quantity | null {
  const terms = frame.terms.slice(from, to);
  const has = (...concepts: readonly Concept[]) => terms.some((term) => means(term, ...concepts));
  if (has('top-up', 'fill')) return 'top-up';
  if (has('changed-solution', 'change')) return 'reservoir-change';
  if (has('calibrate')) return 'calibration';
  if (has('pick')) return 'harvest';
  const product = terms.findIndex((_, n) => productAt(frame, from + n) !== null);
  if (product >= 0) return 'dose';
  return quantityAsked(frame, from, to) ?? (has('did', 'done') ? 'duty-done' : null);
}

function dutyAsked(frame: Frame, from: number, to: number): DutyKind | null {
  const terms = frame.terms.slice(from, to);
  const has = (...concepts: readonly Concept[]) => terms.some((term) => means(term, ...concepts));
  if (has('top-up', 'fill')) return 'top-up';
  if (has('changed-solution', 'change')) return 'reservoir-change';
  if (has('calibrate')) return 'calibration';
  if (has('clean')) return 'clean';
  if (has('check', 'ph', 'ec')) return 'check';
  return null;
}

function howMuch(
  frame: Frame,
  from: number,
  to: number,
  system: SystemId | null,
  has: (...concepts: readonly Concept[]) => boolean,
): Ask {
  const products = frame.terms.slice(from, to).flatMap((_, n) => productAt(frame, from + n) ?? []);
  if (products.length > 0) return { kind: 'how-much', system, product: products[0]! };
  if (has('use') && !has('need'))
    return { kind: 'use', system, ...daysAsked(frame, from, to, has) };
  if (has('left-over')) return { kind: 'last-reading', system, quantity: 'level' };
  return { kind: 'how-much', system, product: null };
}

/** The days a question about water use is about: this week where it does not say. */
function daysAsked(
  frame: Frame,
  from: number,
  to: number,
  has: (...concepts: readonly Concept[]) => boolean,
): { from: LocalDate; to: LocalDate } {
  const { greenhouse, writtenAtMs } = frame.context;
  const today = localDateOf(writtenAtMs, greenhouse.timeZone);
  const weekday = localTimeOf(writtenAtMs, greenhouse.timeZone).weekday;
  const monday = plusDays(today, 1 - weekday);
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

/** `is 5.4 too low`: of which quantity the number is, by its word, its unit, or what it can be. */
function isItRight(frame: Frame, at: number, system: SystemId | null, named: Quantity | null): Ask {
  const term = frame.terms[at]!;
  if (!isMeasure(term)) return { kind: 'unknown' };
  const { measure } = term;
  if (isVolume(measure)) return { kind: 'unknown' };
  const { units } = frame.context.greenhouse;
  const order: readonly Quantity[] = named
    ? [named]
    : ['ph', 'ec', 'water-temperature', 'dissolved-oxygen', 'humidity'];
  for (const quantity of order) {
    if (
      quantity === 'ec' &&
      isBare(measure) &&
      measure.values[0]! >= 10 &&
      measure.values[0]! < 100
    )
      continue;
    const conversion = convert(quantity, measure, units);
    if (conversion && isBelievable(quantity, conversion.values[0]!, null))
      return { kind: 'is-it-right', system, quantity, value: conversion.values[0]! };
  }
  return { kind: 'is-it-right', system, quantity: named ?? 'ph', value: measure.values[0]! };
}
