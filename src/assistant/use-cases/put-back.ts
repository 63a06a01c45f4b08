import type { ArrangementDraft } from '../../greenhouse/arrangement.ts';
import type { Entry, EntryDraft } from '../../greenhouse/entry.ts';
import { entriesOfMessage, successorsOf } from '../../logbook/logbook.ts';
import { type StruckBy, withoutStruck, withStruck } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import { remarksOn } from '../remarks.ts';
import { rememberReceipt, strikeOutRow } from './record-entries.ts';
import { undoSettledRow } from './undo-settled-row.ts';

/** Remembers what the message in hand has struck out, so that it can be put back. */
export function rememberStruck(
  handling: Handling,
  struck: readonly Entry[],
  instead: readonly Entry[] = [],
): void {
  if (struck.length === 0) return;
  handling.conversation = withStruck(handling.conversation, {
    messageId: handling.heard.messageId,
    entries: struck.map(({ no }) => no),
    ...(instead.length > 0 ? { instead: instead.map(({ no }) => no) } : {}),
    atMs: handling.nowMs,
    lastEntryNo: handling.standing.logbook.all.length,
  });
}

/** Remembers that something else than entries was undone last, and what of it can be settled anew. */
export function rememberUndone(handling: Handling, settled: readonly ArrangementDraft[]): void {
  handling.conversation = withStruck(handling.conversation, {
    messageId: handling.heard.messageId,
    entries: [],
    settled,
    atMs: handling.nowMs,
    lastEntryNo: handling.standing.logbook.all.length,
  });
}

/** So long after an undo, `no wait` alone can be about it. */
const calledOffWithinMs = 10 * 60_000;

/** Whether the member undid something so lately that a bare word can be about it. */
export function wasUndoneLately({ conversation, nowMs }: Handling): boolean {
  const [latest] = conversation.struck ?? [];
  return nowMs - (latest?.atMs ?? 0) <= calledOffWithinMs;
}

/** Puts back what the member undid last, where they have told nothing new since. */
export function putBackLast(handling: Handling, isBare: boolean): void {
  const [latest] = handling.conversation.struck ?? [];
  const last = isBare && !wasUndoneLately(handling) ? undefined : latest;
  const { handle } = handling.heard.member;
  const later = last ? handling.standing.logbook.all.slice(last.lastEntryNo) : [];
  const goesOn = later.some(({ source }) => source.kind === 'member' && source.handle === handle);
  if (last?.settled && last.settled.length > 0 && !goesOn)
    return settleAnew(handling, last, last.settled);
  const instead = last && !goesOn ? strikeInstead(handling, last) : [];
  const logged = last && !goesOn ? putBackStruck(handling, last) : [];
  if (logged.length > 0) return tellPutBack(handling, logged, instead);
  handling.say({ kind: 'answer', answer: { kind: isBare ? 'unknown' : 'nothing-to-put-back' } });
}

/** What had taken the place of the entries goes, so that nothing is counted twice. */
function strikeInstead(handling: Handling, { instead = [] }: StruckBy): readonly Entry[] {
  const { all } = handling.standing.logbook;
  return handling.strike(instead.map((no) => all[no - 1]!));
}

function settleAnew(handling: Handling, last: StruckBy, items: readonly ArrangementDraft[]): void {
  handling.conversation = withoutStruck(handling.conversation, last);
  handling.settle(items);
  handling.say({ kind: 'answer', answer: { kind: 'settled', items, instead: [] } }, [
    undoSettledRow(handling),
  ]);
}

/** Puts back what the message in hand had struck out: it was edited. */
export function putBackStruckByMessage(handling: Handling): void {
  const { messageId } = handling.heard;
  const struck = handling.conversation.struck?.find((each) => each.messageId === messageId);
  const logged = struck ? putBackStruck(handling, struck) : [];
  if (logged.length > 0) tellPutBack(handling, logged);
}

function putBackStruck(handling: Handling, struck: StruckBy): readonly Entry[] {
  handling.conversation = withoutStruck(handling.conversation, struck);
  const { all } = handling.standing.logbook;
  return logAgain(
    handling,
    struck.entries.map((no) => all[no - 1]!),
  );
}

function tellPutBack(
  handling: Handling,
  logged: readonly Entry[],
  instead: readonly Entry[] = [],
): void {
  const remarks = remarksOn(logged, handling.standing, handling.heard.member);
  if (instead.length > 0) {
    const correction = { kind: 'correction', struck: instead, logged, remarks } as const;
    handling.say(correction, strikeOutRow(logged));
    return;
  }
  handling.say({ kind: 'receipt', logged, assumptions: [], remarks }, strikeOutRow(logged));
}

/**
 * Logs struck entries anew as they were, each under the message that told it; not those in whose place
 * something stands, since that would count them twice.
 */
export function logAgain(handling: Handling, struck: readonly Entry[]): readonly Entry[] {
  return logAnew(
    handling,
    struck.filter((entry) => isMissing(handling, entry)),
  );
}

/** Logs what entries that a correction had struck out said, now that the correction itself is struck out. */
export function logCorrectedAgain(
  handling: Handling,
  corrections: readonly Entry[],
): readonly Entry[] {
  const { logbook } = handling.standing;
  const corrected = new Set(corrections.flatMap((entry) => correctedBy(handling, entry)));
  return logAnew(
    handling,
    [...corrected].filter((entry) =>
      successorsOf(logbook, [entry]).every(({ struck }) => struck !== null),
    ),
  );
}

/** What an entry stands in place of, where another message had told that: it was corrected, and not put back. */
function correctedBy({ standing }: Handling, { inPlaceOf, source }: Entry): readonly Entry[] {
  const before = (inPlaceOf ?? []).map((no) => standing.logbook.all[no - 1]!);
  return before.filter((entry) => entry.source.messageId !== source.messageId);
}

function logAnew(handling: Handling, missing: readonly Entry[]): readonly Entry[] {
  const logged = missing.flatMap((entry) => {
    const { source } = entry;
    const handle = source.kind === 'member' ? source.handle : undefined;
    const draft = { ...draftOf(entry), inPlaceOf: [entry.no, ...(entry.inPlaceOf ?? [])] };
    return handling.log([draft], source.messageId, handle);
  });
  for (const messageId of new Set(logged.map(({ source }) => source.messageId))) {
    const ofMessage = logged.filter(({ source }) => source.messageId === messageId);
    rememberReceipt(handling, ofMessage, messageId);
  }
  return logged;
}

function isMissing({ standing: { logbook } }: Handling, entry: Entry): boolean {
  const { no, source } = entry;
  if (!logbook.all[no - 1]?.struck) return false;
  const inItsPlace = [
    ...entriesOfMessage(logbook, source.messageId).filter((other) => other.no > no),
    ...successorsOf(logbook, [entry]),
  ];
  return inItsPlace.every(({ struck }) => struck !== null);
}

/** What an entry says, to be logged anew. */
export function draftOf(entry: Entry): EntryDraft {
  const {
    no: _no,
    source: _source,
    recordedAtMs: _at,
    struck: _struck,
    inPlaceOf: _before,
    ...draft
  } = entry;
  return draft;
}
