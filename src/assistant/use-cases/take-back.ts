import type { Entry, EntryDraft } from '../../greenhouse/entry.ts';
import { believable } from '../../greenhouse/quantity.ts';
import { litresAtDepth, type System, type SystemId } from '../../greenhouse/system.ts';
import { entriesOfMessage } from '../../logbook/logbook.ts';
import type { Readable, TakingBack } from '../../understanding/statement.ts';
import { withQuestionsLapsed } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import { remarksOn } from '../remarks.ts';
import { askBack } from './ask-back.ts';
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
      const entries = target ?? undoLast(handling);
      if (entries) strikeOut(handling, entries);
      return;
    }
    case 'correct':
      return correct(handling, back, target);
    case 'move':
      return move(handling, target ?? lastMessage(handling), back.system);
    case 'deny':
      return strikeOut(handling, denied(handling, back, target));
  }
}

/** Strikes entries out and says so; a helper's hand is held off others' entries. */
export function strikeOut(handling: Handling, entries: readonly Entry[]): void {
  const live = entries.filter((entry) => !isStruck(handling, entry));
  if (live.length === 0) return nothingToTakeBack(handling);
  if (refusesOthers(handling, live)) return;
  const struck = handling.strike(live);
  handling.say({ kind: 'correction', struck, logged: [], remarks: [] });
}

/** Puts drafts in the place of entries, under one correction. */
export function replaceEntries(
  handling: Handling,
  entries: readonly Entry[],
  drafts: readonly EntryDraft[],
  messageId: string = handling.heard.messageId,
): void {
  const struck = handling.strike(entries);
  const logged = handling.log(drafts, messageId);
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
}

function correct(
  handling: Handling,
  back: Extract<TakingBack, { kind: 'correct' }>,
  target: readonly Entry[] | null,
): void {
  const candidates = (target ?? ownEntries(handling)).filter(
    (entry) => !isStruck(handling, entry) && (!back.system || entry.system === back.system),
  );
  for (const entry of candidates.toReversed()) {
    const reading = readingFor(entry, back.to);
    if (!reading || (back.from && !isGivenUp(entry, back.from))) continue;
    if (refusesOthers(handling, [entry])) return;
    const system = systemOf(handling, entry.system);
    const bounds = believable(entry.quantity, system);
    if (bounds && (reading.value < bounds[0] || reading.value > bounds[1])) {
      return askBack(handling, {
        reason: {
          kind: 'out-of-range',
          quantity: entry.quantity,
          value: reading.value,
          lowest: bounds[0],
          highest: bounds[1],
        },
        choices: [],
        waiting: null,
      });
    }
    handling.conversation = withQuestionsLapsed(handling.conversation);
    return replaceEntries(handling, [entry], [{ ...draftOf(entry), value: reading.value }]);
  }
  nothingToTakeBack(handling);
}

function move(handling: Handling, entries: readonly Entry[], to: SystemId): void {
  const moving = entries.filter(
    (entry) => !isStruck(handling, entry) && entry.system !== null && entry.system !== to,
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
  replaceEntries(handling, moving, drafts);
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
      (!back.quantity || candidate.quantity === back.quantity),
  );
  return entry ? [entry] : [];
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

function lastMessage(handling: Handling): readonly Entry[] {
  const [receipt] = handling.conversation.receipts;
  return receipt ? entriesOfMessage(handling.standing.logbook, receipt.messageId) : [];
}

/** What the corrected number means for this entry, if it can be read as its quantity. */
function readingFor(entry: Entry, to: readonly Readable[]): Readable | null {
  return to.find((reading) => reading.quantity === entry.quantity) ?? null;
}

function isGivenUp(entry: Entry, from: readonly Readable[]): boolean {
  return from.some(
    ({ quantity, value }) =>
      quantity === entry.quantity && Math.abs(value - entry.value) <= 0.005 * Math.abs(value),
  );
}

function draftOf(entry: Entry): EntryDraft {
  const { no: _no, source: _source, recordedAtMs: _at, struck: _struck, ...draft } = entry;
  return draft;
}

function isStruck(handling: Handling, entry: Entry): boolean {
  return handling.standing.logbook.all[entry.no - 1]?.struck !== null;
}

function systemOf(handling: Handling, id: SystemId | null): System | null {
  return handling.standing.greenhouse.systems.find((system) => system.id === id) ?? null;
}

function refusesOthers(handling: Handling, entries: readonly Entry[]): boolean {
  const others = entries.filter((entry) => !handling.mayChange(entry));
  if (others.length === 0) return false;
  handling.say({ kind: 'refusal', because: { kind: 'not-yours', entries: others } });
  return true;
}

function nothingToTakeBack(handling: Handling): void {
  handling.say({ kind: 'answer', answer: { kind: 'nothing-to-take-back' } });
}
