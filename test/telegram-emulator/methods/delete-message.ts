import { announceChange } from '../state/room.ts';
import { badRequest, Refusal } from '../wire/refusal.ts';
import { findMessage } from './find-message.ts';
import { findRoom } from './find-room.ts';
import type { Method } from './method.ts';

/** Documented: a message can only be deleted if it was sent less than 48 hours ago. */
const DELETABLE_S = 48 * 3600;

export const deleteMessage: Method = ({ platform, parameters }) => {
  const room = findRoom(platform, parameters);
  if (room instanceof Refusal) return room;
  const stored = findMessage(room, parameters.integer('message_id'));
  if (stored === undefined) return badRequest('message to delete not found');
  const own = stored.wire.from.id === platform.bot.user.id;
  const mayDeleteOthers = room.chat.type === 'private' || room.botStanding === 'administrator';
  if (!own && !mayDeleteOthers) return badRequest("message can't be deleted");
  const old = platform.clock.nowS() - stored.wire.date >= DELETABLE_S;
  if (old && room.botStanding !== 'administrator') {
    return badRequest("message can't be deleted for everyone");
  }
  stored.deleted = true;
  announceChange(room);
  return { result: true };
};
