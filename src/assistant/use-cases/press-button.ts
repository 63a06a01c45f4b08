import { withoutQuestion } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import { type Outgoing, readPressToken } from '../outgoing.ts';
import { recordEntries } from './record-entries.ts';
import { strikeOut } from './take-back.ts';

/** Does what a pressed button says. `pressed`: the bot's message that the button stands under. */
export function pressButton(handling: Handling, token: string, pressed: Outgoing | null): void {
  const place = readPressToken(token);
  const button = place && pressed ? pressed.buttons.flat()[place.position] : undefined;
  if (!button) return tooLate(handling);
  const { action } = button;
  switch (action.kind) {
    case 'strike': {
      const { all } = handling.standing.logbook;
      return strikeOut(
        handling,
        action.entries.map((no) => all[no - 1]!),
      );
    }
    case 'choose':
    case 'decline': {
      const question = handling.conversation.questions.find(
        ({ questionId }) => questionId === action.questionId,
      );
      if (!question) return tooLate(handling);
      handling.conversation = withoutQuestion(handling.conversation, action.questionId);
      const drafts =
        action.kind === 'choose' ? (question.doubt.choices[action.choice]?.drafts ?? []) : [];
      if (drafts.length === 0) {
        handling.say({ kind: 'answer', answer: { kind: 'left-out' } });
        return;
      }
      return recordEntries(handling, drafts, [], question.messageId);
    }
  }
}

function tooLate(handling: Handling): void {
  handling.say({ kind: 'answer', answer: { kind: 'too-late' } });
}
