import type { Duty } from '../greenhouse/duty.ts';
import type { Entry, EntryDraft, Supply } from '../greenhouse/entry.ts';
import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import type { Member } from '../greenhouse/member.ts';
import type { SystemId } from '../greenhouse/system.ts';
import type { Doubt } from './doubt.ts';
import type { Ask } from './statement.ts';

/** What the message is a reply to, where the platform says so. */
export type RepliedTo =
  | { readonly kind: 'round'; readonly duties: readonly Duty[] }
  | { readonly kind: 'question'; readonly questionId: string; readonly doubt: Doubt }
  /** A receipt, an alert, or a member's own message, with what it logged and the systems it was about. */
  | {
      readonly kind: 'message';
      readonly entries: readonly Entry[];
      readonly systems: readonly SystemId[];
    };

/** A question of the bot to this member that is neither answered nor older than 30 minutes. */
export interface OpenQuestion {
  readonly questionId: string;
  readonly doubt: Doubt;
  /** The message that raised it told of something that was logged. */
  readonly hasLogged?: true;
}

/** Something that is out: of one system, or of the whole greenhouse. */
export interface OutSince {
  readonly of: Supply;
  readonly system: SystemId | null;
  readonly sinceMs: number;
}

/** All that a message is read against. The reader has no clock and no database: this is its world. */
export interface Context {
  readonly greenhouse: Greenhouse;
  readonly member: Member;
  /** When the message was written. */
  readonly writtenAtMs: number;
  readonly repliedTo: RepliedTo | null;
  /** The one system that this member named in the last ten minutes, by times of writing. */
  readonly recentSystem: SystemId | null;
  /** Latest first. */
  readonly openQuestions: readonly OpenQuestion[];
  /** This morning's round, where it has gone out and still holds open duties. */
  readonly roundDuties: readonly Duty[] | null;
  /** What is out as the log stands, where it is one thing alone; absent: nothing, or more. */
  readonly outage?: { readonly of: Supply; readonly system: SystemId | null };
  /** All that is out as the log stands, and since when; nothing of it is back before that. Absent: nothing. */
  readonly outSince?: readonly OutSince[];
  /** What this member's last message logged, where it was clear and is not ten minutes old; absent: nothing. */
  readonly justLogged?: readonly EntryDraft[];
  /** The question that this member's last message asked, where it is not ten minutes old; absent: none. */
  readonly asked?: Ask;
  /** The probe that this member calibrated in the last ten minutes, where they told of nothing else since. */
  readonly calibrating?: string;
  /** Nothing is logged before this instant. */
  readonly existsSinceMs: number;
}
