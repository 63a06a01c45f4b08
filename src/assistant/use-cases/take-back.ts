import type { Entry, EntryDraft } from '../../greenhouse/entry.ts';
import { localDateOf } from '../../greenhouse/local-time.ts';
import { believable, type Quantity } from '../../greenhouse/quantity.ts';
import { litresAtDepth, type System, type SystemId } from '../../greenhouse/system.ts';
import { entriesOfMessage } from '../../logbook/logbook.ts';
import {
  correctedValue,
  isCorrectedBy,
  isGivenUp,
  readingFor,
  slipsAway,
} from '../../understanding/answers/corrected-value.ts';
import type { TakingBack } from '../../understanding/statement.ts';
import { withoutNames, withQuestionsLapsed } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import { remarksOn } from '../remarks.ts';
import { askBack } from './ask-back.ts';
import {
  draftOf,
  logCorrectedAgain,
  putBackLast,
  rememberStruck,
  wasUndoneLately,
} from './put-back.ts';
import { rememberReceipt, strikeOutRow } from './record-entries.ts';
import { undoLast } from './undo-last.ts';

/** Undoes, corrects, moves or denies what was logged before. `target`: the entries replied to. */
export function takeBack(
  handling: Handling,
  back: TakingBack,
  target: readonly Entry[] | null,
): void {
  switch (back.kind) {
    case 'undo': {
      const { system } = back;
      const entries =
        system === undefined ? (target ?? undoLast(handling)) : lastOf(handling, system, target);
      if (entries) undo(handling, entries);
      return;
    }
    case 'put-back':
      if (back.isDenial && !wasUndoneLately(handling)) {
        const denial = { kind: 'deny', system: null, quantity: null } as const;
        return strikeOut(handling, denied(handling, denial, target));
      }
      return putBackLast(handling, back.isBare === true);
    case 'correct':
      return correct(handling, back, target);
    case 'move':
      return move(handling, target ?? lastMessage(handling), back);
    case 'other-product':
      return changeProduct(handling, target ?? lastMessage(handling), back);
    case 'retime':
      return retime(handling, target ?? lastMessage(handling), back);
    case 'deny':
      return strikeOut(handling, denied(handling, back, target));
  }
}

/** Strikes entries out and says so; a helper's hand is held off others' entries. */
export function strikeOut(handling: Handling, entries: readonly Entry[]): void {
  strike(handling, entries, () => []);
}

