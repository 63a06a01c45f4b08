import type { RequestParameters } from '../http/request-parameters.ts';
import type { Platform } from '../state/platform.ts';
import { announceChange, type Room } from '../state/room.ts';
import type { StoredMessage } from '../state/stored-message.ts';
import { readCaption, readText } from '../text/read-text.ts';
import type { WireKeyboard } from '../wire/keyboard.ts';
import type { WireContent, WireMessage } from '../wire/message.ts';
import { badRequest, Refusal } from '../wire/refusal.ts';
import { findMessage } from './find-message.ts';
import { findRoomToWriteIn } from './find-room.ts';
import { frameOf } from './message-frame.ts';
import type { Method, MethodAnswer } from './method.ts';
import { readKeyboard } from './read-keyboard.ts';
import { captionContent, textContent } from './styled-content.ts';

export const editMessageText: Method = ({ platform, parameters }) => {
  const styled = readText(parameters);
  if (styled instanceof Refusal) return styled;
  const found = findOwn(platform, parameters);
  if (found instanceof Refusal) return found;
  if (found.stored.wire.text === undefined) {
    return badRequest('there is no text in the message to edit');
  }
  return edit(platform, parameters, found, textContent(styled));
};

export const editMessageCaption: Method = ({ platform, parameters }) => {
  const styled = readCaption(parameters);
  if (styled instanceof Refusal) return styled;
  const found = findOwn(platform, parameters);
  if (found instanceof Refusal) return found;
  if (found.stored.wire.photo === undefined) {
    return badRequest('there is no caption in the message to edit');
  }
  const { photo } = found.stored.wire;
  return edit(platform, parameters, found, { photo, ...captionContent(styled) });
};

export const editMessageReplyMarkup: Method = ({ platform, parameters }) => {
  const found = findOwn(platform, parameters);
  if (found instanceof Refusal) return found;
  return edit(platform, parameters, found, contentOf(found.stored.wire));
};

type Own = { readonly room: Room; readonly stored: StoredMessage };

const findOwn = (platform: Platform, parameters: RequestParameters): Own | Refusal => {
  const room = findRoomToWriteIn(platform, parameters);
  if (room instanceof Refusal) return room;
  const stored = findMessage(room, parameters.integer('message_id'));
  if (stored === undefined) return badRequest('message to edit not found');
  return stored.wire.from.id === platform.bot.user.id
    ? { room, stored }
    : badRequest("message can't be edited");
};

/** An edit that names no buttons takes those away that were there. */
const edit = (
  platform: Platform,
  parameters: RequestParameters,
  { room, stored }: Own,
  content: WireContent,
): MethodAnswer => {
  const markup = readKeyboard(parameters);
  if (markup instanceof Refusal) return markup;
  if (same(stored.wire, content, markup.keyboard)) {
    return badRequest(
      'message is not modified: specified new message content and reply markup are exactly the same as a current content and reply markup of the message',
    );
  }
  const flooded = platform.flood.admit(room.chat.id);
  if (flooded !== undefined) return flooded;
  stored.wire = {
    ...frameOf(stored.wire),
    ...content,
    edit_date: platform.clock.nowS(),
    ...(markup.keyboard === undefined ? {} : { reply_markup: markup.keyboard }),
  };
  room.events.push({ kind: 'edited', wire: stored.wire });
  announceChange(room);
  return { result: stored.wire };
};

const same = (
  wire: WireMessage,
  content: WireContent,
  keyboard: WireKeyboard | undefined,
): boolean =>
  JSON.stringify([contentOf(wire), wire.reply_markup]) ===
  JSON.stringify([contentOf({ ...frameOf(wire), ...content }), keyboard]);

/** The part of a message that an edit can change, in a fixed order. */
const contentOf = (wire: WireMessage): WireContent => ({
  ...(wire.text === undefined ? {} : { text: wire.text }),
  ...(wire.entities === undefined ? {} : { entities: wire.entities }),
  ...(wire.photo === undefined ? {} : { photo: wire.photo }),
  ...(wire.caption === undefined ? {} : { caption: wire.caption }),
  ...(wire.caption_entities === undefined ? {} : { caption_entities: wire.caption_entities }),
});
