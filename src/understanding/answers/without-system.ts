import type { EntryDraft } from '../../greenhouse/entry.ts';
import { belongsToGreenhouse } from '../../greenhouse/quantity.ts';
import type { System } from '../../greenhouse/system.ts';
import type { Doubt } from '../doubt.ts';
import type { Frame } from '../reading/frame.ts';
import type { Choice, DoubtStatement, Statement } from '../statement.ts';
import { type Answered, fillValue } from './fill-value.ts';
import type { Said } from './what-is-said.ts';

/** A verb came without its amount and without a system: the answer may tell either, or both. */
export function awaitsSystemToo({ waiting }: Doubt): boolean {
  return (
    waiting?.for === 'value' &&
    waiting.drafts.length > 0 &&
    waiting.drafts.every(
      ({ system, quantity }) =>
        system === null && quantity !== 'calibration' && !belongsToGreenhouse(quantity),
    )
  );
}

/** `jars, 3 l` after `topped up`; `jars` alone leaves the amount to ask, `3 l` the system. */
export function fillWithSystem(
  frame: Frame,
  doubt: Doubt,
  said: Said,
  answered: Answered,
): Statement | null {
  const drafts = doubt.waiting!.drafts;
  const { systems } = frame.context.greenhouse;
  const named = systems.filter(({ id }) => said.systems.includes(id));
  if (named.length > 1) return null;
  const [system] = named;
  const { measure } = said;
  if (system && measure)
    return fillValue(frame, doubt, ofSystem(drafts, system), measure, said.each, answered);
  if (system)
    return again(frame, {
      ...doubt,
      waiting: { for: 'value', drafts: ofSystem(drafts, system) },
    });
  if (!measure) return null;
  const choices = systems.flatMap((each): Choice[] => {
    const filled = fillValue(frame, doubt, ofSystem(drafts, each), measure, true, answered);
    return filled.kind === 'answered'
      ? [{ label: { kind: 'system', system: each.id }, drafts: filled.drafts }]
      : [];
  });
  const [first] = choices;
  if (!first) return null;
  const waiting = first.drafts.map((draft) => ({ ...draft, system: null }));
  return again(frame, {
    reason: { kind: 'which-system', quantity: drafts[0]!.quantity },
    choices,
    waiting: { for: 'system', drafts: waiting },
  });
}

function ofSystem(drafts: readonly EntryDraft[], { id }: System): EntryDraft[] {
  return drafts.map((draft) => ({ ...draft, system: id }));
}

/** What of a question is still open after an answer. */
export function again(frame: Frame, doubt: Doubt): DoubtStatement {
  return {
    kind: 'doubt',
    ...doubt,
    span: { from: 0, to: frame.folded.text.length },
    because: ['answered in part'],
  };
}
