import type { WireMessage } from '../wire/message.ts';

/** A message as the platform keeps it; `wire` is replaced, never changed, so that updates sent earlier stay as they were. */
export type StoredMessage = {
  wire: WireMessage;
  deleted: boolean;
  /** Privacy mode lets replies to it through to the bot. */
  meantForBot: boolean;
  /** Who reacted (user id) with what. */
  readonly reactions: Map<number, readonly string[]>;
};
