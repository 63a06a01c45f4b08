import { readText } from '../text/read-text.ts';
import { Refusal } from '../wire/refusal.ts';
import { findPlace } from './find-place.ts';
import { findRoomToWriteIn } from './find-room.ts';
import type { Method } from './method.ts';
import { readKeyboard } from './read-keyboard.ts';
import { addToRoom } from './room-message.ts';
import { textContent } from './styled-content.ts';

export const sendMessage: Method = ({ platform, parameters }) => {
  const markup = readKeyboard(parameters);
  if (markup instanceof Refusal) return markup;
  const styled = readText(parameters);
  if (styled instanceof Refusal) return styled;
  const room = findRoomToWriteIn(platform, parameters);
  if (room instanceof Refusal) return room;
  const place = findPlace(room, parameters);
  if (place instanceof Refusal) return place;
  const flooded = platform.flood.admit(room.chat.id);
  if (flooded !== undefined) return flooded;
  const from = platform.bot.user;
  const content = textContent(styled);
  return { result: addToRoom(platform, room, { from, content, ...place, ...markup }).wire };
};
