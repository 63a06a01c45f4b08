import { sendPicture } from '../answers/picture-answer.ts';
import { withoutQuestion } from '../conversation.ts';
import { pressSettled } from '../family/press-settled.ts';
import { unfold } from '../family/tell-how-to.ts';
import type { Handling } from '../handling.ts';
import { type Outgoing, readPressToken } from '../outgoing.ts';
import { settleWherePlanted } from './ask-where-planted.ts';
import { cannotDoDuty, leaveUnexplained } from './cannot-do-duty.ts';
import { settleChange, undoSetUpOf } from './change-set-up.ts';
import { pressGuide } from './guide-set-up.ts';
import { type HouseholdDesk, keepHousehold } from './keep-household.ts';
import { recordAnswer } from './record-answer.ts';
import { strikeOut } from './replace-entries.ts';
import { tickDuty } from './tick-duty.ts';
import { undoSettledOf } from './undo-last.ts';

/** Does what a pressed button says. `pressed`: the bot's message that the button stands under. */
export function pressButton(
  handling: Handling,
  token: string,
  pressed: Outgoing | null,
  household: HouseholdDesk,
): void {
  const place = readPressToken(token);
  const button = place && pressed ? pressed.buttons.flat()[place.position] : undefined;
  if (!button) return tooLate(handling);
  const { action } = button;
  switch (action.kind) {
    case 'strike': {
      const { all } = handling.standing.logbook;
      const entries = action.entries.map((no) => all[no - 1]!);
      if (button.label.kind !== 'untick') return strikeOut(handling, entries);
      handling.inPassing(() => {
        strikeOut(handling, entries);
      });
      return;
    }
    case 'choose':
    case 'decline': {
      const question = handling.conversation.questions.find(
        ({ questionId }) => questionId === action.questionId,
      );
      if (!question) return tooLate(handling);
      if (question.doubt.reason.kind === 'why-not') return leaveUnexplained(handling, question);
      if (question.doubt.reason.kind === 'change-set-up') {
        return settleChange(handling, question, action.kind === 'choose');
      }
      if (question.doubt.reason.kind === 'planted-where') {
        return settleWherePlanted(
          handling,
          question,
          action.kind === 'choose' ? action.choice : null,
        );
      }
      handling.conversation = withoutQuestion(handling.conversation, action.questionId);
      const drafts =
        action.kind === 'choose' ? (question.doubt.choices[action.choice]?.drafts ?? []) : [];
      if (drafts.length === 0) {
        handling.say({ kind: 'answer', answer: { kind: 'left-out' } });
        return;
      }
      recordAnswer(handling, drafts, question);
      return;
    }
    case 'undo-set-up':
      if (!undoSetUpOf(handling, action.messageId)) tooLate(handling);
      return;
    case 'undo-settled':
      if (!undoSettledOf(handling, action.messageId)) tooLate(handling);
      return;
    case 'guide':
      if (!pressGuide(handling, action.answers, action.option)) tooLate(handling);
      return;
    case 'tick':
      return tickDuty(handling, action.duty, action.askedAtMs);
    case 'cannot':
      return cannotDoDuty(handling, action.duty, action.askedAtMs);
    case 'picture':
      return sendPicture(handling, action);
    case 'how-to':
      return unfold(handling, action.duty);
    case 'settle':
      return pressSettled(handling, action.drafts);
    case 'household':
      return keepHousehold(handling, action.wish, household);
  }
}

function tooLate(handling: Handling): void {
  handling.inPassing(() => {
    handling.say({ kind: 'answer', answer: { kind: 'too-late' } });
  });
}
