import { badRequest, Refusal } from '../wire/refusal.ts';
import { changeBotStanding } from './bot-standing.ts';
import { findRoom } from './find-room.ts';
import type { Method } from './method.ts';
import { addToRoom } from './room-message.ts';

export const leaveChat: Method = ({ platform, parameters }) => {
  const room = findRoom(platform, parameters);
  if (room instanceof Refusal) return room;
  if (room.chat.type === 'private')
    return badRequest("chat member status can't be changed in private chats");
  const bot = platform.bot.user;
  addToRoom(platform, room, { from: bot, content: { left_chat_member: bot } });
  changeBotStanding(platform, room, bot, 'left');
  return { result: true };
};
