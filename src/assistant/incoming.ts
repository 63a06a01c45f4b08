/** What reaches the bot through any channel, in the channel-free form that the assistant handles. */
export type Incoming = MessageIncoming | EditIncoming | PressIncoming;

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
}

export type ReplyTarget =
  /** A message of the bot, or of a member, by the ids it may have been sent or received under. */
  | { readonly kind: 'message'; readonly ids: readonly string[] }
  /** The bot's latest message in the chat. */
  | { readonly kind: 'last' }
  /** The latest round. */
  | { readonly kind: 'round' };
