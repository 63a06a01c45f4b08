import { createHash } from 'node:crypto';
import { z } from 'zod';
import type { System } from '../../greenhouse/system.ts';
import { isPicture } from './is-picture.ts';
import type { Phrases } from './phrases/phrases.ts';

/** What Telegram takes as a photo (Bot API, sendPhoto), so that it can be shown there as well. */
export const mostPhotoMb = 10;
const mostPhotoBytes = mostPhotoMb * 1024 * 1024;
/** A caption there has room for 1024 with what the bot puts before. */
export const mostNoteCharacters = 800;

const formSchema = z.object({
  id: z.string().regex(/^[\w-]{8,64}$/),
  system: z.string(),
  // Forms send line ends as CR LF, whatever was typed.
  note: z.string().transform((note) => note.replaceAll('\r\n', '\n').trim()),
  photo: z.instanceof(File),
});

/** What was filled in, so that a form that is not taken is given back as it was. */
export interface PhotoFields {
  readonly system: string;
  readonly note: string;
}

export type PhotoForm =
  | {
      readonly ok: true;
      readonly id: string;
      readonly system: System;
      readonly note: string;
      readonly bytes: Uint8Array;
    }
  | { readonly ok: false; readonly because: string; readonly filledIn: PhotoFields };

/** Reads the form that attaches a photo to a system, or says in a sentence what is wrong with it. */
export async function readPhotoForm(
  form: unknown,
  systems: readonly System[],
  phrases: Phrases,
): Promise<PhotoForm> {
  const read = formSchema.safeParse(form);
  if (!read.success) {
    return { ok: false, because: phrases.notReadable, filledIn: { system: '', note: '' } };
  }
  const { id, note, photo } = read.data;
  const refused = (because: string): PhotoForm => ({ ok: false, because, filledIn: read.data });
  const system = systems.find((each) => each.id === read.data.system);
  if (!system) return refused(phrases.noSuchSystem);
  if (note.length > mostNoteCharacters) {
    return refused(phrases.noteTooLong(note.length, mostNoteCharacters));
  }
  if (photo.size === 0) return refused(phrases.noPhotoChosen);
  if (photo.size > mostPhotoBytes) return refused(phrases.tooLarge(`${mostPhotoMb} MB`));
  const bytes = new Uint8Array(await photo.arrayBuffer());
  if (!isPicture(bytes)) return refused(phrases.noPhoto);
  return { ok: true, id, system, note, bytes };
}

/** A photo is named by its bytes, so that the same one sent again is one. */
export function photoIdOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

/** The id in the inbox of a photo attached. All of the form is part of it, as with a message. */
export function attachingIdOf(
  greenhouseId: number,
  handle: string,
  { id, system, note, bytes }: Extract<PhotoForm, { readonly ok: true }>,
): string {
  const mark = createHash('sha256').update(`${handle}\n${system.id}\n${note}\n`).update(bytes);
  return `${greenhouseId}-${id}-${mark.digest('hex').slice(0, 16)}`;
}
