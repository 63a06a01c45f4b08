import type { Platform } from '../state/platform.ts';
import { announceChange, type Room, type Topic } from '../state/room.ts';
import type { StoredMessage } from '../state/stored-message.ts';
import type { WireKeyboard } from '../wire/keyboard.ts';
import type { WireContent, WireMessage } from '../wire/message.ts';
import type { WireUser } from '../wire/user.ts';

/** A message about to enter a chat. */
export type NewMessage = {
  readonly from: WireUser;
  readonly content: WireContent;
  readonly topic?: Topic | undefined;
  readonly replyTo?: WireMessage | undefined;
  readonly keyboard?: WireKeyboard | undefined;
};

/** Writes a message into a chat and gives it its id and date. Tells nobody. */
export const addToRoom = (platform: Platform, room: Room, message: NewMessage): StoredMessage => {
  const { from, content, topic, replyTo, keyboard } = message;
  const supergroup = room.chat.type === 'supergroup';
  const messageId = supergroup ? room.lastMessageId + 1 : platform.lastMessageId + 1;
  if (supergroup) room.lastMessageId = messageId;
  else platform.lastMessageId = messageId;
  const byBot = from.id === platform.bot.user.id;
  const shownReply = replyTo ?? room.messages.get(topic?.id ?? 0)?.wire;
  const threadId =
    topic?.id ?? (supergroup && replyTo !== undefined ? threadOf(replyTo) : undefined);
  const wire: WireMessage = {
    message_id: messageId,
    ...(threadId === undefined ? {} : { message_thread_id: threadId }),
    ...(topic === undefined ? {} : { is_topic_message: true }),
    from,
    chat: room.chat,
    date: platform.clock.nowS(),
    ...(shownReply === undefined ? {} : { reply_to_message: withoutReply(shownReply) }),
    ...content,
    ...(keyboard === undefined ? {} : { reply_markup: keyboard }),
  };
  const stored: StoredMessage = { wire, deleted: false, meantForBot: byBot, reactions: new Map() };
  room.messages.set(messageId, stored);
  if (from.is_bot) room.lastBotId = from.id;
  if (byBot) room.events.push({ kind: 'posted', wire });
  announceChange(room);
  return stored;
};

/** Outside topics a thread of replies in a supergroup bears the id of the message it began with. */
const threadOf = (replied: WireMessage): number => replied.message_thread_id ?? replied.message_id;

/** Documented: a replied message holds no reply of its own. */
const withoutReply = (message: WireMessage): WireMessage =>
  Object.fromEntries(
    Object.entries(message).filter(([name]) => name !== 'reply_to_message'),
  ) as unknown as WireMessage;