/** Strikes entries out; where they had corrected others, those stand again as they were told first. */
function undo(handling: Handling, entries: readonly Entry[]): void {
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

type Correcting = Extract<TakingBack, { kind: 'correct' }>;

/** The entry that a correction means; null: which of several is not to be told, undefined: none. */
function correctedEntry(
  handling: Handling,
  back: Correcting,
  target: readonly Entry[] | null,
): Entry | null | undefined {
  const { timeZone } = handling.standing.greenhouse;
  const candidates = (target ?? ownEntries(handling)).filter(
    (entry) =>
      !isStruck(handling, entry) &&
      (!back.system || entry.system === back.system) &&
      (!back.product || entry.product === back.product) &&
      (!back.onDate || localDateOf(entry.atMs, timeZone) === back.onDate),
  );
  const fitting = candidates.toReversed().filter((entry) => {
    const system = systemOf(handling, entry.system);
    if (!correctedValue(entry, back, system)) return false;
    return !back.from || isCorrectedBy(entry, back, system);
  });
  // Of several on that day nobody knows which.
  if (back.onDate !== undefined) return fitting.length > 1 ? null : fitting[0];
  return back.from ? fitting[0] : nearestOfMessage(handling, fitting, back);
}

/** So lately something may have been told that a correction means, though it gives up another value. */
const justToldMs = 3_600_000;

/** Whether there is nothing that a correction could be of. */
export function hasNothingToCorrect(
  handling: Handling,
  back: TakingBack,
  target: readonly Entry[] | null,
): boolean {
  if (back.kind !== 'correct' || correctedEntry(handling, back, target) !== undefined) return false;
  const recent = correctedEntry(handling, { ...back, from: null }, target);
  if (recent === null) return false;
  return recent === undefined || handling.nowMs - recent.recordedAtMs > justToldMs;
}

function correct(handling: Handling, back: Correcting, target: readonly Entry[] | null): void {
  const meant = correctedEntry(handling, back, target);
  if (meant === null) {
    const value = String(back.to[0]?.value ?? '');
    return askBack(handling, {
      reason: { kind: 'which-quantity', value },
      choices: [],
      waiting: null,
    });
  }
  for (const entry of meant ? [meant] : []) {
    if (refusesOthers(handling, [entry])) return;
    const system = systemOf(handling, entry.system);
    const corrected = correctedValue(entry, back, system)!;
    if (corrected === 'unsure') return askInWhichUnit(handling, entry, back);
    const bounds = believable(entry.quantity, system);
    if (bounds && (corrected.value < bounds[0] || corrected.value > bounds[1])) {
      return askBack(handling, {
        reason: {
          kind: 'out-of-range',
          quantity: entry.quantity,
          value: corrected.value,
          lowest: bounds[0],
          highest: bounds[1],
        },
        choices: [],
        waiting: null,
      });
    }
    handling.conversation = withQuestionsLapsed(handling.conversation);
    const { saidAs: _as, saidIn: _in, ...draft } = draftOf(entry);
    replaceEntries(handling, [entry], [{ ...draft, ...corrected }]);
    return;
  }
  const givenUp = back.from && entryGivenUp(handling, back, target);
  const bounds = givenUp && believable(givenUp.quantity, systemOf(handling, givenUp.system));
  if (!givenUp || !bounds) return nothingToTakeBack(handling);
  // `sorry, 56 not 5.4`: what is put right is plain, and what is meant cannot be.
  const [lowest, highest] = bounds;
  const { quantity } = givenUp;
  askBack(handling, {
    reason: { kind: 'out-of-range', quantity, value: back.said, lowest, highest },
    choices: [],
    waiting: null,
  });
}

/** The number alone leaves open whether it is in the unit of what it corrects. */
function askInWhichUnit(handling: Handling, { quantity }: Entry, { said }: Correcting): void {
  askBack(handling, {
    reason: { kind: 'which-unit', quantity, value: String(said) },
    choices: [],
    waiting: null,
  });
}

/** The entry with the value that a correction gives up, whatever it puts in its place. */
function entryGivenUp(
  handling: Handling,
  back: Correcting,
  target: readonly Entry[] | null,
): Entry | undefined {
  return (target ?? ownEntries(handling)).findLast(
    (entry) =>
      !isStruck(handling, entry) &&
      (!back.system || entry.system === back.system) &&
      back.from !== null &&
      isCorrectedBy(entry, back, systemOf(handling, entry.system)),
  );
}

type Moving = Extract<TakingBack, { kind: 'move' }>;

function move(handling: Handling, entries: readonly Entry[], back: Moving): void {
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
  if (moving.length === 0) return nothingToTakeBack(handling);
  if (refusesOthers(handling, moving)) return;
  const system = systemOf(handling, to)!;
  const drafts = moving.map((entry) => movedTo(draftOf(entry), system));
  const unfit = drafts.find((draft) => !fits(draft, system));
  if (unfit) {
    const [lowest, highest] = believable(unfit.quantity, system)!;
    const { quantity, value } = unfit;
    return askBack(handling, {
      reason: { kind: 'out-of-range', quantity, value, lowest, highest },
      choices: [],
      waiting: null,
    });
  }
  handling.conversation = withoutNames(handling.conversation, moving);
  replaceEntries(handling, moving, drafts);
}

/** Logs of another product what was told before; of several doses nobody knows which. */
function changeProduct(
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
  if (meant.length !== 1) return nothingToTakeBack(handling);
  if (refusesOthers(handling, meant)) return;
  replaceEntries(
    handling,
    meant,
    meant.map((entry) => ({ ...draftOf(entry), product })),
  );
}

/** Logs at another time what was told before. */
function retime(
  handling: Handling,
  entries: readonly Entry[],
  { atMs, isVague }: Extract<TakingBack, { kind: 'retime' }>,
): void {
  const meant = entries.filter((entry) => !isStruck(handling, entry));
  if (meant.length === 0) return nothingToTakeBack(handling);
  if (refusesOthers(handling, meant)) return;
  const drafts = meant.map((entry): EntryDraft => {
    const draft = { ...draftOf(entry), atMs };
    return isVague ? { ...draft, approximate: true } : draft;
  });
  replaceEntries(handling, meant, drafts);
}

function movedTo(draft: EntryDraft, system: System): EntryDraft {
  const moved = { ...draft, system: system.id };
  const said = draft.saidAs;
  if (!said) return moved;
  switch (said.kind) {
    case 'depth':
      return { ...moved, value: litresAtDepth(system, said.cm) };
    case 'below-brim':
      return { ...moved, value: system.brimL - litresAtDepth(system, said.cm) };
    case 'share':
      return { ...moved, value: system.brimL * said.share };
  }
}

function fits(draft: EntryDraft, system: System): boolean {
  const bounds = believable(draft.quantity, system);
  return !bounds || (draft.value >= bounds[0] && draft.value <= bounds[1]);
}

function denied(
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
      (!back.isOfJustNow || handling.nowMs - candidate.recordedAtMs <= justToldMs) &&
      (!back.given || isGivenUp(candidate, back.given)),
  );
  return entry ? [entry] : [];
}

