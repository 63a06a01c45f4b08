import { tellOfMessage } from '../delivery/tell-bot.ts';
import { addToRoom } from '../methods/room-message.ts';
import type { Person } from '../state/person.ts';
import type { Platform } from '../state/platform.ts';
import type { Room } from '../state/room.ts';
import { type MessageView, viewOf } from './message-view.ts';
import { contentOf, type Saying } from './saying.ts';

/** Where in the chat a member says it. */
export type Aside = { readonly replyTo?: MessageView; readonly topicId?: number };

/** A member's message enters the chat and goes to the bot if it may see it. */
export const speak = (
  platform: Platform,
  room: Room,
  person: Person,
  saying: Saying,
  { replyTo, topicId }: Aside,
): MessageView => {
  const stored = addToRoom(platform, room, {
    from: person.user,
    content: contentOf(platform, saying),
    replyTo: room.messages.get(replyTo?.id ?? 0)?.wire,
    topic: room.topics.get(topicId ?? replyTo?.topic ?? 0),
  });
  tellOfMessage(platform, room, stored, 'message');
  return viewOf(platform, stored.wire, stored);
};
