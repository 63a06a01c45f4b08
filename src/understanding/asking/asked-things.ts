import type { DutyKind } from '../../greenhouse/duty.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Frame } from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import { choreIn } from '../recognisers/chores.ts';
import { systemOfCrop, systemOfDevice } from '../recognisers/devices.ts';
import { productAt } from '../recognisers/products.ts';
import { systemRepliedTo } from '../refiners/settle.ts';
import type { Ask, EntryStatement } from '../statement.ts';
import type { Concept } from '../vocabulary/concept.ts';

/** Systems called by their names, each once. */
export function systemsNamed(frame: Frame, from: number, to: number): readonly SystemId[] {
  const terms = frame.terms.slice(from, to);
  return [
    ...new Set(terms.flatMap((term) => (term.kind === 'name' && term.sure ? term.systems : []))),
  ];
}

export function systemAsked(
  frame: Frame,
  from: number,
  to: number,
  entries: readonly EntryStatement[],
): SystemId | null {
  const terms = frame.terms.slice(from, to);
  const named = systemsNamed(frame, from, to);
  if (named.length === 1) return named[0]!;
  if (named.length > 1) return null;
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

export function quantityAsked(frame: Frame, from: number, to: number): Quantity | null {
  for (let i = from; i < to; i++) {
    const term = frame.terms[i];
    if (means(term, 'ph')) return 'ph';
    if (means(term, 'ec', 'ppm-word', 'cf-word')) return 'ec';
    if (means(term, 'humidity')) return 'humidity';
    if (means(term, 'oxygen') && !means(term, 'do')) return 'dissolved-oxygen';
    if (means(term, 'air', 'inside') && !means(term, 'air-pump')) return 'air-temperature';
    if (means(term, 'temperature'))
      return isOfAir(frame, i + 1, to) ? 'air-temperature' : 'water-temperature';
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

/** `what temperature is it in the greenhouse`: no system is named, and the place is the greenhouse. */
function isOfAir(frame: Frame, from: number, to: number): boolean {
  const rest = frame.terms.slice(from, to);
  return (
    rest.some(
      (term) => means(term, 'inside') || (means(term, 'air') && !means(term, 'air-pump')),
    ) && !rest.some((term) => term.kind === 'name' || means(term, 'water'))
  );
}

/** The work that a question is about: by what it leaves in the log, by its duty, or by its name. */
export function workAsked(
  frame: Frame,
  from: number,
  to: number,
): Pick<Extract<Ask, { kind: 'who' }>, 'quantity' | 'duty' | 'chore' | 'isOfReadings'> {
  const chore = choreIn(frame, { from, to });
  if (chore !== null) return { quantity: null, duty: null, chore };
  if (dutyAsked(frame, from, to) === 'clean' || isOfPartCleaned(frame, from, to))
    return { quantity: null, duty: 'clean', chore: null };
  const quantity = deedAsked(frame, from, to);
  // `who measured the gutters last`, `when was the bench checked`.
  const isOfReadings =
    quantity === null &&
    frame.terms
      .slice(from, to)
      .some((term) => means(term, 'check', 'read-as') && !means(term, 'was'));
  return isOfReadings
    ? { isOfReadings, quantity, duty: null, chore: null }
    : { quantity, duty: null, chore: null };
}

/** `when did we last clean the air stones`: whatever the verb, it is what is done to them. */
function isOfPartCleaned(frame: Frame, from: number, to: number): boolean {
  const { filters } = frame.lexicon.own.vocabulary;
  const terms = frame.terms.slice(from, to);
  return (
    terms.some((term) => means(term, 'most-recent')) &&
    terms.some((term) => means(term, 'air-stones') || filters.includes(term.text))
  );
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

export function dutyAsked(frame: Frame, from: number, to: number): DutyKind | null {
  const terms = frame.terms.slice(from, to);
  const has = (...concepts: readonly Concept[]) => terms.some((term) => means(term, ...concepts));
  if (has('top-up', 'fill')) return 'top-up';
  if (has('changed-solution', 'change')) return 'reservoir-change';
  if (has('calibrate')) return 'calibration';
  if (has('clean')) return 'clean';
  if (has('check', 'ph', 'ec')) return 'check';
  // `when does the bench need water`.
  return saysWater(frame, from, to) && !has('temperature') ? 'top-up' : null;
}

/** `how much water`: one phrase that opens the question, or two. */
export function saysWater(frame: Frame, from: number, to: number): boolean {
  const { water } = frame.lexicon.own.vocabulary.words;
  return frame.terms
    .slice(from, to)
    .some(({ text }) => water.some((word) => text === word || text.endsWith(` ${word}`)));
}
