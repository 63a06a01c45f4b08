import type { EntryDraft } from '../../greenhouse/entry.ts';
import { isReading } from '../../greenhouse/quantity.ts';
import type { Doubt } from '../doubt.ts';
import type { Frame } from '../reading/frame.ts';
import type { Choice, Statement } from '../statement.ts';
import { fillSystem } from './fill-system.ts';
import type { Answered } from './fill-value.ts';
import type { Said } from './what-is-said.ts';
import { again } from './without-system.ts';

/** `buckets and gutters`, where one was waited for: a reading is of each; of an amount that is asked. */
export function fillSystems(
  frame: Frame,
  doubt: Doubt,
  said: Said,
  answered: Answered,
): Statement | null {
  const { waiting } = doubt;
  if (waiting?.for !== 'system' || said.measure || said.systems.length < 2) return null;
  // `one each`: so many of what was counted, and not all of it in each.
  if (frame.terms.some((term) => term.kind === 'word' && term.word.number !== null)) return null;
  const isSure = frame.terms.every((term) => term.kind !== 'name' || term.sure);
  if (!isSure && !said.both) return null;
  const named = frame.context.greenhouse.systems.filter(({ id }) => said.systems.includes(id));
  const filled = named.flatMap((system) =>
    fillSystem(frame, doubt, waiting.drafts, system, answered),
  );
  const drafts = filled.flatMap((one) => (one.kind === 'answered' ? one.drafts : []));
  if (drafts.length < named.length * waiting.drafts.length) return null;
  if (drafts.every(({ quantity }) => isReading(quantity))) return answered(drafts);
  return waiting.drafts.length === 1 ? askWhetherEach(frame, drafts, said, answered) : null;
}

function askWhetherEach(
  frame: Frame,
  drafts: readonly EntryDraft[],
  { each }: Said,
  answered: Answered,
): Statement {
  if (each) return answered(drafts);
  const [{ quantity, value }] = drafts as readonly [EntryDraft];
  const single = drafts.map(
    (draft): Choice => ({ label: { kind: 'system', system: draft.system! }, drafts: [draft] }),
  );
  return again(frame, {
    reason: {
      kind: 'shared-amount',
      quantity,
      amount: `${value} ${quantity === 'dose' ? 'ml' : 'l'}`,
    },
    choices: [{ label: { kind: 'each' }, drafts }, ...single],
    waiting: null,
  });
}
