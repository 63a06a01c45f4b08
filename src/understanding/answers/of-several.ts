import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import type { Doubt } from '../doubt.ts';
import type { Frame } from '../reading/frame.ts';
import type { Choice, Statement } from '../statement.ts';
import { amountsOfSystems, type OwnAmount } from './each-its-own.ts';
import { type Answered, fillValue } from './fill-value.ts';
import type { Said } from './what-is-said.ts';
import { again } from './without-system.ts';

/** Whether a volume told of several systems is asked about: in them or added, for each or in all. */
export function isOfSeveral({ reason, waiting }: Doubt): boolean {
  if (reason.kind !== 'in-it-or-added' || waiting?.for !== 'quantity') return false;
  return new Set(waiting.drafts.map(({ system }) => system)).size > 1;
}

/** `each`, `added, to each`, `7 in the bench and 3 in the jars` after `10 l in the bench and the jars`. */
export function answerOfSeveral(
  frame: Frame,
  doubt: Doubt,
  said: Said | null,
  answered: Answered,
): readonly Statement[] | null {
  const drafts = doubt.waiting!.drafts;
  const own = amountsOfSystems(
    frame,
    drafts.filter(({ quantity }) => quantity === 'top-up'),
  );
  if (own) return askOfOwn(frame, doubt, own, answered);
  if (!said || said.measure || said.systems.length > 0) return null;
  const wanted = drafts.filter(({ quantity }) => quantity === said.quantity);
  if (said.each && wanted.length > 1) return [answered(wanted)];
  if (said.each) return [askWhich(frame, doubt, drafts)];
  // `12 l` of no system named: which one it was is asked first.
  if (wanted.length < 2 || wanted.length === frame.context.greenhouse.systems.length) return null;
  return [
    again(frame, {
      reason: { kind: 'shared-amount', quantity: said.quantity!, amount: litresText(doubt) },
      choices: [{ label: { kind: 'each' }, drafts: wanted }],
      waiting: null,
    }),
  ];
}

/** In them or added, of all of them alike. */
function askWhich(frame: Frame, doubt: Doubt, drafts: readonly EntryDraft[]): Statement {
  const choiceOf = (quantity: Quantity): Choice[] => {
    const of = drafts.filter((draft) => draft.quantity === quantity);
    return of.length > 0 ? [{ label: { kind: 'quantity', quantity }, drafts: of }] : [];
  };
  return again(frame, {
    reason: doubt.reason,
    choices: [...choiceOf('level'), ...choiceOf('top-up')],
    waiting: null,
  });
}

/** Every system's own amount, whether it is there or was added; one that cannot be is asked about beside the others. */
function askOfOwn(
  frame: Frame,
  doubt: Doubt,
  own: readonly OwnAmount[],
  answered: Answered,
): readonly Statement[] {
  const filled = doubt.waiting!.drafts.flatMap((draft): Statement[] => {
    const said = own.find((one) => one.draft.system === draft.system);
    return said ? [fillValue(frame, doubt, [draft], said.measure, true, answered)] : [];
  });
  const drafts = filled.flatMap((one) => (one.kind === 'answered' ? one.drafts : []));
  const added = drafts.filter(({ quantity }) => quantity === 'top-up');
  // Whether it was in it or added is not known of a misfit either: no number alone can answer for it.
  const misfits = filled.flatMap((one): Statement[] =>
    one.kind === 'doubt' && 'quantity' in one.reason && one.reason.quantity === 'top-up'
      ? [{ ...one, choices: [], waiting: null }]
      : [],
  );
  if (drafts.length === 0) return misfits;
  const litres = added.reduce((sum, { value }) => sum + value, 0);
  return [
    askWhich(frame, { ...doubt, reason: { kind: 'in-it-or-added', litres } }, drafts),
    ...misfits,
  ];
}

/** The amount as it was asked about. */
function litresText({ reason }: Doubt): string {
  return reason.kind === 'in-it-or-added' ? `${reason.litres} l` : '';
}
