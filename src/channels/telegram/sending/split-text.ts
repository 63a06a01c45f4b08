import type { MessageEntity } from 'grammy/types';

export interface StyledText {
  readonly text: string;
  readonly entities: readonly MessageEntity[];
}

/** Where a text may be parted, best first; the mark itself stays with the first part or is dropped. */
const seams: readonly RegExp[] = [/\n\n/gu, /\n/gu, /(?<=[.!?…])\s/gu, /\s/gu];

/**
 * Parts a text at paragraphs, else lines, else sentences, else words, so that no part is longer than
 * `most` UTF-16 units. Entities that lie across a seam go on in the next part. White space at a seam
 * is dropped. A part is never less than half full where there is a seam in its second half.
 *
 * @example splitText({ text: 'one two', entities: [] }, 4) // 'one' and 'two'
 */
export function splitText({ text, entities }: StyledText, most: number): readonly StyledText[] {
  const parts: StyledText[] = [];
  let from = 0;
  while (text.length - from > most) {
    const to = from + seamBefore(text.slice(from, from + most + 1), most);
    parts.push(partOf(text, entities, from, to));
    from = to + leadingSpace(text.slice(to));
  }
  if (from < text.length || parts.length === 0) {
    parts.push(partOf(text, entities, from, text.length));
  }
  return parts.filter((part) => part.text.length > 0);
}

/** How many units of a text that is one unit too long go into the part. */
function seamBefore(text: string, most: number): number {
  for (const seam of seams) {
    const places = [...text.matchAll(seam)].map(({ index }) => index);
    const last = places.findLast((index) => index > most / 2 && index <= most);
    if (last !== undefined) return last;
  }
  const isWithinPair = /[\uD800-\uDBFF]/u.test(text.charAt(most - 1));
  return isWithinPair && most > 1 ? most - 1 : most;
}

function leadingSpace(text: string): number {
  return text.length - text.trimStart().length;
}

function partOf(
  text: string,
  entities: readonly MessageEntity[],
  from: number,
  to: number,
): StyledText {
  const part = text.slice(from, to).trimEnd();
  const end = from + part.length;
  return {
    text: part,
    entities: entities.flatMap((entity): MessageEntity[] => {
      const start = Math.max(entity.offset, from);
      const length = Math.min(entity.offset + entity.length, end) - start;
      return length > 0 ? [{ ...entity, offset: start - from, length }] : [];
    }),
  };
}
