import type { ArrangementDraft } from '../../greenhouse/arrangement.ts';
import type { Entry } from '../../greenhouse/entry.ts';
import { type LoggedMessage, withoutReceipt } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import { undoSetUp } from './change-set-up.ts';
import { rememberUndone } from './put-back.ts';

/**
 * Takes back what the member did last and what still stands, where that was a change of the set-up or
 * of who goes when; gives the entries to strike out where it was those, null where it is done.
 */
export function undoLast(handling: Handling): readonly Entry[] | null {
  const last = handling.conversation.receipts.find((receipt) => stands(handling, receipt));
  if (last?.setUp) {
    undoSetUp(handling, last);
    rememberUndone(handling, []);
  } else if (last?.settled) undoSettled(handling, last);
  else return last?.entries.map((no) => handling.standing.logbook.all[no - 1]!) ?? [];
  return null;
}

/** Takes back what a message settled; false: it is taken back already. */
export function undoSettledOf(handling: Handling, messageId: string): boolean {
  const receipt = handling.conversation.receipts.find(
    (each) => each.messageId === messageId && each.settled,
  );
  if (!receipt) return false;
  undoSettled(handling, receipt);
  return true;
}

function stands({ standing }: Handling, { entries, setUp, settled }: LoggedMessage): boolean {
  const { all } = standing.logbook;
  return setUp !== undefined || settled !== undefined || entries.some((no) => !all[no - 1]?.struck);
}

function undoSettled(handling: Handling, receipt: LoggedMessage): void {
  const places = receipt.settled ?? [];
  const items = places
    .map((place) => handling.standing.arrangements[place])
    .filter((each): each is Settled => each !== undefined && each.kind !== 'taken-back');
  handling.conversation = withoutReceipt(handling.conversation, receipt);
  handling.unsettle(places);
  rememberUndone(
    handling,
    items.map(({ byHandle: _by, atMs: _at, ...item }) => item),
  );
  handling.say({ kind: 'answer', answer: { kind: 'unsettled', items } });
}

type Settled = ArrangementDraft & { readonly byHandle: string; readonly atMs: number };
