import type { Arrangement } from '../../greenhouse/arrangement.ts';
import type { Duty } from '../../greenhouse/duty.ts';
import type { Entry, EntryNo } from '../../greenhouse/entry.ts';
import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import type { LocalDate } from '../../greenhouse/local-time.ts';
import type { WeatherDay } from '../../greenhouse/weather.ts';
import type { Conversation } from '../conversation.ts';
import type { Directory, HouseholdChange } from '../household/household.ts';
import type { Outgoing, OutgoingNo } from '../outgoing.ts';
import type { HouseholdStore } from './household-store.ts';
import type { PhotoStore } from './photo-store.ts';

export type GreenhouseId = number & { readonly __brand: 'GreenhouseId' };
export type InboxNo = number & { readonly __brand: 'InboxNo' };

/** The channel's own name for itself, `telegram`, `page`, `terminal`, `rehearsal`. */
export type ChannelName = string;

/** A raw incoming thing, kept under the platform's own id before it is acknowledged. */
export interface RawIncoming {
  readonly greenhouse: GreenhouseId;
  readonly channel: ChannelName;
  /** Unique in the channel; null where the platform has none, then the inbox number serves. */
  readonly platformId: string | null;
  readonly receivedAtMs: number;
  /** When it was written: earlier where it was held back, and what an edit of it goes by. */
  readonly writtenAtMs: number;
  /** The chat it came from: a member's handle or a group's name. */
  readonly chat: string;
  /** Plain JSON, as the channel's own reader can read it again. */
  readonly body: unknown;
}

export interface Received {
  readonly no: InboxNo;
  /** The platform's id, or the one made for it. */
  readonly platformId: string;
  /** False: it had been stored before. */
  readonly isNew: boolean;
  /** It was handled already, with all that it caused. */
  readonly isHandled: boolean;
}

/** What was received and written in one breath. */
export interface ReceivedDecided {
  readonly nos: readonly InboxNo[];
  /** Of the messages asked for, those in this process's hands, to be sent and settled in their order. */
  readonly leased: readonly OutgoingNo[];
}

export interface StoredIncoming extends RawIncoming {
  readonly no: InboxNo;
  readonly platformId: string;
}

/** The greenhouse's own numbering, read under its lock. */
export interface Counters {
  readonly revision: number;
  readonly lastEntryNo: number;
  readonly lastOutgoingNo: number;
  /** The latest instant at which anything was handled; the clock never runs behind it. */
  readonly clockMs: number;
}

/** What has been written since a revision; entries hold their strike-outs of that time. */
export interface Changes {
  readonly entries: readonly Entry[];
  readonly strikes: readonly StoredStrike[];
  readonly weather: readonly WeatherDay[];
  readonly mornings: readonly Morning[];
  readonly arrangements: readonly Arrangement[];
  /** Present where the set-up changed. */
  readonly greenhouse: Greenhouse | null;
}

export interface StoredStrike {
  readonly entry: EntryNo;
  readonly byHandle: string;
  readonly atMs: number;
}

export interface Morning {
  readonly date: LocalDate;
  readonly sentAtMs: number;
  /** What it asked for. */
  readonly duties: readonly Duty[];
  /** The round's messages, one a receiver. */
  readonly outgoing: readonly OutgoingNo[];
}

/** A greenhouse as its file or its growers have it, and since when. */
export interface SetUp {
  readonly greenhouse: Greenhouse;
  readonly createdAtMs: number;
}

/** What may be read while the greenhouse is locked. */
export interface Ledger {
  readonly greenhouse: GreenhouseId;
  readonly counters: Counters;
  setUp(): Promise<SetUp>;
  changesSince(revision: number): Promise<Changes>;
  conversation(handle: string): Promise<Conversation | null>;
  outgoing(no: OutgoingNo): Promise<Outgoing | null>;
  /** The message that the platform knows by this id in this chat, where we sent it. */
  outgoingByPlatformId(
    channel: ChannelName,
    chat: string,
    platformId: string,
  ): Promise<Outgoing | null>;
  /** The latest message of the bot in a chat, optionally of one kind. */
  latestOutgoing(chat: string, kind?: Outgoing['reply']['kind']): Promise<Outgoing | null>;
  /** What was said unasked to a member between two instants, earliest first. */
  alertsTo(chat: string, fromMs: number, untilMs: number): Promise<readonly Outgoing[]>;
  /** What was received under this id, for edits of it. */
  incoming(channel: ChannelName, platformId: string): Promise<StoredIncoming | null>;
  hasNotice(key: string): Promise<boolean>;
  /** The accounts and groups of this greenhouse on a channel. */
  directory(channel: ChannelName): Promise<Directory>;
}

/** All that one handling writes, in one transaction. Every part may be empty. */
export interface Writes {
  readonly clockMs: number;
  readonly entries: readonly Entry[];
  readonly strikes: readonly StoredStrike[];
  readonly weather: readonly WeatherDay[];
  readonly greenhouse: Greenhouse | null;
  readonly conversations: readonly Conversation[];
  readonly outgoing: readonly Outgoing[];
  readonly morning: Morning | null;
  /** Keys of what is said once: an alert, a reminder. */
  readonly notices: readonly string[];
  readonly household?: readonly HouseholdChange[];
  readonly arrangements?: readonly Arrangement[];
}

export interface PendingOutgoing {
  readonly greenhouse: GreenhouseId;
  readonly outgoing: Outgoing;
  readonly attempts: number;
  /** How many of them ended without an answer, a process that died while sending included. */
  readonly unanswered: number;
  /** How many parts of it have arrived, where it is too long for one message. */
  readonly partsSent: number;
  /** The platform's id of the message that this one edits; null: none, or that was not sent. */
  readonly editsPlatformId: string | null;
}

