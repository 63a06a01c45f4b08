import type { Entry, EntryDraft } from '../../greenhouse/entry.ts';
import type { Assumption } from '../../understanding/statement.ts';
import { withReceipt } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import type { Button } from '../outgoing.ts';
import { remarksOn } from '../remarks.ts';
import { askedFor } from './asked-for.ts';
import { tellOfOutages } from './tell-of-outages.ts';
import { forgetWorkBut } from './work-spoken-of.ts';

/** Writes what was said clearly into the logbook, says what was understood, and gives it. */
export function recordEntries(
  handling: Handling,
  drafts: readonly EntryDraft[],
  assumptions: readonly Assumption[] = [],
  messageId: string = handling.heard.messageId,
): readonly Entry[] {
  const { systems } = handling.standing.greenhouse;
  // A button may be older than the end of the system that it speaks of.
  const fitting = drafts.filter(
    ({ system }) => system === null || systems.some(({ id }) => id === system),
  );
  if (fitting.length === 0) {
    if (drafts.length > 0) handling.say({ kind: 'answer', answer: { kind: 'too-late' } });
    return [];
  }
  const logged = handling.log(askedFor(fitting, handling.standing), messageId);
  rememberReceipt(handling, logged, messageId);
  forgetWorkBut(handling, logged);
  const remarks = remarksOn(logged, handling.standing, handling.heard.member);
  handling.say({ kind: 'receipt', logged, assumptions, remarks }, strikeOutRow(logged));
  tellOfOutages(handling, logged);
  return logged;
}

export function rememberReceipt(
  handling: Handling,
  logged: readonly Entry[],
  messageId: string,
): void {
  if (logged.length === 0) return;
  handling.conversation = withReceipt(handling.conversation, {
    messageId,
    entries: logged.map((entry) => entry.no),
  });
}

export function strikeOutRow(logged: readonly Entry[]): readonly (readonly Button[])[] {
  if (logged.length === 0) return [];
  return [
    [
      {
        label: { kind: 'strike-out' },
        action: { kind: 'strike', entries: logged.map((entry) => entry.no) },
      },
    ],
  ];
}
