import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { SpokenUnits } from '../../greenhouse/greenhouse.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import type { Doubt } from '../doubt.ts';
import type { Measure } from '../numbers/measure.ts';
import { cmFactor, convert, isBare, isVolume, unitIs } from '../numbers/quantity-of-measure.ts';
import type { Said } from './what-is-said.ts';

/**
 * Whether a message that looks like an answer says another quantity, unit or system than the question
 * is about: then something else is said, and it is read afresh.
 */
export function isSomethingElse(doubt: Doubt, said: Said, units: SpokenUnits): boolean {
  const drafts = [
    ...(doubt.waiting?.drafts ?? []),
    ...doubt.choices.flatMap((choice) => choice.drafts),
  ];
  if (drafts.length === 0) return false;
  return (
    isOtherQuantity(drafts, said) || isOtherSystem(drafts, said) || isOtherUnit(drafts, said, units)
  );
}

function isOtherQuantity(drafts: readonly EntryDraft[], { quantity }: Said): boolean {
  if (quantity === null) return false;
  // `added` answers for a dose or a change as well as for a top-up.
  const isPouring = quantity === 'top-up';
  return !drafts.some(
    (draft) =>
      draft.quantity === quantity ||
      (isPouring && (draft.quantity === 'dose' || draft.quantity === 'reservoir-change')),
  );
}

/** A system named beside a value must be one that the value is asked for. */
function isOtherSystem(drafts: readonly EntryDraft[], { systems, measure }: Said): boolean {
  if (systems.length === 0 || measure === null) return false;
  const asked = drafts.flatMap(({ system }) => (system === null ? [] : [system]));
  return asked.length > 0 && !systems.every((system) => asked.includes(system));
}

function isOtherUnit(
  drafts: readonly EntryDraft[],
  { measure }: Said,
  units: SpokenUnits,
): boolean {
  if (measure === null || isBare(measure)) return false;
  return !drafts.some(({ quantity }) => isOfUnit(quantity, measure, units));
}

/** Whether an amount in this unit can be of a quantity. */
export function isOfUnit(quantity: Quantity, measure: Measure, units: SpokenUnits): boolean {
  if (quantity !== 'level') return convert(quantity, measure, units) !== null;
  return (
    isVolume(measure) || cmFactor(measure) !== null || measure.share || unitIs(measure, 'percent')
  );
}
