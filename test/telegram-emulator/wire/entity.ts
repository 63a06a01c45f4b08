/** A stretch of text with a meaning or a look (`MessageEntity`); offsets and lengths in UTF-16 units. */
export type WireEntity = {
  readonly type: string;
  readonly offset: number;
  readonly length: number;
  readonly url?: string;
  readonly user?: unknown;
  readonly language?: string;
  readonly custom_emoji_id?: string;
};
