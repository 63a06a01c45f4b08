import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { Planting } from '../../greenhouse/set-up/set-up-change.ts';
import type { Choice } from '../../understanding/statement.ts';
import { understand } from '../../understanding/understand.ts';
import { type AskedQuestion, withoutQuestion } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import { may } from '../permissions.ts';
import { contextOf } from '../reading-context.ts';
import { askBack } from './ask-back.ts';
import { proposeChange } from './change-set-up.ts';
import type { Surroundings } from './hear-message.ts';

/** Asks in which system something was planted, with a button for each; null: it must be said whole. */
export function askWherePlanted(handling: Handling, planting: Planting | null): void {
  if (!may(handling.heard.member, 'wish-planted-somewhere', true)) {
    const because = { kind: 'growers-change-set-up', isReport: true } as const;
    handling.say({ kind: 'refusal', because });
  } else if (planting === null) {
    handling.say({ kind: 'answer', answer: { kind: 'planted-where' } });
  } else {
    const { systems } = handling.standing.greenhouse;
    askBack(handling, {
      reason: { kind: 'planted-where', planting },
      choices: systems.map(({ id }) => ({ label: { kind: 'system', system: id }, drafts: [] })),
      waiting: null,
    });
  }
}

/** Takes what a member says for one of the systems, or for leaving it; false: it says something else. */
export function answersWherePlanted(
  handling: Handling,
  question: AskedQuestion,
  text: string,
  around: Surroundings,
): boolean {
  const { questionId, doubt } = question;
  if (doubt.reason.kind !== 'planted-where') return false;
  // Read as any other question for a system; what would be logged tells which was chosen.
  const choices = doubt.choices.map(
    (choice): Choice => ({ ...choice, drafts: markOf(choice, handling.nowMs) }),
  );
  const open = { questionId, doubt: { ...doubt, choices } };
  const context = { ...contextOf(handling, around), openQuestions: [open], repliedTo: null };
  const { statements } = understand(text, context);
  const [answer] = statements;
  if (statements.length !== 1 || answer?.kind !== 'answered') return false;
  const [chosen] = answer.drafts;
  if (answer.drafts.length > 1) return false;
  const choice = choices.findIndex(({ drafts }) => drafts[0]?.system === chosen?.system);
  settleWherePlanted(handling, question, chosen ? choice : null);
  return true;
}

function markOf({ label }: Choice, atMs: number): readonly EntryDraft[] {
  return label.kind === 'system'
    ? [{ system: label.system, quantity: 'note', value: 1, atMs }]
    : [];
}

/** Shows the planting in the system chosen, to be confirmed; null: it is left. */
export function settleWherePlanted(
  handling: Handling,
  { questionId, doubt }: AskedQuestion,
  choice: number | null,
): void {
  handling.conversation = withoutQuestion(handling.conversation, questionId);
  const label = choice === null ? undefined : doubt.choices[choice]?.label;
  if (doubt.reason.kind !== 'planted-where' || label?.kind !== 'system') {
    handling.say({ kind: 'answer', answer: { kind: 'set-up-left' } });
    return;
  }
  proposeChange(handling, { kind: 'planted', system: label.system, ...doubt.reason.planting });
}
