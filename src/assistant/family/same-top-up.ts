import type { Entry, EntryDraft } from '../../greenhouse/entry.ts';
import { liveEntries } from '../../logbook/logbook.ts';
import { readCount } from '../../understanding/arranging/read-arrangings.ts';
import type { Context } from '../../understanding/context.ts';
import { openQuestions, withoutQuestion } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import { askBack } from '../use-cases/ask-back.ts';
import { recordEntries } from '../use-cases/record-entries.ts';

/** Two people who stood at the same can tell of it within so long. */
const SAME_WITHIN_MS = 15 * 60_000;
/** Said in other words, an amount comes out this much different at most. */
const SAME_SHARE = 0.25;

/** Asks whether a top-up that somebody else has just told of is the same; the others are given back. */
export function withoutDoubles(
  handling: Handling,
  drafts: readonly EntryDraft[],
): readonly EntryDraft[] {
  const doubled = drafts.flatMap((draft) => {
    const entry = sameOf(handling, draft);
    return entry ? [{ draft, entry }] : [];
  });
  return drafts.filter((draft) => !doubled.some((each) => each.draft === draft));
}

/** The question for each that was held back. */
export function askAboutDoubles(handling: Handling, drafts: readonly EntryDraft[]): void {
  for (const draft of drafts) {
    const entry = sameOf(handling, draft);
    if (entry?.source.kind !== 'member') continue;
    askBack(handling, {
      reason: { kind: 'one-or-two', entry: entry.no, by: entry.source.handle },
      choices: [
        { label: { kind: 'one-top-up' }, drafts: [] },
        { label: { kind: 'two-top-ups' }, drafts: [draft] },
      ],
      waiting: null,
    });
  }
}

/** A typed answer to that question: one, or two. False: it is none. */
export function hearCount(handling: Handling, text: string, context: Context): boolean {
  const [open] = openQuestions(handling.conversation, handling.heard.writtenAtMs);
  if (open?.doubt.reason.kind !== 'one-or-two') return false;
  const count = readCount(text, context);
  if (count === null) return false;
  handling.conversation = withoutQuestion(handling.conversation, open.questionId);
  const drafts = count === 'two' ? (open.doubt.choices[1]?.drafts ?? []) : [];
  if (drafts.length > 0) recordEntries(handling, drafts, [], open.messageId);
  else handling.say({ kind: 'answer', answer: { kind: 'left-out' } });
  return true;
}

function sameOf({ standing, heard }: Handling, draft: EntryDraft): Entry | null {
  if (draft.quantity !== 'top-up' || draft.system === null) return null;
  const told = liveEntries(standing.logbook, draft.system, 'top-up').findLast(
    ({ source, atMs, value }) =>
      source.kind === 'member' &&
      source.handle !== heard.member.handle &&
      Math.abs(atMs - draft.atMs) <= SAME_WITHIN_MS &&
      Math.abs(value - draft.value) <= SAME_SHARE * Math.max(value, draft.value),
  );
  return told ?? null;
}
