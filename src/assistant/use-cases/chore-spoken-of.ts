import type { Chore } from '../../greenhouse/greenhouse.ts';
import type { SetUpChange } from '../../greenhouse/set-up/set-up-change.ts';
import { entriesOfMessage } from '../../logbook/logbook.ts';
import type { Handling } from '../handling.ts';

/** After that, `make that every 4 days` may be about anything. */
const spokenOfForMs = 30 * 60_000;

/** The chore that the member spoke of last: one that is there, or one that was shown and is not added yet. */
type SpokenOf = { readonly isThere: boolean; readonly chore: Chore };

/**
 * What `make that every 4 days` or `drop that chore` changes: the chore of the question that was asked last, or that
 * the last receipt is about; everyDays null: it is dropped. null: no chore was spoken of.
 */
export function changeOfSpoken(handling: Handling, everyDays: number | null): SetUpChange | null {
  const spoken = spokenOf(handling);
  if (!spoken) return null;
  const { chore, isThere } = spoken;
  if (everyDays === null) return isThere ? { kind: 'chore-dropped', name: chore.name } : null;
  if (!isThere) return { kind: 'chore-added', chore: { ...chore, everyDays } };
  return { kind: 'chore-moved', name: chore.name, everyDays };
}

function spokenOf(handling: Handling): SpokenOf | null {
  const { conversation, heard } = handling;
  const [question] = conversation.questions;
  const isFresh = question && heard.writtenAtMs - question.askedAtMs <= spokenOfForMs;
  const [receipt] = conversation.receipts;
  const entries = receipt ? entriesOfMessage(handling.standing.logbook, receipt.messageId) : [];
  const sinceMs = Math.max(isFresh ? question.askedAtMs : 0, heard.writtenAtMs - spokenOfForMs);
  const ticked = entries.find(({ chore, atMs }) => chore !== undefined && atMs >= sinceMs);
  const reason = isFresh && !ticked ? question.doubt.reason : null;
  if (reason?.kind === 'change-set-up') return ofChange(handling, reason.change);
  if (receipt?.setUp) return ofChange(handling, receipt.setUp.change);
  return ticked?.chore === undefined ? null : named(handling, ticked.chore);
}

function ofChange(handling: Handling, change: SetUpChange): SpokenOf | null {
  switch (change.kind) {
    case 'chore-added':
      return named(handling, change.chore.name) ?? { isThere: false, chore: change.chore };
    case 'chore-moved':
    case 'chore-dropped':
      return named(handling, change.name);
    default:
      return null;
  }
}

function named({ standing }: Handling, name: string): SpokenOf | null {
  const chore = standing.greenhouse.chores.find((each) => each.name === name);
  return chore ? { isThere: true, chore } : null;
}
