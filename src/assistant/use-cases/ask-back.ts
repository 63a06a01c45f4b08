import type { Doubt } from '../../understanding/doubt.ts';
import { withQuestion } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import type { Button, ButtonLabel } from '../outgoing.ts';

/** Asks about what could not be logged as it stands, with a button for each likely answer. */
export function askBack(
  handling: Handling,
  doubt: Doubt,
  messageId: string = handling.heard.messageId,
): void {
  const questionId = `q${handling.nextOutgoingNo}`;
  const buttons = doubt.choices.map((choice, position): readonly Button[] => [
    {
      label: { kind: 'choice', choice: choice.label },
      action: { kind: 'choose', questionId, choice: position },
    },
  ]);
  handling.say({ kind: 'question', questionId, doubt }, [
    ...buttons,
    [{ label: declineLabel(doubt), action: { kind: 'decline', questionId } }],
  ]);
  handling.conversation = withQuestion(handling.conversation, {
    questionId,
    doubt,
    askedAtMs: handling.nowMs,
    lapsed: false,
    messageId,
  });
}

function declineLabel({ reason }: Doubt): ButtonLabel {
  switch (reason.kind) {
    case 'why-not':
      return { kind: 'no-reason' };
    case 'change-set-up':
    case 'planted-where':
    case 'how-much-stock':
      return { kind: 'leave-as-is' };
    default:
      return { kind: 'log-nothing' };
  }
}
