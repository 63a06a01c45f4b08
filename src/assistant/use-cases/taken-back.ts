import type { Entry } from '../../greenhouse/entry.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import type { System, SystemId } from '../../greenhouse/system.ts';
import { entriesOfMessage } from '../../logbook/logbook.ts';
import { isGivenUp } from '../../understanding/answers/corrected-value.ts';
import { isNamedWork } from '../../understanding/is-named-work.ts';
import type { TakingBack } from '../../understanding/statement.ts';
import type { Handling } from '../handling.ts';

/** So lately something may have been told that a correction means, though it gives up another value. */
export const justToldMs = 3_600_000;

/** The last entry that a denial is of, as a list; empty: there is none. */
export function denied(
  handling: Handling,
  back: Extract<TakingBack, { kind: 'deny' }>,
  target: readonly Entry[] | null,
): readonly Entry[] {
  const entry = (target ?? ownEntries(handling)).findLast(
    (candidate) =>
      !isStruck(handling, candidate) &&
      (!back.system || candidate.system === back.system) &&
      (!back.quantity || isDeed(candidate, back.quantity)) &&
      (!back.product || candidate.product === back.product) &&
      (!back.probe || candidate.probe === back.probe) &&
      (!back.chore || candidate.chore === back.chore) &&
      (!back.isOfJustNow || handling.nowMs - candidate.recordedAtMs <= justToldMs) &&
      (!back.given || isGivenUp(candidate, back.given)),
  );
  return entry ? [entry] : [];
}

/** An entry of that kind, or the work of that kind told as done. */
function isDeed({ quantity, duty }: Entry, denied: Quantity): boolean {
  return quantity === denied || (quantity === 'duty-done' && duty === denied);
}

/** The work that was told done and was not after all. */
export function notDone(
  handling: Handling,
  { works }: Extract<TakingBack, { kind: 'not-done' }>,
  target: readonly Entry[] | null,
): readonly Entry[] {
  return (target ?? lastMessage(handling)).filter(
    (entry) =>
      entry.quantity === 'duty-done' &&
      !isStruck(handling, entry) &&
      works.some((work) => isNamedWork(entry, work)),
  );
}

const lookBackMs = 7 * 24 * 3_600_000;

/** The member's entries of the last week, by number. */
export function ownEntries(handling: Handling): readonly Entry[] {
  const { handle } = handling.heard.member;
  return handling.standing.logbook.all.filter(
    ({ source, recordedAtMs }) =>
      source.kind === 'member' &&
      source.handle === handle &&
      handling.nowMs - recordedAtMs <= lookBackMs,
  );
}

/** What stands of a system of the last receipt that logged any of it. */
export function lastOf(
  handling: Handling,
  system: SystemId,
  target: readonly Entry[] | null,
): readonly Entry[] {
  const { all } = handling.standing.logbook;
  const receipts = handling.conversation.receipts.map(({ entries }) =>
    entries.map((no) => all[no - 1]!),
  );
  const isOfIt = (entry: Entry): boolean => entry.system === system && !isStruck(handling, entry);
  const told = [target ?? [], ...(target ? [] : receipts)].find((entries) => entries.some(isOfIt));
  return told?.filter(isOfIt) ?? [];
}

export function lastMessage(handling: Handling): readonly Entry[] {
  const [receipt] = handling.conversation.receipts;
  return receipt ? entriesOfMessage(handling.standing.logbook, receipt.messageId) : [];
}

/** What the member's last message that told of such a quantity logged, where it is not long ago. */
export function lastMessageWith(handling: Handling, quantity: Quantity): readonly Entry[] {
  const { all } = handling.standing.logbook;
  const receipt = handling.conversation.receipts.find(({ entries }) =>
    entries.some((no) => {
      const entry = all[no - 1]!;
      return (
        entry.quantity === quantity &&
        !isStruck(handling, entry) &&
        handling.nowMs - entry.recordedAtMs <= justToldMs
      );
    }),
  );
  return receipt ? entriesOfMessage(handling.standing.logbook, receipt.messageId) : [];
}

export function isStruck(handling: Handling, entry: Entry): boolean {
  return handling.standing.logbook.all[entry.no - 1]?.struck !== null;
}

export function systemOf(handling: Handling, id: SystemId | null): System | null {
  return handling.standing.greenhouse.systems.find((system) => system.id === id) ?? null;
}

export function refusesOthers(handling: Handling, entries: readonly Entry[]): boolean {
  const others = entries.filter((entry) => !handling.mayChange(entry));
  if (others.length === 0) return false;
  handling.say({ kind: 'refusal', because: { kind: 'not-yours', entries: others } });
  return true;
}

export function nothingToPutRight(handling: Handling): void {
  handling.say({ kind: 'answer', answer: { kind: 'nothing-to-put-right' } });
}

export function nothingToTakeBack(handling: Handling): void {
  handling.say({ kind: 'answer', answer: { kind: 'nothing-to-take-back' } });
}
