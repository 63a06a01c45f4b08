import type { ScopeKey } from '../state/command-menu.ts';
import type { Room } from '../state/room.ts';

/** The scopes whose menus a member may be shown, in the documented order ("Determining list of commands"). */
export const menuScopes = (room: Room, userId: number): readonly ScopeKey[] => {
  const { id, type } = room.chat;
  if (type === 'private') return [`chat ${id}`, 'all_private_chats', 'default'];
  const administrator = ['creator', 'administrator'].includes(room.standings.get(userId) ?? '');
  return [
    `chat_member ${id} ${userId}`,
    ...(administrator ? [`chat_administrators ${id}`] : []),
    `chat ${id}`,
    ...(administrator ? ['all_chat_administrators'] : []),
    'all_group_chats',
    'default',
  ];
};
