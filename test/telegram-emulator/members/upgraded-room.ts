import type { Platform } from '../state/platform.ts';
import { emptyRoom, type Room } from '../state/room.ts';

/** Supergroups count down from here, as the platform's own ids do. */
const FIRST_SUPERGROUP_ID = -1_002_000_000_000;

export const nextSupergroupId = (platform: Platform): number =>
  FIRST_SUPERGROUP_ID - platform.rooms.size;

/** The supergroup that a basic group turns into: same title and people, no messages, ids of its own. */
export const upgradedRoom = (platform: Platform, old: Room): Room => {
  if (old.chat.type !== 'group') throw new Error('Only a basic group becomes a supergroup');
  const room = emptyRoom(
    { ...old.chat, id: nextSupergroupId(platform), type: 'supergroup' },
    undefined,
    old.privacy,
  );
  for (const [userId, standing] of old.standings) room.standings.set(userId, standing);
  room.botStanding = old.botStanding;
  platform.rooms.set(room.chat.id, room);
  return room;
};
