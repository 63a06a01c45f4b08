import type { WireEntity } from '../wire/entity.ts';

/** Text with its entities, offsets in UTF-16 units. */
export type StyledText = { readonly text: string; readonly entities: readonly WireEntity[] };

/** UTF-8 bytes before a UTF-16 position, which is what the server's error texts count in. */
export const byteOffset = (text: string, utf16Offset: number): number =>
  Buffer.byteLength(text.slice(0, utf16Offset));
