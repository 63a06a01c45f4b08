import type { RequestParameters } from '../http/request-parameters.ts';
import type { Person } from '../state/person.ts';
import type { Platform } from '../state/platform.ts';
import type { Room } from '../state/room.ts';
import { badRequest, forbidden, Refusal } from '../wire/refusal.ts';

/** The chat that `chat_id` names, if the bot has any business there. */
export const findRoom = (platform: Platform, parameters: RequestParameters): Room | Refusal => {
  if (!parameters.has('chat_id')) return badRequest('chat_id is empty');
  const room = platform.rooms.get(parameters.integer('chat_id') ?? 0);
  if (room === undefined) return badRequest('chat not found');
  if (room.person !== undefined)
    return knows(platform, room.person) ? room : badRequest('chat not found');
  if (room.upgradedToId !== undefined) {
    return badRequest('group chat was upgraded to a supergroup chat', {
      migrate_to_chat_id: room.upgradedToId,
    });
  }
  if (room.botStanding === 'kicked')
    return forbidden(`bot was kicked from the ${room.chat.type} chat`);
  if (room.botStanding === 'left')
    return forbidden(`bot is not a member of the ${room.chat.type} chat`);
  return room;
};

/** The chat that `chat_id` names, if the bot may write there now. */
export const findRoomToWriteIn = (
  platform: Platform,
  parameters: RequestParameters,
): Room | Refusal => {
  const room = findRoom(platform, parameters);
  if (room instanceof Refusal) return room;
  if (room.botStanding === 'restricted') {
    return badRequest('not enough rights to send text messages to the chat');
  }
  if (room.person === undefined) return room;
  if (room.person.deactivated) return forbidden('user is deactivated');
  if (room.person.blocked) return forbidden('bot was blocked by the user');
  if (!room.person.started) return forbidden("bot can't initiate conversation with a user");
  return room;
};

/** A bot knows those who wrote to it and those it shares a group with. */
const knows = (platform: Platform, person: Person): boolean =>
  person.started ||
  [...platform.rooms.values()].some(
    (room) => room.botStanding !== 'left' && room.standings.has(person.user.id),
  );
