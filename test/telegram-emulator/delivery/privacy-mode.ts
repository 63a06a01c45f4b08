import type { Platform } from '../state/platform.ts';
import type { Room } from '../state/room.ts';
import type { WireMessage } from '../wire/message.ts';

/**
 * Whether a member's message in a group is meant for the bot, which is all that privacy mode lets through.
 * Documented (Bot Features, "Privacy mode"): commands that name the bot; plain commands unless another bot
 * was the last to write; replies to the bot and to messages meant for it. The mention is from the setting's
 * own dialogue, which promises it where the documentation is silent.
 */
export const isMeantForBot = (platform: Platform, room: Room, message: WireMessage): boolean => {
  const replied = room.messages.get(message.reply_to_message?.message_id ?? 0);
  if (replied?.meantForBot === true) return true;
  const text = message.text ?? message.caption ?? '';
  const handle = `@${platform.bot.user.username.toLowerCase()}`;
  return (message.entities ?? message.caption_entities ?? []).some((entity) => {
    const words = text.slice(entity.offset, entity.offset + entity.length).toLowerCase();
    if (entity.type === 'mention') return platform.mentionsPassPrivacy && words === handle;
    if (entity.type !== 'bot_command' || entity.offset !== 0) return false;
    if (words.includes('@')) return words.endsWith(handle);
    return room.lastBotId === undefined || room.lastBotId === platform.bot.user.id;
  });
};

/** Whether the bot reads everything in this group: privacy mode was off when it joined, or it is an administrator. */
export const readsEverything = (platform: Platform, room: Room): boolean =>
  room.botStanding === 'administrator' || !(room.privacy ?? platform.bot.privacy);
