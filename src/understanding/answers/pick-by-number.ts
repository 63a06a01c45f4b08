import type { System } from '../../greenhouse/system.ts';
import type { Doubt } from '../doubt.ts';
import { isBare } from '../numbers/quantity-of-measure.ts';
import type { Choice, ChoiceLabel } from '../statement.ts';
import type { Said } from './what-is-said.ts';

/** Buttons whose number cannot be taken for an amount that was asked for. */
const numbered: readonly ChoiceLabel['kind'][] = [
  'system',
  'systems',
  'quantity',
  'quantity-of-each',
  'yes',
  'no',
  'one-top-up',
  'two-top-ups',
  'work',
  'all-work',
];

/** `2`: the second button, where the question is not about a number and no name on offer holds one. */
export function pickByNumber(
  { choices, waiting }: Doubt,
  { measure, systems }: Said,
  all: readonly System[],
): Choice | null {
  if (!measure || !isBare(measure) || !measure.whole || systems.length > 0) return null;
  if (waiting?.for === 'value' || waiting?.for === 'time') return null;
  if (!choices.every(({ label }) => numbered.includes(label.kind))) return null;
  const drafts = choices.flatMap((choice) => choice.drafts);
  const offered = all.filter(({ id }) => drafts.some(({ system }) => system === id));
  if (offered.some(({ name, aliases }) => [name, ...aliases].some((said) => /\d/.test(said))))
    return null;
  return choices[measure.values[0]! - 1] ?? null;
}
