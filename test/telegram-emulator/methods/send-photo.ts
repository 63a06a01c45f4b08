import type { RequestParameters } from '../http/request-parameters.ts';
import type { Platform } from '../state/platform.ts';
import { readCaption } from '../text/read-text.ts';
import type { WirePhotoSize } from '../wire/message.ts';
import { badRequest, Refusal } from '../wire/refusal.ts';
import { findPlace } from './find-place.ts';
import { findRoomToWriteIn } from './find-room.ts';
import type { Method } from './method.ts';
import { photoSizes } from './photo-content.ts';
import { pictureSize } from './picture-size.ts';
import { readKeyboard } from './read-keyboard.ts';
import { addToRoom } from './room-message.ts';
import { captionContent } from './styled-content.ts';

/** Documented: at most 10 MB, width and height together at most 10000, one at most 20 times the other. */
const LARGEST_PHOTO_BYTES = 10 * 1024 * 1024;
const LONGEST_SIDES_PX = 10_000;
const STEEPEST_RATIO = 20;

export const sendPhoto: Method = ({ platform, parameters }) => {
  const markup = readKeyboard(parameters);
  if (markup instanceof Refusal) return markup;
  const caption = readCaption(parameters);
  if (caption instanceof Refusal) return caption;
  const room = findRoomToWriteIn(platform, parameters);
  if (room instanceof Refusal) return room;
  const place = findPlace(room, parameters);
  if (place instanceof Refusal) return place;
  const picture = readPhoto(platform, parameters);
  if (picture instanceof Refusal) return picture;
  const flooded = platform.flood.admit(room.chat.id);
  if (flooded !== undefined) return flooded;
  const from = platform.bot.user;
  const content = { ...picture, ...captionContent(caption) };
  return { result: addToRoom(platform, room, { from, content, ...place, ...markup }).wire };
};

const readPhoto = (
  platform: Platform,
  parameters: RequestParameters,
): { readonly photo: readonly WirePhotoSize[] } | Refusal => {
  const uploaded = parameters.file('photo');
  const bytes = uploaded?.bytes ?? platform.files.byId(parameters.text('photo') ?? '')?.bytes;
  if (bytes === undefined) {
    return parameters.has('photo')
      ? badRequest('wrong file identifier/HTTP URL specified')
      : badRequest('there is no photo in the request');
  }
  if (bytes.length === 0) return badRequest('file must be non-empty');
  if (bytes.length > LARGEST_PHOTO_BYTES) {
    return badRequest(
      `file of size ${bytes.length} bytes is too big for a photo; the maximum size is ${LARGEST_PHOTO_BYTES} bytes`,
    );
  }
  const size = pictureSize(bytes);
  if (size === undefined) return badRequest('IMAGE_PROCESS_FAILED');
  const sides = [size.widthPx, size.heightPx] as const;
  const steep = Math.max(...sides) > Math.min(...sides) * STEEPEST_RATIO;
  if (steep || sides[0] + sides[1] > LONGEST_SIDES_PX)
    return badRequest('PHOTO_INVALID_DIMENSIONS');
  return { photo: photoSizes(platform.files, bytes, size) };
};
