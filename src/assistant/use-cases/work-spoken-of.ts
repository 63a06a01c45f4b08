import type { Duty } from '../../greenhouse/duty.ts';
import type { Entry } from '../../greenhouse/entry.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Ask, WorkNamed } from '../../understanding/statement.ts';
import { type Conversation, type Talk, type WorkSpokenOf, withNamed } from '../conversation.ts';
import { DUTIES_OF } from '../duties-of.ts';
import type { Handling } from '../handling.ts';

/** So long after a question about some work a bare `done` may be of that work alone. */
const spokenOfForMs = 3 * 3_600_000;

/** The work that the member asked about last, where nothing else was logged since; null: of none, or long ago. */
export function workSpokenOf({ conversation, heard }: Handling): WorkSpokenOf | null {
  const { workSpokenOf: work } = conversation;
  if (!work || heard.writtenAtMs - work.atMs > spokenOfForMs) return null;
  return work;
}

/** Remembers what a question was about; one about the whole list is about no work in particular. */
export function noteWorkAsked(handling: Handling, ask: Ask): void {
  switch (ask.kind) {
    case 'what-is-due':
      return noteWork(handling, ofSystem(ask.system));
    case 'when-next':
      return noteWork(handling, { ...ofSystem(ask.system), duty: ask.duty });
    case 'who': {
      const { system, quantity, duty, chore } = ask;
      const kind = duty ?? (quantity === null ? null : (DUTIES_OF[quantity] ?? null));
      return noteWork(handling, { ...ofSystem(system), duty: kind, chore });
    }
    default:
      if ('system' in ask && ask.system !== null) noteWork(handling, ofSystem(ask.system));
  }
}

/** Remembers a question, for `and the gutters?` after it. */
export function noteAsked(handling: Handling, ask: Ask): void {
  const atMs = handling.heard.writtenAtMs;
  handling.conversation = { ...handling.conversation, asked: { ask, atMs } };
}

/** What was asked before a message that asked nothing itself is over with it. */
export function forgetAsked(handling: Handling, before: Conversation['asked']): void {
  const { asked, ...others } = handling.conversation;
  if (asked !== undefined && asked === before) handling.conversation = others;
}

/** Remembers the duty that was just unfolded into its steps. */
export function noteDutyShown(handling: Handling, { kind, system, chore, probe }: Duty): void {
  const { messageId, writtenAtMs: atMs } = handling.heard;
  const named = system === null ? [] : [system];
  handling.conversation = withNamed(handling.conversation, named, { messageId, atMs });
  noteWork(handling, {
    ...ofSystem(system),
    duty: kind,
    chore: chore ?? null,
    ...(probe === undefined ? {} : { probe }),
  });
}

export function noteWork(handling: Handling, work: Omit<WorkSpokenOf, 'atMs'>): void {
  const { workSpokenOf: _, ...others } = handling.conversation;
  const isSome = work.systems !== null || work.duty !== null || work.chore !== null;
  handling.conversation = isSome
    ? { ...others, workSpokenOf: { ...work, atMs: handling.heard.writtenAtMs } }
    : others;
}

/** So long after something else a `done` is not quite sure to be of the list. */
const talkForMs = 30 * 60_000;

/** What the member's last message came to; null: there was none for a while, and the list stands alone. */
export function lastTalk({ conversation, heard, standing }: Handling): Talk | null {
  const { lastTalk: talk } = conversation;
  const round = standing.rounds.findLast(({ sentAtMs }) => sentAtMs <= heard.writtenAtMs);
  // The round came after it: the list was spoken of last.
  if (talk && round && round.sentAtMs > talk.atMs) return null;
  return talk && heard.writtenAtMs - talk.atMs <= talkForMs ? talk.of : null;
}

/** Remembers what a message came to, by what it was answered. */
export function noteTalk(handling: Handling): void {
  const { outgoing, heard } = handling;
  const replies = outgoing.flatMap(({ to, reply }) => (to === heard.member.handle ? [reply] : []));
  if (replies.length === 0) return;
  const isList = replies.some((reply) => reply.kind === 'answer' && reply.answer.kind === 'due');
  const isLogged = replies.some(({ kind }) => kind === 'receipt' || kind === 'correction');
  const isThanks = replies.every(
    (reply) => reply.kind === 'answer' && reply.answer.kind === 'thanks',
  );
  if (isThanks) return;
  const isClear = replies.every(({ kind }) => kind !== 'question');
  const of = isList ? 'list' : isLogged && isClear ? 'receipt' : 'else';
  handling.conversation = {
    ...handling.conversation,
    lastTalk: { of, atMs: heard.writtenAtMs },
  };
}

/** Something else was logged: the talk has gone on. */
export function forgetWorkBut(handling: Handling, logged: readonly Entry[]): void {
  const { systems } = handling.conversation.workSpokenOf ?? { systems: null };
  const isOfIt = logged.some(({ system }) => system !== null && systems?.includes(system));
  if (!isOfIt) noteWork(handling, ofSystem(null));
}

export function ofSystem(system: SystemId | null): WorkNamed {
  return { systems: system === null ? null : [system], duty: null, chore: null };
}
