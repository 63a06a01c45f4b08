import type { StyledText } from '../text/styled-text.ts';
import type { WireContent } from '../wire/message.ts';

/** A text as it stands in a message; no entities, no field. */
export const textContent = ({ text, entities }: StyledText): WireContent =>
  entities.length === 0 ? { text } : { text, entities };

/** A caption as it stands in a message; an empty one leaves no trace. */
export const captionContent = ({ text, entities }: StyledText): WireContent => ({
  ...(text === '' ? {} : { caption: text }),
  ...(entities.length === 0 ? {} : { caption_entities: entities }),
});
