import { type Api, InputFile } from 'grammy';
import type { InlineKeyboardMarkup, Message } from 'grammy/types';
import { keyText, type MessageKey } from '../message-key.ts';
import type { StyledText } from './split-text.ts';

/** Where a message stands in its chat. */
export interface Standing {
  readonly chatId: number;
  readonly threadId: number | null;
  readonly replyTo: MessageKey | null;
  /** Without a sound: it is also said elsewhere. */
  readonly isSilent: boolean;
}

export interface Letter {
  readonly content: StyledText;
  readonly keyboard: InlineKeyboardMarkup | null;
  /** A picture's bytes, or the platform's own name for one that it has. */
  readonly picture: Uint8Array | string | null;
}

/** Sends one message and gives the id under which it is known. */
export async function post(api: Api, letter: Letter, standing: Standing): Promise<string> {
  const { content, keyboard, picture } = letter;
  const { chatId, threadId, replyTo, isSilent } = standing;
  const options = {
    ...(threadId === null ? {} : { message_thread_id: threadId }),
    ...(keyboard ? { reply_markup: keyboard } : {}),
    ...(isSilent ? { disable_notification: true } : {}),
    ...(replyTo
      ? {
          reply_parameters: {
            message_id: replyTo.messageId,
            allow_sending_without_reply: true,
          },
        }
      : {}),
  };
  const sent: Message = picture
    ? // A buffer and not a stream, so that it can be sent again.
      await api.sendPhoto(
        chatId,
        typeof picture === 'string' ? picture : new InputFile(picture, 'picture.png'),
        {
          ...options,
          caption: content.text,
          caption_entities: [...content.entities],
        },
      )
    : await api.sendMessage(chatId, content.text, {
        ...options,
        entities: [...content.entities],
        link_preview_options: { is_disabled: true },
      });
  return keyText({ chatId: sent.chat.id, messageId: sent.message_id, threadId });
}

/** Changes a message that stands in the chat. */
export async function rewrite(api: Api, key: MessageKey, letter: Letter): Promise<void> {
  const { content, keyboard } = letter;
  await api.editMessageText(key.chatId, key.messageId, content.text, {
    entities: [...content.entities],
    link_preview_options: { is_disabled: true },
    ...(keyboard ? { reply_markup: keyboard } : {}),
  });
}
