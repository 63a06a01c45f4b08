import type { Entry, EntryDraft } from '../../greenhouse/entry.ts';
import type { Handling } from '../handling.ts';
import { replaceEntries } from './replace-entries.ts';
import { isStruck, justToldMs, ownEntries } from './taken-back.ts';

/**
 * `couldn't do the jars`, said of what the same member told done just now: the failure takes the place of what was
 * done, so that the two do not stand beside each other; the other drafts are given back.
 */
export function withoutFailedAfterDone(
  handling: Handling,
  drafts: readonly EntryDraft[],
): readonly EntryDraft[] {
  const told = drafts.flatMap((draft) => {
    const done = draft.quantity === 'duty-failed' ? doneJustNow(handling, draft) : [];
    return done.length > 0 ? [{ draft, done }] : [];
  });
  for (const { draft, done } of told) replaceEntries(handling, done, [draft]);
  return drafts.filter((draft) => !told.some((each) => each.draft === draft));
}

/** All that was told done of the system, or of the one work that failed. */
function doneJustNow(handling: Handling, failed: EntryDraft): readonly Entry[] {
  return ownEntries(handling).filter(
    (entry) =>
      entry.quantity === 'duty-done' &&
      entry.system === failed.system &&
      handling.nowMs - entry.recordedAtMs <= justToldMs &&
      (failed.duty === undefined || entry.duty === failed.duty) &&
      (failed.chore === undefined || entry.chore === failed.chore) &&
      !isStruck(handling, entry),
  );
}
