import { badRequest, Refusal } from '../wire/refusal.ts';
import { findRoom } from './find-room.ts';
import { botMember, personMember } from './member-record.ts';
import type { Method } from './method.ts';

export const getChatMember: Method = ({ platform, parameters }) => {
  const room = findRoom(platform, parameters);
  if (room instanceof Refusal) return room;
  const userId = parameters.integer('user_id');
  if (userId === undefined) return badRequest('invalid user_id specified');
  if (userId === platform.bot.user.id)
    return { result: botMember(platform.bot.user, room.botStanding) };
  const person = platform.people.get(userId);
  if (person === undefined) return badRequest('user not found');
  const inPrivate = room.person?.user.id === userId ? 'member' : undefined;
  return {
    result: personMember(person.user, room.standings.get(userId) ?? inPrivate ?? 'left'),
  };
};
