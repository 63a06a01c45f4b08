import type { WireEntity } from '../wire/entity.ts';

/** What the server finds in any text by itself; a good approximation of the documented kinds. */
const KINDS: readonly { readonly type: string; readonly pattern: RegExp }[] = [
  { type: 'bot_command', pattern: /(?<![\w/])\/[a-z0-9_]{1,64}(?:@\w{3,32})?(?!\w)/giu },
  { type: 'mention', pattern: /(?<![\w@/])@[a-z]\w{3,31}(?!\w)/giu },
  { type: 'hashtag', pattern: /(?<![\p{L}\p{N}_#&])#[\p{L}\p{N}_]*[\p{L}_][\p{L}\p{N}_]*/gu },
  { type: 'email', pattern: /(?<![\w.+-])[\w.+-]+@[\w-]+(?:\.[\w-]+)*\.[a-z]{2,}/giu },
  { type: 'url', pattern: /https?:\/\/[^\s<>"]*[^\s<>".,;:!?)]/giu },
];

/** Nothing is looked for inside these. */
const CLOSED: readonly string[] = ['code', 'pre', 'text_link', 'text_mention'];

/** Adds what the server finds to what was given, in the server's order. */
export const withFoundEntities = (
  text: string,
  given: readonly WireEntity[],
): readonly WireEntity[] => {
  const taken = given.filter((entity) => CLOSED.includes(entity.type));
  for (const { type, pattern } of KINDS) {
    for (const match of text.matchAll(pattern)) {
      const found = { type, offset: match.index, length: match[0].length };
      if (!taken.some((entity) => overlap(entity, found))) taken.push(found);
    }
  }
  const open = given.filter((entity) => !CLOSED.includes(entity.type));
  return [...open, ...taken].sort((a, b) => a.offset - b.offset || b.length - a.length);
};

const overlap = (a: WireEntity, b: WireEntity): boolean =>
  a.offset < b.offset + b.length && b.offset < a.offset + a.length;
