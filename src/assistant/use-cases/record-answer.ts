import type { Entry, EntryDraft } from '../../greenhouse/entry.ts';
import { entriesOfMessage } from '../../logbook/logbook.ts';
import type { AskedQuestion } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import { withoutLitresOfChange } from './litres-of-change.ts';
import { recordEntries } from './record-entries.ts';
import { replaceEntries } from './replace-entries.ts';

/** Logs what an answer settles, and gives it, as of the message that raised the question. */
export function recordAnswer(
  handling: Handling,
  drafts: readonly EntryDraft[],
  question: AskedQuestion | undefined,
): readonly Entry[] {
  // An outage was logged from when it was told: since when it was takes that entry's place.
  const provisional =
    question?.doubt.reason.kind === 'since-when'
      ? entriesOfMessage(handling.standing.logbook, question.messageId).filter(
          (entry) =>
            entry.struck === null &&
            entry.quantity === 'outage' &&
            drafts.some(({ of, system }) => of === entry.of && system === entry.system),
        )
      : [];
  if (question && provisional.length > 0 && drafts.length > 0)
    return replaceEntries(handling, provisional, drafts, question.messageId);
  const others = withoutLitresOfChange(handling, drafts);
  if (others.length === 0 && drafts.length > 0) return [];
  return recordEntries(handling, others, [], question?.messageId);
}
