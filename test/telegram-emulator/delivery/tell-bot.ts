import type { Platform } from '../state/platform.ts';
import type { Room } from '../state/room.ts';
import type { StoredMessage } from '../state/stored-message.ts';
import { isMeantForBot, readsEverything } from './privacy-mode.ts';

/** Whether the bot is in the chat at all. */
export const botIsIn = (room: Room): boolean =>
  room.botStanding !== 'left' && room.botStanding !== 'kicked';

/** Passes a member's message, new or edited, on to the bot if it may see it. */
export const tellOfMessage = (
  platform: Platform,
  room: Room,
  stored: StoredMessage,
  kind: 'message' | 'edited_message',
): void => {
  if (!botIsIn(room)) return;
  const inPrivate = room.chat.type === 'private';
  stored.meantForBot ||= inPrivate || isMeantForBot(platform, room, stored.wire);
  if (stored.meantForBot || readsEverything(platform, room)) {
    platform.updates.push(kind, room.chat.id, stored.wire);
  }
};

/** Passes a service message on; privacy mode does not hold those back. */
export const tellOfService = (platform: Platform, room: Room, stored: StoredMessage): void => {
  if (botIsIn(room)) platform.updates.push('message', room.chat.id, stored.wire);
};
