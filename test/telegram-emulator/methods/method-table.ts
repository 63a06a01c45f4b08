import { answerCallbackQuery } from './answer-callback-query.ts';
import { deleteMyCommands, getMyCommands, setMyCommands } from './command-menus.ts';
import { deleteMessage } from './delete-message.ts';
import { editMessageCaption, editMessageReplyMarkup, editMessageText } from './edit-message.ts';
import { getChat } from './get-chat.ts';
import { getChatMember } from './get-chat-member.ts';
import { getFile } from './get-file.ts';
import { getMe } from './get-me.ts';
import { getUpdates } from './get-updates.ts';
import { leaveChat } from './leave-chat.ts';
import type { Method } from './method.ts';
import { sendChatAction } from './send-chat-action.ts';
import { sendMessage } from './send-message.ts';
import { sendPhoto } from './send-photo.ts';
import { setMessageReaction } from './set-message-reaction.ts';
import { deleteWebhook, getWebhookInfo, setWebhook } from './webhook-settings.ts';

const METHODS: Readonly<Record<string, Method>> = {
  answerCallbackQuery,
  deleteMessage,
  deleteMyCommands,
  deleteWebhook,
  editMessageCaption,
  editMessageReplyMarkup,
  editMessageText,
  getChat,
  getChatMember,
  getFile,
  getMe,
  getMyCommands,
  getUpdates,
  getWebhookInfo,
  leaveChat,
  sendChatAction,
  sendMessage,
  sendPhoto,
  setMessageReaction,
  setMyCommands,
  setWebhook,
};

/** Documented: method names are case-insensitive. */
const BY_LOWER_CASE = new Map(
  Object.entries(METHODS).map(([name, method]) => [name.toLowerCase(), { name, method }]),
);

/** The method of this name and how its name is properly written. */
export const findMethod = (
  name: string,
): { readonly name: string; readonly method: Method } | undefined =>
  BY_LOWER_CASE.get(name.toLowerCase());
