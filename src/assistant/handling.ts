import {
  type Arrangement,
  type ArrangementDraft,
  type TakenBack,
  withSettled,
} from '../greenhouse/arrangement.ts';
import type { Entry, EntryDraft, EntryNo } from '../greenhouse/entry.ts';
import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import type { Member } from '../greenhouse/member.ts';
import { asSpokenBy } from '../greenhouse/own-units.ts';
import type { PhotoRef } from '../greenhouse/photo.ts';
import type { SystemId } from '../greenhouse/system.ts';
import { withEntries, withStrikes } from '../logbook/logbook.ts';
import { withCautionsOnce } from './cautions-told.ts';
import { type Conversation, withSettledBy } from './conversation.ts';
import type { HouseholdChange } from './household/household.ts';
import type { Button, Outgoing, OutgoingNo } from './outgoing.ts';
import { may } from './permissions.ts';
import type { Counters, StoredStrike } from './ports/store.ts';
import type { Reply } from './replies/reply.ts';
import { type Standing, withGreenhouse, withLogbook } from './standing.ts';

/** Whom and what a handling answers. */
export interface Heard {
  readonly member: Member;
  /** A group's name, or null for the private chat. */
  readonly chat: string | null;
  readonly channel: string;
  /** The channel by which a member is reached when nobody wrote first. */
  readonly channelOf: (handle: string) => string;
  /** The id under which the message was received. */
  readonly messageId: string;
  readonly writtenAtMs: number;
  /** By a button, not by words. */
  readonly isPress: boolean;
  /** Said among people and not to the bot. */
  readonly isOverheard: boolean;
  /** The photo that the message is a caption of. */
  readonly photo: PhotoRef | null;
  /** The system that it was attached to by a form, and not by its words. */
  readonly photoOf: SystemId | null;
}

/**
 * One handling in progress: the use-cases log, strike and say through it, each seeing what the one
 * before did; at the end it holds all that is to be written.
 */
export class Handling {
  readonly heard: Heard;
  readonly nowMs: number;
  readonly newEntries: Entry[] = [];
  readonly newStrikes: StoredStrike[] = [];
  readonly outgoing: Outgoing[] = [];
  standing: Standing;
  conversation: Conversation;
  newGreenhouse: Greenhouse | null = null;
  readonly newArrangements: Arrangement[] = [];
  readonly householdChanges: HouseholdChange[] = [];
  /** The texts already looked through for what may hurt: each is by one of the use-cases. */
  readonly searchedForDangers = new Set<string>();
  #lastOutgoingNo: number;
  #isInPassing = false;

  constructor(
    standing: Standing,
    counters: Counters,
    conversation: Conversation,
    heard: Heard,
    nowMs: number,
  ) {
    this.standing = standing;
    this.conversation = conversation;
    this.heard = heard;
    this.nowMs = nowMs;
    this.#lastOutgoingNo = counters.lastOutgoingNo;
  }

  /** The greenhouse in the units of whoever wrote, in which their bare numbers are meant. */
  get spoken(): Greenhouse {
    return asSpokenBy(this.standing.greenhouse, this.heard.member.handle);
  }

  /** Puts drafts into the logbook under the member's message and gives the entries as they stand. */
  log(
    drafts: readonly EntryDraft[],
    messageId: string = this.heard.messageId,
    handle: string = this.heard.member.handle,
  ): readonly Entry[] {
    const last = this.standing.logbook.all.length;
    const entries = drafts.map(
      (draft, position): Entry => ({
        ...draft,
        no: (last + position + 1) as EntryNo,
        source: { kind: 'member', handle, messageId },
        recordedAtMs: this.nowMs,
        struck: null,
      }),
    );
    this.newEntries.push(...entries);
    this.standing = withLogbook(this.standing, withEntries(this.standing.logbook, entries));
    return entries;
  }

  /** Puts another set-up in the place of the present one. */
  setUp(greenhouse: Greenhouse): void {
    this.newGreenhouse = greenhouse;
    this.standing = withGreenhouse(this.standing, greenhouse);
  }

  /** Strikes out those entries that still stand, and gives them. */
  strike(entries: readonly Entry[]): readonly Entry[] {
    const live = entries.filter((entry) => !this.standing.logbook.all[entry.no - 1]?.struck);
    const strikes = live.map((entry) => ({
      entry: entry.no,
      byHandle: this.heard.member.handle,
      atMs: this.nowMs,
    }));
    this.newStrikes.push(...strikes);
    this.standing = withLogbook(this.standing, withStrikes(this.standing.logbook, strikes));
    return live;
  }

  /** Settles something among the household's people, to be taken back by the message that asked for it. */
  settle(drafts: readonly ArrangementDraft[]): void {
    const first = this.standing.arrangements.length;
    const places = drafts.map((_, position) => first + position);
    this.#arrange(drafts);
    this.conversation = withSettledBy(this.conversation, this.heard.messageId, places);
  }

  /** What was settled in these places holds no more. */
  unsettle(places: readonly number[]): void {
    this.#arrange([{ kind: 'taken-back', places }]);
  }

  #arrange(drafts: readonly (ArrangementDraft | TakenBack)[]): void {
    const { handle: byHandle } = this.heard.member;
    const settled = drafts.map((draft) => ({ ...draft, byHandle, atMs: this.nowMs }));
    this.newArrangements.push(...settled);
    const arrangements = withSettled(this.standing.arrangements, settled);
    this.standing = { ...this.standing, arrangements };
  }

  /** The number that the next message said will have. */
  get nextOutgoingNo(): number {
    return this.#lastOutgoingNo + 1;
  }

  /** What is said within `act` shows elsewhere too. */
  inPassing(act: () => void): void {
    this.#isInPassing = true;
    act();
    this.#isInPassing = false;
  }

  /** Answers in the chat where it was heard, or tells somebody else. */
  say(
    reply: Reply,
    buttons: readonly (readonly Button[])[] = [],
    to: string = this.heard.chat ?? this.heard.member.handle,
  ): Outgoing {
    this.#lastOutgoingNo += 1;
    const told = withCautionsOnce(reply, this.conversation);
    this.conversation = told.conversation;
    const message: Outgoing = {
      no: this.#lastOutgoingNo as OutgoingNo,
      atMs: this.nowMs,
      channel: this.heard.channel,
      to,
      inReplyTo: this.heard.messageId,
      reply: told.reply,
      buttons,
      ...(this.#isInPassing ? { inPassing: true } : {}),
    };
    this.outgoing.push(message);
    return message;
  }

  /** Tells somebody unasked, by the channel that reaches them. */
  tell(to: string, reply: Reply): void {
    this.#lastOutgoingNo += 1;
    this.outgoing.push({
      no: this.#lastOutgoingNo as OutgoingNo,
      atMs: this.nowMs,
      channel: this.heard.channelOf(to),
      to,
      inReplyTo: null,
      reply,
      buttons: [],
    });
  }

  /** Whether the member may strike or change this entry. */
  mayChange(entry: Entry): boolean {
    const { member } = this.heard;
    const isOwn = entry.source.kind === 'member' && entry.source.handle === member.handle;
    return may(member, 'say-taking-back', isOwn);
  }
}
