import type { Platform } from '../state/platform.ts';
import type { BotStanding, Room } from '../state/room.ts';
import type { WireUser } from '../wire/user.ts';
import { botMember } from './member-record.ts';

/** Changes the bot's standing in a chat and tells it by `my_chat_member`. */
export const changeBotStanding = (
  platform: Platform,
  room: Room,
  by: WireUser,
  standing: BotStanding,
): void => {
  const before = room.botStanding;
  room.botStanding = standing;
  tellOfStanding(platform, room, by, before, standing);
};

/** The `my_chat_member` update; in private chats `kicked` means blocked and `member` unblocked. */
export const tellOfStanding = (
  platform: Platform,
  room: Room,
  by: WireUser,
  before: BotStanding,
  after: BotStanding,
): void => {
  platform.updates.push('my_chat_member', room.chat.id, {
    chat: room.chat,
    from: by,
    date: platform.clock.nowS(),
    old_chat_member: botMember(platform.bot.user, before),
    new_chat_member: botMember(platform.bot.user, after),
  });
};
