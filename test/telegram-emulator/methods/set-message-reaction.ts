import { announceChange } from '../state/room.ts';
import { badRequest, Refusal } from '../wire/refusal.ts';
import { findMessage } from './find-message.ts';
import { findRoomToWriteIn } from './find-room.ts';
import type { Method } from './method.ts';

/** Documented under ReactionTypeEmoji; nothing else is taken. */
const EMOJI = new Set(
  (
    '❤ 👍 👎 🔥 🥰 👏 😁 🤔 🤯 😱 🤬 😢 🎉 🤩 🤮 💩 🙏 👌 🕊 🤡 🥱 🥴 😍 🐳 ❤‍🔥 🌚 🌭 💯 🤣 ⚡ 🍌 🏆 💔 🤨 😐 🍓 🍾 💋 🖕 😈 😴 😭 🤓 👻 ' +
    '👨‍💻 👀 🎃 🙈 😇 😨 🤝 ✍ 🤗 🫡 🎅 🎄 ☃ 💅 🤪 🗿 🆒 💘 🙉 🦄 😘 💊 🙊 😎 👾 🤷‍♂ 🤷 🤷‍♀ 😡'
  ).split(' '),
);

export const setMessageReaction: Method = ({ platform, parameters }) => {
  const room = findRoomToWriteIn(platform, parameters);
  if (room instanceof Refusal) return room;
  const stored = findMessage(room, parameters.integer('message_id'));
  if (stored === undefined) return badRequest('message to react not found');
  const given = parameters.json('reaction') ?? [];
  if (!Array.isArray(given)) return badRequest("can't parse reaction: expected an Array");
  // Documented: as non-premium users, bots can set up to one reaction per message.
  if (given.length > 1) return badRequest('REACTIONS_TOO_MANY');
  const emoji = (given as readonly { readonly type?: unknown; readonly emoji?: unknown }[]).map(
    (reaction) => (reaction.type === 'emoji' ? String(reaction.emoji) : ''),
  );
  if (!emoji.every((one) => EMOJI.has(one))) return badRequest('REACTION_INVALID');
  if (emoji.length === 0) stored.reactions.delete(platform.bot.user.id);
  else stored.reactions.set(platform.bot.user.id, emoji);
  announceChange(room);
  return { result: true };
};
