import type { WireEntity } from '../wire/entity.ts';
import type { StyledText } from './styled-text.ts';

/**
 * What the server makes of a text before it counts it: no space around it, no control characters in it.
 * Entities move along; what is left of none is dropped.
 */
export const cleanText = ({ text, entities }: StyledText): StyledText => {
  const plain = text.replace(/[\u0000-\u0008\u000b-\u001f]/g, ' ');
  const cut = plain.length - plain.trimStart().length;
  const trimmed = plain.trim();
  const moved = entities.flatMap((entity): WireEntity[] => {
    const from = Math.max(entity.offset - cut, 0);
    const to = Math.min(entity.offset - cut + entity.length, trimmed.length);
    return to > from ? [{ ...entity, offset: from, length: to - from }] : [];
  });
  return { text: trimmed, entities: moved };
};
