import type { Chat, ChatMember, Message, Update, User } from 'grammy/types';
import type { Language } from '../../../greenhouse/member.ts';
import type { MessageKey } from '../message-key.ts';
import { type Self, spokenText } from './spoken-text.ts';
import type { Person, Place, Told } from './told.ts';

const nothing: Told = { kind: 'nothing' };

/** What the channel asks the platform for; all else is never sent. */
export const wantedUpdates = [
  'message',
  'edited_message',
  'callback_query',
  'my_chat_member',
] as const satisfies readonly (keyof Update)[];

/**
 * What an update tells, or nothing where it is of no use here. A message's date is in whole seconds:
 * it counts as the last instant of that second, but never as later than its receipt.
 */
export function readUpdate(update: Update, self: Self, receivedAtMs: number): Told {
  if (update.message) return readMessage(update.message, self, false, receivedAtMs);
  if (update.edited_message) return readMessage(update.edited_message, self, true, receivedAtMs);
  if (update.callback_query) {
    const { id, from, message, data } = update.callback_query;
    const place = message ? placeOf(message.chat, threadOf(message)) : privatePlace(from);
    const key = message ? keyOf(message) : null;
    return {
      kind: 'pressed',
      person: personOf(from),
      place,
      key,
      callbackId: id,
      data: data ?? '',
    };
  }
  if (update.my_chat_member) {
    const { from, chat, new_chat_member } = update.my_chat_member;
    if (chat.type === 'channel') return nothing;
    const isIn = isThere(new_chat_member);
    return { kind: 'standing', person: personOf(from), place: placeOf(chat, null), isIn };
  }
  return nothing;
}

/** A restricted member may be there or not. */
function isThere(member: ChatMember): boolean {
  if (member.status === 'restricted') return member.is_member;
  return member.status !== 'left' && member.status !== 'kicked';
}

function readMessage(message: Message, self: Self, isEdit: boolean, receivedAtMs: number): Told {
  const { chat, from, migrate_to_chat_id, migrate_from_chat_id } = message;
  if (migrate_to_chat_id !== undefined) {
    return { kind: 'moved', fromChatId: chat.id, toChatId: migrate_to_chat_id };
  }
  if (migrate_from_chat_id !== undefined) {
    return { kind: 'moved', fromChatId: migrate_from_chat_id, toChatId: chat.id };
  }
  if (!from || from.is_bot || chat.type === 'channel' || isService(message)) return nothing;
  const { text, command, isMention, isForOther } = spokenText(message, self);
  if (isForOther) return nothing;
  const replied = repliedIn(message);
  const isReplyToBot = replied?.from?.id === self.id;
  return {
    kind: 'said',
    person: personOf(from),
    place: placeOf(chat, threadOf(message)),
    key: keyOf(message),
    text,
    // The largest of its sizes comes last.
    photoId: message.photo?.at(-1)?.file_id ?? null,
    writtenAtMs: Math.min(message.date * 1000 + 999, receivedAtMs),
    replyTo: replied ? keyOf(replied) : null,
    isAddressed: chat.type === 'private' || isMention || isReplyToBot || command !== null,
    isEdit,
    command,
  };
}

/** People coming and going, pinned messages, topics: the platform's own announcements. */
function isService(message: Message): boolean {
  return serviceFields.some((field) => message[field] !== undefined);
}

const serviceFields = [
  'new_chat_members',
  'left_chat_member',
  'new_chat_title',
  'new_chat_photo',
  'delete_chat_photo',
  'group_chat_created',
  'supergroup_chat_created',
  'message_auto_delete_timer_changed',
  'pinned_message',
  'forum_topic_created',
  'forum_topic_edited',
  'forum_topic_closed',
  'forum_topic_reopened',
  'general_forum_topic_hidden',
  'general_forum_topic_unhidden',
  'video_chat_started',
  'video_chat_ended',
  'video_chat_scheduled',
  'video_chat_participants_invited',
] as const satisfies readonly (keyof Message)[];

/** In a topic every message replies to the topic's beginning, which is no reply. */
function repliedIn(message: Message): Message | null {
  const replied = message.reply_to_message;
  if (!replied || replied.forum_topic_created) return null;
  return replied;
}

function keyOf(message: Pick<Message, 'chat' | 'message_id'> & Threaded): MessageKey {
  return {
    chatId: message.chat.id,
    messageId: message.message_id,
    threadId: threadOf(message),
  };
}

interface Threaded {
  readonly is_topic_message?: boolean;
  readonly message_thread_id?: number;
}

/** Replies in groups without topics carry a thread id as well, which cannot be written to. */
function threadOf(message: Threaded): number | null {
  return message.is_topic_message ? (message.message_thread_id ?? null) : null;
}

function placeOf(chat: Chat, threadId: number | null): Place {
  const isPrivate = chat.type === 'private';
  return { chatId: chat.id, isPrivate, title: isPrivate ? '' : chat.title, threadId };
}

/** A button without its message can only be answered to the person. */
function privatePlace({ id }: User): Place {
  return { chatId: id, isPrivate: true, title: '', threadId: null };
}

function personOf({ id, first_name, language_code }: User): Person {
  return { accountId: String(id), name: first_name, language: languageOf(language_code) };
}

function languageOf(code: string | undefined): Language {
  return code?.toLowerCase().startsWith('de') ? 'de' : 'en';
}
