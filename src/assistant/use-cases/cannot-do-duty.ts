import type { Duty } from '../../greenhouse/duty.ts';
import type { Entry } from '../../greenhouse/entry.ts';
import { isDone } from '../../planning/duty-done.ts';
import type { Statement } from '../../understanding/statement.ts';
import { type AskedQuestion, openQuestions, withoutQuestion } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import { askBack } from './ask-back.ts';
import { saidDraft } from './close-duties.ts';
import type { Surroundings } from './hear-message.ts';
import { recordEntries } from './record-entries.ts';
import { replaceEntries } from './replace-entries.ts';

const mostInReason = 300;

/** Logs that a duty of a round could not be done, and asks why. */
export function cannotDoDuty(handling: Handling, duty: Duty, askedAtMs: number): void {
  handling.inPassing(() => {
    if (isDone(duty, handling.standing.logbook, askedAtMs)) {
      handling.say({ kind: 'answer', answer: { kind: 'nothing-open' } });
      return;
    }
    recordEntries(handling, [saidDraft('duty-failed', duty, handling.nowMs)]);
  });
  const entry = handling.newEntries.at(-1);
  if (!entry) return;
  const reason = { kind: 'why-not', duty, entry: entry.no } as const;
  askBack(handling, { reason, choices: [], waiting: null });
}

/** No reason is given: the entry stands as it is. */
export function leaveUnexplained(handling: Handling, { questionId }: AskedQuestion): void {
  handling.conversation = withoutQuestion(handling.conversation, questionId);
  handling.inPassing(() => {
    handling.say({ kind: 'answer', answer: { kind: 'thanks' } });
  });
}

/**
 * Takes a message for the reason asked for, where it replies to that question, or where the question
 * is open and nothing else was understood. False: it is no reason.
 */
export function hearReason(
  handling: Handling,
  text: string,
  statements: readonly Statement[],
  around: Surroundings,
): boolean {
  const open = openQuestions(handling.conversation, handling.heard.writtenAtMs);
  const { repliedTo } = around;
  const question =
    repliedTo?.kind === 'question'
      ? handling.conversation.questions.find(
          ({ questionId }) => questionId === repliedTo.questionId,
        )
      : statements.every(saysNothing)
        ? open[0]
        : undefined;
  if (question?.doubt.reason.kind !== 'why-not') return false;
  const failed: Entry | undefined = handling.standing.logbook.all[question.doubt.reason.entry - 1];
  handling.conversation = withoutQuestion(handling.conversation, question.questionId);
  if (!failed || failed.struck) return false;
  const note = text.trim().slice(0, mostInReason);
  const { no: _no, source: _source, recordedAtMs: _at, struck: _struck, ...draft } = failed;
  handling.inPassing(() => {
    replaceEntries(handling, [failed], [{ ...draft, note }]);
  });
  return true;
}

function saysNothing({ kind }: Statement): boolean {
  return kind === 'passed-over' || kind === 'doubt';
}
