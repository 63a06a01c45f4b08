import { photoSizes } from '../methods/photo-content.ts';
import { pictureSize } from '../methods/picture-size.ts';
import { textContent } from '../methods/styled-content.ts';
import type { Platform } from '../state/platform.ts';
import { cleanText } from '../text/clean-text.ts';
import { withFoundEntities } from '../text/found-entities.ts';
import type { WireContent } from '../wire/message.ts';

/** What a member says: a text, a picture, or anything else as the platform writes it (`{ sticker: … }`). */
export type Saying =
  | string
  | { readonly photo: Uint8Array; readonly caption?: string }
  | { readonly content: WireContent };

/** A picture that is neither PNG nor JPEG is taken for one of this size. */
const USUAL_PICTURE = { widthPx: 1280, heightPx: 960 };

/** The content of a member's message. */
export const contentOf = (platform: Platform, saying: Saying): WireContent => {
  if (typeof saying === 'string') return said(saying);
  if ('content' in saying) return saying.content;
  const size = pictureSize(saying.photo) ?? USUAL_PICTURE;
  const photo = photoSizes(platform.files, saying.photo, size);
  return saying.caption === undefined ? { photo } : { photo, ...captioned(saying.caption) };
};

/** A text as it arrives, with the commands and mentions that the server finds in it. */
export const said = (text: string): WireContent => {
  const clean = cleanText({ text, entities: [] }).text;
  return textContent({ text: clean, entities: withFoundEntities(clean, []) });
};

export const captioned = (caption: string): WireContent => {
  const { text = '', entities } = said(caption);
  return { caption: text, ...(entities === undefined ? {} : { caption_entities: entities }) };
};