/**
 * The database, seen from the assistant.
 *
 * @throws Error with `cause` where the database cannot be reached; nothing is written then.
 */
export interface Store {
  readonly household: HouseholdStore;
  readonly photos: PhotoStore;
  greenhouses(): Promise<readonly { readonly id: GreenhouseId; readonly name: string }[]>;
  createGreenhouse(greenhouse: Greenhouse, atMs: number): Promise<GreenhouseId>;
  loadGreenhouse(id: GreenhouseId): Promise<SetUp>;
  receive(raw: RawIncoming): Promise<Received>;
  /** The same for many, stored together; in their order. */
  receiveAll(raws: readonly RawIncoming[]): Promise<readonly Received[]>;
  /** What was stored and never handled, oldest first: a process that died in between. */
  unhandled(channel: ChannelName): Promise<readonly StoredIncoming[]>;
  /**
   * Locks the greenhouse, lets `work` read and decide, and writes what it returns in the same
   * transaction. With an inbox number: does nothing and gives null where that was handled before.
   */
  transact<T>(
    greenhouse: GreenhouseId,
    inboxNo: InboxNo | null,
    work: (ledger: Ledger) => Promise<{ readonly writes: Writes; readonly result: T }>,
  ): Promise<T | null>;
  /** The same for many inbox rows of a greenhouse: `work` is given those not handled before. */
  transactAll<T>(
    greenhouse: GreenhouseId,
    inboxNos: readonly InboxNo[],
    work: (
      ledger: Ledger,
      open: ReadonlySet<InboxNo>,
    ) => Promise<{ readonly writes: Writes; readonly result: T }>,
  ): Promise<T | null>;
  /**
   * Receives and handles in one transaction: `work` is given what each was received as, and decides
   * on those that are new. Null where none is.
   */
  receiveAndTransact<T>(
    greenhouse: GreenhouseId,
    raws: readonly RawIncoming[],
    work: (
      ledger: Ledger,
      received: readonly Received[],
    ) => Promise<{ readonly writes: Writes; readonly result: T }>,
  ): Promise<T | null>;
  /**
   * What may be read without a lock, of a greenhouse whose numbering is known from before. It is of
   * the moment only where `receiveDecided` says afterwards that nobody has written since.
   */
  look(greenhouse: GreenhouseId, counters: Counters): Ledger;
  /**
   * Receives and writes what was decided on it without a lock, while the greenhouse stands as by
   * these counters and none of it was received before. Of what is to be sent it takes up `lease` in
   * the same breath, each where the other `lease` would; how they are sent, `endLeases` says. Null, and
   * nothing is received or written: it has to be decided anew, by `receiveAndTransact`.
   */
  receiveDecided(
    greenhouse: GreenhouseId,
    counters: Counters,
    raws: readonly RawIncoming[],
    writes: Writes,
    lease: readonly OutgoingNo[],
  ): Promise<ReceivedDecided | null>;
  /** Reads without writing, all of one moment. */
  read<T>(greenhouse: GreenhouseId, work: (ledger: Ledger) => Promise<T>): Promise<T>;
  /**
   * Due now: the first waiting message of each chat, by number, so that a chat keeps its order; the
   * next one comes once that is settled. Locked against other processes until `settle` or a time-out.
   */
  pending(channel: ChannelName, nowMs: number, most: number): Promise<readonly PendingOutgoing[]>;
  /**
   * The same for one message that is known already: true, and it is locked, where it was never tried
   * before, edits no other, is due, and is the first waiting message of its chat.
   */
  lease(greenhouse: GreenhouseId, no: OutgoingNo, nowMs: number): Promise<boolean>;
  settle(greenhouse: GreenhouseId, no: OutgoingNo, outcome: Settled): Promise<void>;
  /** The same for who has something else to do meanwhile. */
  beginToSettle(greenhouse: GreenhouseId, no: OutgoingNo, outcome: Settled): Settling;
  /** Leased and not tried: it waits on as if nobody had taken it up. */
  giveBack(greenhouse: GreenhouseId, nos: readonly OutgoingNo[]): Promise<void>;
  /** So many parts of a long message have arrived; what is still to come goes on from there. */
  keepPartsSent(greenhouse: GreenhouseId, no: OutgoingNo, partsSent: number): Promise<void>;
  /**
   * What is in nobody's hands any more, since the process that sent it is surely gone. Of what was
   * leased together the first alone may have gone out: each is settled before the next is sent.
   */
  endLeases(channel: ChannelName): Promise<void>;
  /** The latest of a chat both ways, oldest first; what is not sent yet is there as well. */
  history(
    greenhouse: GreenhouseId,
    channel: ChannelName,
    chat: string,
    most: number,
  ): Promise<readonly HistoryItem[]>;
  close(): Promise<void>;
}

export type HistoryItem =
  | { readonly kind: 'incoming'; readonly incoming: StoredIncoming }
  | { readonly kind: 'outgoing'; readonly outgoing: Outgoing };

/**
 * A settling under way. `handedOn`: the database will do it, even if this process dies now; `done`: it
 * has done it. Where it cannot, `done` rejects.
 */
export interface Settling {
  readonly handedOn: Promise<void>;
  readonly done: Promise<void>;
}

/** What came of a sending. */
export type Settled =
  | {
      readonly kind: 'sent';
      readonly platformId: string | null;
      readonly atMs: number;
      /** The earlier message that goes on under this id: its chat has moved. */
      readonly renews?: OutgoingNo;
    }
  | {
      readonly kind: 'retry';
      readonly notBeforeMs: number;
      readonly because: string;
      /** The platform may have it: nobody knows. */
      readonly isUnanswered?: boolean;
    }
  | { readonly kind: 'given-up'; readonly because: string; readonly atMs: number };
