import type { EntryDraft } from '../../greenhouse/entry.ts';
import { fitsSystem, movedTo } from '../../greenhouse/moved-draft.ts';
import { believable } from '../../greenhouse/quantity.ts';
import type { System, SystemId } from '../../greenhouse/system.ts';
import type { Doubt } from '../doubt.ts';
import type { Frame } from '../reading/frame.ts';
import type { Statement, TakingBack, TakingBackStatement } from '../statement.ts';
import { insteadOf, questionAsked, questionsOf } from './read-answer.ts';
import { again } from './without-system.ts';

type Moving = Extract<TakingBack, { kind: 'move' }>;

/**
 * `sorry, that was the buckets` where what was told of another system is still asked about: the question
 * is of the buckets then, and what the same message logged moves with it. Null: nothing asked is of one.
 */
export function questionsMoved(
  frame: Frame,
  said: TakingBackStatement,
  back: Moving,
): readonly Statement[] | null {
  const system = frame.context.greenhouse.systems.find(({ id }) => id === back.system);
  const meant = questionsOf(frame).filter(({ doubt }) => isMeant(draftsOf(doubt), back));
  if (!system || meant.length === 0) return null;
  const from = new Set(meant.flatMap(({ doubt }) => draftsOf(doubt).map((draft) => draft.system)));
  if (from.size > 1) return [questionAsked(frame)!];
  const moved = meant.flatMap((question) =>
    insteadOf(question, [again(frame, movedDoubt(question.doubt, system))]),
  );
  return meant.some(({ hasLogged }) => hasLogged) ? [said, ...moved] : moved;
}

function draftsOf({ waiting, choices }: Doubt): readonly EntryDraft[] {
  return [...(waiting?.drafts ?? []), ...choices.flatMap(({ drafts }) => drafts)];
}

/** All of it is of one system, and that is the one, and the quantity, that the correction gives up. */
function isMeant(drafts: readonly EntryDraft[], { system: to, notOf, from, quantity }: Moving) {
  const given: SystemId | undefined = notOf ?? from;
  return (
    drafts.length > 0 &&
    drafts.every(
      ({ system }) =>
        system !== null &&
        system !== to &&
        system === drafts[0]!.system &&
        (given === undefined || system === given),
    ) &&
    (quantity === undefined || drafts.some((draft) => draft.quantity === quantity))
  );
}

/** What the system cannot hold is not offered; where nothing of it can be, that is what is asked. */
function movedDoubt({ reason, choices, waiting }: Doubt, system: System): Doubt {
  const moved = choices.map((choice) => ({
    ...choice,
    drafts: choice.drafts.map((draft) => movedTo(draft, system)),
  }));
  const fitting = moved.filter(({ drafts }) => drafts.every((draft) => fitsSystem(draft, system)));
  const [unfit] = fitting.length > 0 ? [] : moved.flatMap(({ drafts }) => drafts);
  const bounds = unfit && believable(unfit.quantity, system);
  if (unfit && bounds) {
    const { quantity, value } = unfit;
    const [lowest, highest] = bounds;
    return {
      reason: { kind: 'out-of-range', quantity, value, lowest, highest },
      choices: [],
      waiting: null,
    };
  }
  return {
    reason,
    choices: fitting,
    waiting: waiting && {
      ...waiting,
      drafts: waiting.drafts.map((draft) => movedTo(draft, system)),
    },
  };
}
