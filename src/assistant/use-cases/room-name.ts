import type { Member } from '../../greenhouse/member.ts';
import type { Directory } from '../household/household.ts';

/**
 * The name under which a group is written to: its title, told apart from members and other groups.
 * A group tied before keeps the name it has.
 */
export function freeRoomName(
  title: string,
  roomId: string,
  members: readonly Pick<Member, 'handle'>[],
  { directory }: { readonly directory: Directory },
): string {
  const known = directory.rooms.find((room) => room.roomId === roomId);
  if (known) return known.name;
  const wanted = title.trim().slice(0, 60) || 'group';
  const taken = new Set([
    ...members.map(({ handle }) => handle),
    ...directory.rooms.map(({ name }) => name),
  ]);
  let name = wanted;
  for (let count = 2; taken.has(name); count += 1) name = `${wanted} ${count}`;
  return name;
}