/** An entry of that kind, or the work of that kind told as done. */
function isDeed({ quantity, duty }: Entry, denied: Quantity): boolean {
  return quantity === denied || (quantity === 'duty-done' && duty === denied);
}

const lookBackMs = 7 * 24 * 3_600_000;

/** The member's entries of the last week, by number. */
function ownEntries(handling: Handling): readonly Entry[] {
  const { handle } = handling.heard.member;
  return handling.standing.logbook.all.filter(
    ({ source, recordedAtMs }) =>
      source.kind === 'member' &&
      source.handle === handle &&
      handling.nowMs - recordedAtMs <= lookBackMs,
  );
}

/** What stands of a system of the last receipt that logged any of it. */
function lastOf(
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

function lastMessage(handling: Handling): readonly Entry[] {
  const [receipt] = handling.conversation.receipts;
  return receipt ? entriesOfMessage(handling.standing.logbook, receipt.messageId) : [];
}

/**
 * Of what the last fitting message logged, the entry that the corrected number comes nearest to; null where two
 * come as near, undefined where there is none.
 */
function nearestOfMessage(
  handling: Handling,
  latestFirst: readonly Entry[],
  back: Correcting,
): Entry | null | undefined {
  const [last] = latestFirst;
  if (!last) return undefined;
  const together = latestFirst.filter((entry) => messageOf(entry) === messageOf(last));
  const byDistance = together
    .map((entry) => {
      const corrected = correctedValue(entry, back, systemOf(handling, entry.system))!;
      const value = corrected === 'unsure' ? readingFor(entry, back.to)!.value : corrected.value;
      return { entry, distance: slipsAway(entry, value) };
    })
    .sort((a, b) => a.distance - b.distance);
  const [first, second] = byDistance;
  if (!second || second.distance > 2 * first!.distance) return first!.entry;
  // Of one quantity the later is meant; of two as near as each other nobody knows which.
  const isOneQuantity = first!.entry.quantity === second.entry.quantity;
  const later = first!.entry.no > second.entry.no ? first! : second;
  return isOneQuantity ? later.entry : null;
}

function messageOf({ source }: Entry): string | null {
  return source.kind === 'member' ? source.messageId : null;
}

function isStruck(handling: Handling, entry: Entry): boolean {
  return handling.standing.logbook.all[entry.no - 1]?.struck !== null;
}

function systemOf(handling: Handling, id: SystemId | null): System | null {
  return handling.standing.greenhouse.systems.find((system) => system.id === id) ?? null;
}

export function refusesOthers(handling: Handling, entries: readonly Entry[]): boolean {
  const others = entries.filter((entry) => !handling.mayChange(entry));
  if (others.length === 0) return false;
  handling.say({ kind: 'refusal', because: { kind: 'not-yours', entries: others } });
  return true;
}

function nothingToTakeBack(handling: Handling): void {
  handling.say({ kind: 'answer', answer: { kind: 'nothing-to-take-back' } });
}
