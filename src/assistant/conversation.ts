import type { ArrangementDraft } from '../greenhouse/arrangement.ts';
import type { Duty } from '../greenhouse/duty.ts';
import type { Danger, Entry, EntryNo } from '../greenhouse/entry.ts';
import type { SetUpChange } from '../greenhouse/set-up/set-up-change.ts';
import type { SetUpPatch } from '../greenhouse/set-up/set-up-patch.ts';
import type { SystemId } from '../greenhouse/system.ts';
import type { Doubt } from '../understanding/doubt.ts';
import type { Ask, WorkNamed } from '../understanding/statement.ts';
import type { Guide } from './guide/guide.ts';

/** Where the talk with one member stands: a row, plain data, replaced whole. */
export interface Conversation {
  readonly handle: string;
  /** Systems named of late: by which message, and when that was written. */
  readonly named: readonly NamedSystem[];
  /** Open questions, latest first. */
  readonly questions: readonly AskedQuestion[];
  /** What the member's last receipts logged, latest first, for undoing them one by one. */
  readonly receipts: readonly LoggedMessage[];
  /** What the member's last messages struck out, latest first, for putting it back. */
  readonly struck?: readonly StruckBy[];
  /** The questions that the member's last messages answered, latest first, for an answer that is edited. */
  readonly answered?: readonly AnsweredBy[];
  /** The guided set-up that the member is in the midst of. */
  readonly guide?: Guide;
  /** Cautions that were told in full; absent where none were. */
  readonly cautioned?: readonly string[];
  /** The work that the member asked about last; absent where something else was logged since. */
  readonly workSpokenOf?: WorkSpokenOf;
  /** What the member's last message came to; absent where none was heard yet. */
  readonly lastTalk?: { readonly of: Talk; readonly atMs: number };
  /** What the member's last message asked; absent where it asked nothing. */
  readonly asked?: { readonly ask: Ask; readonly atMs: number };
  /** What may hurt, as the member's last messages told of it and others heard at once, latest first. */
  readonly dangers?: readonly DangersTold[];
}

/** The list of what is due, something that was logged, or whatever else. */
export type Talk = 'list' | 'receipt' | 'else';

export interface WorkSpokenOf extends WorkNamed {
  readonly probe?: string;
  readonly atMs: number;
}

export interface DangersTold {
  readonly messageId: string;
  readonly dangers: readonly Danger[];
}

export interface NamedSystem {
  readonly system: SystemId;
  readonly messageId: string;
  readonly atMs: number;
}

export interface AskedQuestion {
  readonly questionId: string;
  readonly doubt: Doubt;
  readonly askedAtMs: number;
  /** Something else was said since: only its buttons still answer it. */
  readonly lapsed: boolean;
  /** The member's message that raised it. */
  readonly messageId: string;
}

export interface StruckBy {
  readonly messageId: string;
  readonly entries: readonly EntryNo[];
  /** What was logged in their place at once: an undone correction lets the first word stand again. */
  readonly instead?: readonly EntryNo[];
  /** Something else than entries was undone: what it had settled among people, which can be settled anew. */
  readonly settled?: readonly ArrangementDraft[];
  /** When; absent where an earlier version remembered it. */
  readonly atMs?: number;
  /** How many entries the logbook held by then. */
  readonly lastEntryNo: number;
}

export interface AnsweredBy {
  readonly messageId: string;
  readonly question: AskedQuestion;
  /** What the answer logged. */
  readonly entries: readonly EntryNo[];
}

export interface LoggedMessage {
  readonly messageId: string;
  readonly entries: readonly EntryNo[];
  /** A change of the set-up that it caused. */
  readonly setUp?: { readonly change: SetUpChange; readonly patch: SetUpPatch };
  /** The places of what it settled among the household's people. */
  readonly settled?: readonly number[];
}

export function newConversation(handle: string): Conversation {
  return { handle, named: [], questions: [], receipts: [] };
}

const namedForMs = 10 * 60_000;
const inOneBreathMs = 15_000;
const typedAnswerForMs = 30 * 60_000;
const questionsKept = 20;
const receiptsKept = 50;
const changesKept = 20;
const dangersKept = 20;

/** What others heard at once of a message. */
export function dangersTold({ dangers }: Conversation, messageId: string): readonly Danger[] {
  return (dangers ?? []).flatMap((told) => (told.messageId === messageId ? told.dangers : []));
}

export function withDangersTold(conversation: Conversation, told: DangersTold): Conversation {
  const dangers = [told, ...(conversation.dangers ?? [])].slice(0, dangersKept);
  return { ...conversation, dangers };
}

/** The one system this member named in the ten minutes before; null where there were none or two. */
export function recentSystem(conversation: Conversation, writtenAtMs: number): SystemId | null {
  const recent = conversation.named.filter(
    ({ atMs }) => writtenAtMs >= atMs && writtenAtMs - atMs <= namedForMs,
  );
  const systems = new Set(recent.map(({ system }) => system));
  return systems.size === 1 ? recent[0]!.system : null;
}

