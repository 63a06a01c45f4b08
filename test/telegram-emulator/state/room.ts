import type { WireChat } from '../wire/chat.ts';
import type { MessageEvent } from './message-event.ts';
import type { Person } from './person.ts';
import type { StoredMessage } from './stored-message.ts';

/** A person's standing in a group (`ChatMember.status`). */
export type Standing = 'creator' | 'administrator' | 'member' | 'left' | 'kicked';

/** The bot's standing; `restricted` means it may read but not write. */
export type BotStanding = 'administrator' | 'member' | 'restricted' | 'left' | 'kicked';

/** A forum topic; its id is the id of the message that created it. */
export type Topic = { readonly id: number; readonly name: string; closed: boolean };

/** A chat and everything in it. */
export type Room = {
  readonly chat: WireChat;
  /** The other side of a private chat. */
  readonly person: Person | undefined;
  readonly standings: Map<number, Standing>;
  botStanding: BotStanding;
  /** Privacy mode as it stood when the bot joined; undefined follows the bot's own setting. */
  readonly privacy: boolean | undefined;
  /** The last bot that wrote here; plain commands go to it. */
  lastBotId: number | undefined;
  readonly topics: Map<number, Topic>;
  upgradedToId: number | undefined;
  readonly messages: Map<number, StoredMessage>;
  /** What the bot posted and edited, in order, each as it looked then. */
  readonly events: MessageEvent[];
  readonly listeners: Set<() => void>;
  /** Message ids of a supergroup are its own; other chats share the account's. */
  lastMessageId: number;
};

/** A chat with nothing in it yet. */
export const emptyRoom = (chat: WireChat, person?: Person, privacy?: boolean): Room => ({
  chat,
  person,
  standings: new Map(),
  botStanding: chat.type === 'private' ? 'member' : 'left',
  privacy,
  lastBotId: undefined,
  topics: new Map(),
  upgradedToId: undefined,
  messages: new Map(),
  events: [],
  listeners: new Set(),
  lastMessageId: 0,
});

/** Wakes whoever waits for the chat to look different. */
export const announceChange = (room: Room): void => {
  for (const listener of [...room.listeners]) listener();
};
