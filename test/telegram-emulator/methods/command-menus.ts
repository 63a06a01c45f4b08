import type { RequestParameters } from '../http/request-parameters.ts';
import type { MenuCommand, ScopeKey } from '../state/command-menu.ts';
import { badRequest, Refusal } from '../wire/refusal.ts';
import type { Method } from './method.ts';

/** Documented: at most 100 commands; names of 1-32 lowercase letters, digits and underscores; descriptions of 1-256 characters. */
const MOST_COMMANDS = 100;
const LONGEST_DESCRIPTION = 256;
const SCOPES_WITHOUT_CHAT: readonly unknown[] = [
  'default',
  'all_private_chats',
  'all_group_chats',
  'all_chat_administrators',
];

export const setMyCommands: Method = ({ platform, parameters }) => {
  const shelf = readShelf(parameters);
  if (shelf instanceof Refusal) return shelf;
  const commands = parameters.json('commands');
  if (!Array.isArray(commands)) return badRequest("can't parse commands: expected an Array");
  if (commands.length > MOST_COMMANDS) return badRequest('BOT_COMMANDS_TOO_MUCH');
  for (const { command, description } of commands as readonly MenuCommand[]) {
    if (!/^[a-z0-9_]{1,32}$/.test(command)) return badRequest('BOT_COMMAND_INVALID');
    if (description.length < 1 || description.length > LONGEST_DESCRIPTION) {
      return badRequest('BOT_COMMAND_DESCRIPTION_INVALID');
    }
  }
  platform.menus.set(shelf.scope, shelf.language, commands as readonly MenuCommand[]);
  return { result: true };
};

export const getMyCommands: Method = ({ platform, parameters }) => {
  const shelf = readShelf(parameters);
  if (shelf instanceof Refusal) return shelf;
  return { result: platform.menus.get(shelf.scope, shelf.language) };
};

export const deleteMyCommands: Method = ({ platform, parameters }) => {
  const shelf = readShelf(parameters);
  if (shelf instanceof Refusal) return shelf;
  platform.menus.set(shelf.scope, shelf.language, []);
  return { result: true };
};

const readShelf = (
  parameters: RequestParameters,
): { readonly scope: ScopeKey; readonly language: string } | Refusal => {
  const language = parameters.text('language_code') ?? '';
  if (!/^([a-z]{2})?$/.test(language)) return badRequest('invalid language code specified');
  const { type = 'default', chat_id, user_id } = parameters.record('scope') ?? {};
  if (SCOPES_WITHOUT_CHAT.includes(type)) return { scope: String(type), language };
  if (type === 'chat' || type === 'chat_administrators') {
    return { scope: `${type} ${String(chat_id)}`, language };
  }
  return type === 'chat_member'
    ? { scope: `${type} ${String(chat_id)} ${String(user_id)}`, language }
    : badRequest("can't parse BotCommandScope: unsupported type specified");
};