/** The questions that a typed answer may still answer, latest first. */
export function openQuestions(conversation: Conversation, writtenAtMs: number): AskedQuestion[] {
  return conversation.questions.filter(
    ({ lapsed, askedAtMs }) => !lapsed && writtenAtMs - askedAtMs <= typedAnswerForMs,
  );
}

export function withNamed(
  conversation: Conversation,
  systems: readonly SystemId[],
  { messageId, atMs }: Omit<NamedSystem, 'system'>,
): Conversation {
  const stillRecent = conversation.named.filter((named) => atMs - named.atMs <= namedForMs);
  const now = systems.map((system) => ({ system, messageId, atMs }));
  return { ...conversation, named: thinned([...stillRecent, ...now]) };
}

/** Without those that tell nothing: just before and just after them the same system was named. */
function thinned(named: readonly NamedSystem[]): readonly NamedSystem[] {
  return named.filter(({ system }, position) => {
    const same = (other: NamedSystem): boolean => other.system === system;
    const before = named.slice(0, position).findLast(same);
    const after = named.slice(position + 1).find(same);
    return !before || !after || Math.abs(after.atMs - before.atMs) > inOneBreathMs;
  });
}

/** Forgets what a message raised and named: it was edited. */
export function withoutMessage(conversation: Conversation, messageId: string): Conversation {
  const isOther = (part: { readonly messageId: string }): boolean => part.messageId !== messageId;
  return {
    ...conversation,
    named: conversation.named.filter(isOther),
    questions: conversation.questions.filter(isOther),
  };
}

/** Without the systems of entries that were another's: they were named by mistake. */
export function withoutNames(
  conversation: Conversation,
  entries: readonly Pick<Entry, 'system' | 'source'>[],
): Conversation {
  const named = conversation.named.filter(
    ({ system, messageId }) =>
      !entries.some((entry) => entry.system === system && entry.source.messageId === messageId),
  );
  return { ...conversation, named };
}

export function withQuestion(conversation: Conversation, question: AskedQuestion): Conversation {
  const questions = [question, ...conversation.questions].slice(0, questionsKept);
  return { ...conversation, questions };
}

export function withoutQuestion(conversation: Conversation, questionId: string): Conversation {
  const questions = conversation.questions.filter((question) => question.questionId !== questionId);
  return { ...conversation, questions };
}

/** Something else was said: open questions no longer take typed answers. */
export function withQuestionsLapsed(conversation: Conversation): Conversation {
  return {
    ...conversation,
    questions: conversation.questions.map((question) => ({ ...question, lapsed: true })),
  };
}

/** Somebody was spoken to about open duties: a `done` that follows is of those. */
export function withWorkTold(
  conversation: Conversation,
  duties: readonly Duty[],
  atMs: number,
): Conversation {
  const [first, ...others] = duties;
  const systems = [...new Set(duties.flatMap(({ system }) => (system === null ? [] : [system])))];
  const isOne = first !== undefined && others.length === 0;
  return {
    ...conversation,
    lastTalk: { of: 'list', atMs },
    workSpokenOf: {
      systems: systems.length > 0 ? systems : null,
      duty: isOne ? first.kind : null,
      chore: isOne ? (first.chore ?? null) : null,
      ...(isOne && first.probe !== undefined ? { probe: first.probe } : {}),
      atMs,
    },
  };
}

export function withReceipt(conversation: Conversation, logged: LoggedMessage): Conversation {
  return {
    ...conversation,
    receipts: [logged, ...conversation.receipts].slice(0, receiptsKept),
  };
}

/** Remembers what a message settled; what it settled before it goes with it. */
export function withSettledBy(
  conversation: Conversation,
  messageId: string,
  places: readonly number[],
): Conversation {
  const earlier = conversation.receipts.find(
    (receipt) => receipt.messageId === messageId && receipt.settled,
  );
  const others = conversation.receipts.filter((receipt) => receipt !== earlier);
  const settled = [...(earlier?.settled ?? []), ...places];
  return withReceipt({ ...conversation, receipts: others }, { messageId, entries: [], settled });
}

export function withStruck(conversation: Conversation, struck: StruckBy): Conversation {
  const earlier = conversation.struck ?? [];
  return { ...conversation, struck: [struck, ...earlier].slice(0, changesKept) };
}

export function withoutStruck(conversation: Conversation, struck: StruckBy): Conversation {
  return { ...conversation, struck: conversation.struck?.filter((each) => each !== struck) ?? [] };
}

/** Remembers what a message answered; an answer that takes its place is the one that counts. */
export function withAnswered(conversation: Conversation, answered: AnsweredBy): Conversation {
  const others = (conversation.answered ?? []).filter(
    ({ messageId }) => messageId !== answered.messageId,
  );
  return { ...conversation, answered: [answered, ...others].slice(0, changesKept) };
}

export function withoutReceipt(conversation: Conversation, receipt: LoggedMessage): Conversation {
  const receipts = conversation.receipts.filter((each) => each !== receipt);
  return { ...conversation, receipts };
}
