import type { Entry, EntryDraft } from '../../greenhouse/entry.ts';
import { fitsSystem, movedTo } from '../../greenhouse/moved-draft.ts';
import { believable } from '../../greenhouse/quantity.ts';
import type { System } from '../../greenhouse/system.ts';
import { endedBy } from '../../planning/outages.ts';
import type { TakingBack } from '../../understanding/statement.ts';
import { withoutNames } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import { askBack } from './ask-back.ts';
import { draftOf } from './put-back.ts';
import { replaceEntries } from './replace-entries.ts';
import { isStruck, justToldMs, nothingToPutRight, refusesOthers, systemOf } from './taken-back.ts';

type Moving = Extract<TakingBack, { kind: 'move' }>;

export function move(handling: Handling, entries: readonly Entry[], back: Moving): void {
  const { system: to, quantity, notOf, from } = back;
  const moving = entries.filter(
    (entry) =>
      !isStruck(handling, entry) &&
      entry.system !== null &&
      entry.system !== to &&
      (quantity === undefined || entry.quantity === quantity) &&
      (notOf === undefined || entry.system === notOf) &&
      (from === undefined ||
        (entry.system === from && handling.nowMs - entry.recordedAtMs <= justToldMs)),
  );
  if (moving.length === 0) return nothingToPutRight(handling);
  if (refusesOthers(handling, moving)) return;
  const drafts = movedInto(handling, moving, systemOf(handling, to)!);
  if (!drafts) return;
  handling.conversation = withoutNames(handling.conversation, moving);
  replaceEntries(handling, moving, drafts);
}

/** The entries as another system's; null: it cannot hold one of them, and that is asked. */
export function movedInto(
  handling: Handling,
  moving: readonly Entry[],
  system: System,
): readonly EntryDraft[] | null {
  const drafts = moving.map((entry) => movedTo(draftOf(entry), system));
  const unfit = drafts.find((draft) => !fitsSystem(draft, system));
  if (!unfit) return drafts;
  const [lowest, highest] = believable(unfit.quantity, system)!;
  const { quantity, value } = unfit;
  askBack(handling, {
    reason: { kind: 'out-of-range', quantity, value, lowest, highest },
    choices: [],
    waiting: null,
  });
  return null;
}

/** Logs of another product what was told before; of several doses nobody knows which. */
export function changeProduct(
  handling: Handling,
  entries: readonly Entry[],
  { product, from }: Extract<TakingBack, { kind: 'other-product' }>,
): void {
  const meant = entries.filter(
    (entry) =>
      !isStruck(handling, entry) &&
      entry.quantity === 'dose' &&
      entry.product !== product &&
      (from === null || entry.product === from),
  );
  if (meant.length !== 1) return nothingToPutRight(handling);
  if (refusesOthers(handling, meant)) return;
  replaceEntries(
    handling,
    meant,
    meant.map((entry) => ({ ...draftOf(entry), product })),
  );
}

/** Logs at another time what was told before. */
export function retime(
  handling: Handling,
  entries: readonly Entry[],
  { atMs, isVague }: Extract<TakingBack, { kind: 'retime' }>,
): void {
  const meant = entries.filter((entry) => !isStruck(handling, entry));
  if (meant.length === 0) return nothingToPutRight(handling);
  if (refusesOthers(handling, meant)) return;
  if (meant.some((entry) => failedAfter(handling, entry, atMs))) return nothingToPutRight(handling);
  const drafts = meant.map((entry): EntryDraft => {
    const draft = { ...draftOf(entry), atMs };
    return isVague ? { ...draft, approximate: true } : draft;
  });
  replaceEntries(handling, meant, drafts);
}

/** What came back cannot have done so before it failed. */
function failedAfter({ standing }: Handling, entry: Entry, atMs: number): boolean {
  if (entry.quantity !== 'restored') return false;
  const outage = endedBy(entry, standing.logbook);
  return outage !== null && outage.atMs > atMs;
}
