import type { SystemId } from '../greenhouse/system.ts';
import { answerAndChatter } from './answers/answer-and-chatter.ts';
import { answerAndMore } from './answers/answer-and-more.ts';
import { numberOfSystem } from './answers/number-of-system.ts';
import { questionsMoved } from './answers/question-moved.ts';
import { questionPutRight } from './answers/question-put-right.ts';
import { questionAsked, questionMissed, readAnswer } from './answers/read-answer.ts';
import { askedOfAnother } from './asking/asked-of-another.ts';
import { newStatements } from './new-statements.ts';
import type { Frame } from './reading/frame.ts';
import { isOnlyTick } from './recognisers/done.ts';
import { recogniseTakingBack, withoutExcuse, withoutGivenUp } from './recognisers/taking-back.ts';
import { undoAndMore } from './recognisers/undo-and-more.ts';
import { vesselMoved } from './recognisers/vessel-told.ts';
import type { Statement, TakingBack } from './statement.ts';

interface Read {
  readonly statements: readonly Statement[];
  readonly named: readonly SystemId[];
}

/** What a message says, once it is laid out: an answer to an open question, a taking back, or news. */
export function readFrame(frame: Frame): Read {
  const named = namesSaid(frame);
  const answer = numberOfSystem(frame, newStatements) ?? readAnswer(frame);
  if (answer) return { statements: answer, named };
  // A thumb tells nothing of what was asked.
  const untold = isOnlyTick(frame) ? questionAsked(frame) : null;
  if (untold) return { statements: [untold], named };
  const more = askedOfAnother(frame);
  if (more) return { statements: [more], named };
  frame.taken.fill(false);
  frame.timed.fill(false);
  const beside = answerAndChatter(frame);
  if (beside) return { statements: beside, named };
  const moved = vesselMoved(frame);
  if (moved) return { statements: moved, named };
  const back = recogniseTakingBack(frame);
  const putRight =
    back &&
    (back.back.kind === 'move'
      ? questionsMoved(frame, back, back.back)
      : questionPutRight(frame, back.back));
  if (putRight) return { statements: putRight, named };
  if (back) return { statements: [{ ...back, ...otherwiseTold(frame, back.back) }], named };
  const undone = undoAndMore(frame);
  if (undone) return { statements: undone, named };
  const answered = answerAndMore(frame, newStatements);
  if (answered) return { statements: answered, named };
  const news = newStatements(frame);
  const isNothing = news.every((one) => one.kind === 'doubt' && one.reason.kind === 'unclear');
  const open = isNothing ? questionMissed(frame) : null;
  return { statements: open ? [open] : news, named };
}

/** Only where it tells something: what makes no sense stays a correction. */
function otherwiseTold(
  frame: Frame,
  back: TakingBack,
): { readonly otherwise?: readonly Statement[] } {
  const left =
    withoutGivenUp(frame) ?? (back.kind === 'correct' ? withoutExcuse(frame, back) : null);
  if (!left) return {};
  const otherwise = newStatements(left);
  const isClear = otherwise.every(
    (one) => one.kind === 'entry' || (one.kind === 'doubt' && one.reason.kind !== 'unclear'),
  );
  return isClear ? { otherwise } : {};
}

/** The systems that a message names, each once. */
export function namesSaid(frame: Frame): SystemId[] {
  return [
    ...new Set(
      frame.terms.flatMap((term) => (term.kind === 'name' && term.sure ? term.systems : [])),
    ),
  ];
}
