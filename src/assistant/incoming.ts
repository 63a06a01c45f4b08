import type { PhotoRef } from '../greenhouse/photo.ts';
import type { SystemId } from '../greenhouse/system.ts';
import type { HouseholdWish } from './household/wish.ts';

/** What reaches the bot through any channel, in the channel-free form that the assistant handles. */
export type Incoming = MessageIncoming | EditIncoming | PressIncoming | WishIncoming;

/**
 * `invitationHash`: the hash of the code that an invitation made by this would have. The channel
 * makes the code from the id that it received this under, and so shows the same one however often
 * it is sent.
 */
interface FromMember {
  /** The member's handle. */
  readonly from: string;
  /** A group's name; null: the private chat. */
  readonly chat: string | null;
}

export interface MessageIncoming extends FromMember {
  readonly kind: 'message';
  readonly text: string;
  /** When it was written; earlier than its arrival where it was held back. */
  readonly writtenAtMs: number;
  readonly replyTo: ReplyTarget | null;
  /** The text is its caption; it may be empty. */
  readonly photo?: PhotoRef;
  /** The system that a form attaches the photo to: the text is its note then, and nothing is read in it. */
  readonly photoOf?: SystemId;
  /** Said among people and not to the bot: it answers only what it logs. */
  readonly isOverheard?: true;
}

export interface EditIncoming extends FromMember {
  readonly kind: 'edit';
  /** The edited message's id, as it was first received. */
  readonly edits: string;
  readonly text: string;
}

export interface PressIncoming extends FromMember {
  readonly kind: 'press';
  readonly token: string;
  readonly invitationHash?: string;
}

/** A wish about the household, on channels that know accounts. */
export interface WishIncoming extends FromMember {
  readonly kind: 'wish';
  readonly wish: HouseholdWish;
  readonly invitationHash?: string;
}

export type ReplyTarget =
  /** A message of the bot, or of a member, by the ids it may have been sent or received under. */
  | { readonly kind: 'message'; readonly ids: readonly string[] }
  /** The bot's latest message in the chat. */
  | { readonly kind: 'last' }
  /** The latest round. */
  | { readonly kind: 'round' };
