import type { Room } from '../state/room.ts';
import type { StoredMessage } from '../state/stored-message.ts';

/** A message that is still there. */
export const findMessage = (
  room: Room,
  messageId: number | undefined,
): StoredMessage | undefined => {
  const stored = room.messages.get(messageId ?? 0);
  return stored?.deleted === false ? stored : undefined;
};
