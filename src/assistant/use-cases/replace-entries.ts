import type { Entry, EntryDraft } from '../../greenhouse/entry.ts';
import type { Handling } from '../handling.ts';
import { remarksOn } from '../remarks.ts';
import { logCorrectedAgain, rememberStruck } from './put-back.ts';
import { rememberReceipt, strikeOutRow } from './record-entries.ts';
import { isStruck, nothingToTakeBack, refusesOthers } from './taken-back.ts';

/** Strikes entries out and says so; a helper's hand is held off others' entries. */
export function strikeOut(handling: Handling, entries: readonly Entry[]): void {
  strike(handling, entries, () => []);
}

/** Strikes entries out; where they had corrected others, those stand again as they were told first. */
export function undo(handling: Handling, entries: readonly Entry[]): void {
  strike(handling, entries, (struck) => logCorrectedAgain(handling, struck));
}

function strike(
  handling: Handling,
  entries: readonly Entry[],
  logInstead: (struck: readonly Entry[]) => readonly Entry[],
): void {
  const live = entries.filter((entry) => !isStruck(handling, entry));
  if (live.length === 0) return nothingToTakeBack(handling);
  if (refusesOthers(handling, live)) return;
  const struck = handling.strike(live);
  const logged = logInstead(struck);
  rememberStruck(handling, struck, logged);
  const remarks = remarksOn(logged, handling.standing, handling.heard.member);
  handling.say({ kind: 'correction', struck, logged, remarks }, strikeOutRow(logged));
}

/** Puts drafts in the place of entries, under one correction. */
export function replaceEntries(
  handling: Handling,
  entries: readonly Entry[],
  drafts: readonly EntryDraft[],
  messageId: string = handling.heard.messageId,
): readonly Entry[] {
  const struck = handling.strike(entries);
  const inPlaceOf = struck.map(({ no }) => no);
  const logged = handling.log(
    drafts.map((draft) => ({ ...draft, inPlaceOf })),
    messageId,
  );
  rememberReceipt(handling, logged, messageId);
  handling.say(
    {
      kind: 'correction',
      struck,
      logged,
      remarks: remarksOn(logged, handling.standing, handling.heard.member),
    },
    strikeOutRow(logged),
  );
  return logged;
}
