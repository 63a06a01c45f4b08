import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { System } from '../../greenhouse/system.ts';
import type { Doubt } from '../doubt.ts';
import { isBelievable } from '../numbers/quantity-of-measure.ts';
import type { Frame } from '../reading/frame.ts';
import { outOfRange } from '../refiners/value-of.ts';
import type { Statement } from '../statement.ts';
import { type Answered, askAgain } from './fill-value.ts';

/**
 * What was waiting for its system, and is told one that no button offered: what that system can hold is
 * logged, and what it cannot is asked about.
 */
export function fillSystem(
  frame: Frame,
  doubt: Doubt,
  drafts: readonly EntryDraft[],
  system: System,
  answered: Answered,
): readonly Statement[] {
  const own = drafts.map((draft) => ({ ...draft, system: system.id }));
  const fitting = own.filter((draft) => fits(draft, system));
  const misfits = own.filter((draft) => !fits(draft, system));
  return [
    ...(fitting.length > 0 ? [answered(fitting)] : []),
    ...misfits.map((draft) => askForIt(frame, doubt, draft, system)),
  ];
}

function fits(draft: EntryDraft, system: System): boolean {
  return !isOfItsDepth(draft) && isBelievable(draft.quantity, draft.value, system);
}

/** Centimetres and shares were reckoned for another system. */
function isOfItsDepth({ saidAs }: EntryDraft): boolean {
  return saidAs !== undefined;
}

function askForIt(frame: Frame, doubt: Doubt, draft: EntryDraft, system: System): Statement {
  const { quantity, value, saidAs: _saidAs, ...rest } = draft;
  const waiting = { for: 'value' as const, drafts: [{ quantity, value: 0, ...rest }] };
  const open: Doubt = { ...doubt, waiting };
  if (isOfItsDepth(draft)) {
    return askAgain(frame, open, draft, { kind: 'missing-amount', quantity }, []);
  }
  const asked = outOfRange(quantity, value, system);
  if (asked.kind !== 'asked') throw new Error(`${quantity} ${value} was found out of range`);
  return askAgain(frame, open, draft, asked.reason, asked.options);
}
