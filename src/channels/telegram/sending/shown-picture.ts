import { photoIn } from '../../../assistant/photo-in.ts';
import type { PendingOutgoing } from '../../../assistant/ports/store.ts';
import { pictureIn } from '../../../assistant/replies/picture.ts';
import { readerOf } from '../../../wording/reader-of.ts';
import { channel } from '../channel-name.ts';
import { describeError } from '../describe-error.ts';
import type { TelegramOptions } from '../telegram-options.ts';
import { failureOf } from './failure.ts';
import { languageOf } from './language-of.ts';
import type { Letter } from './post.ts';

type ShownPicture = Letter['picture'];

/** What a message shows: a member's photo or a drawn picture; null: none, and words will do. */
export async function shownPicture(
  pending: PendingOutgoing,
  options: TelegramOptions,
): Promise<ShownPicture> {
  const photo = photoIn(pending.outgoing.reply);
  if (photo?.channel === channel) return photo.id;
  return photo ? keptPhoto(pending, options) : drawn(pending, options);
}

/**
 * Sends with the picture. Where the platform does not know a photo by its name any more, such as under
 * another bot's token, with the bytes that were kept of it; where it takes no bytes of it, such as
 * those of a damaged or very long one, in words alone.
 */
export async function sendingPhoto<T>(
  picture: ShownPicture,
  pending: PendingOutgoing,
  options: TelegramOptions,
  send: (picture: ShownPicture) => Promise<T>,
): Promise<T> {
  try {
    return await send(picture);
  } catch (error) {
    if (typeof picture === 'string' && isUnknownFile(error)) {
      return sendingPhoto(await keptPhoto(pending, options), pending, options, send);
    }
    if (picture instanceof Uint8Array && isUnfitPhoto(error)) return send(null);
    throw error;
  }
}

function isUnknownFile(error: unknown): boolean {
  const failure = failureOf(error);
  return (
    failure?.kind === 'refused' &&
    /file identifier|remote file|file reference/iu.test(failure.because)
  );
}

function isUnfitPhoto(error: unknown): boolean {
  const failure = failureOf(error);
  return (
    failure?.kind === 'refused' &&
    /photo_\w*invalid|image_process_failed|too large|too big/iu.test(failure.because)
  );
}

async function keptPhoto(
  { greenhouse, outgoing }: PendingOutgoing,
  { store }: TelegramOptions,
): Promise<Uint8Array | null> {
  const photo = photoIn(outgoing.reply);
  return photo && store.photos.bytes(greenhouse, photo);
}

async function drawn(
  { greenhouse, outgoing }: PendingOutgoing,
  { desk, drawPicture, report }: TelegramOptions,
): Promise<Uint8Array | null> {
  const picture = pictureIn(outgoing.reply);
  if (!picture) return null;
  const { greenhouse: setUp } = await desk.standing(greenhouse);
  const reader = readerOf(outgoing.to, setUp, outgoing.atMs);
  try {
    return await drawPicture(picture, languageOf(outgoing.to, setUp), reader);
  } catch (error) {
    report('error', `A picture could not be drawn: ${describeError(error)}`);
    return null;
  }
}
