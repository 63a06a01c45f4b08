/**
 * A message of the platform, as the inbox and the outbox know it: `m-4100.17`, or `m-4100.17@5` in a
 * topic. It is made from the message alone, so that an edit, a reply or a second delivery finds it.
 */
export interface MessageKey {
  readonly chatId: number;
  readonly messageId: number;
  /** The topic it stands in; null: none, or the general one. */
  readonly threadId: number | null;
}

export function keyText({ chatId, messageId, threadId }: MessageKey): string {
  return `m${chatId}.${messageId}${threadId === null ? '' : `@${threadId}`}`;
}

/** The id under which an edit is received: each edit of a message is a thing of its own. */
export function editId(key: MessageKey, updateId: number): string {
  return `e${updateId}:${keyText(key)}`;
}

/** The id under which a pressed button is received; the key is that of the message it stands under. */
export function pressId(callbackId: string, key: MessageKey | null): string {
  return `c${callbackId}:${key ? keyText(key) : ''}`;
}

/** The message that any of these ids is about; null where it names none. */
export function readKey(id: string): MessageKey | null {
  const found = /^(?:[ec]\w+:)?m(-?\d+)\.(\d+)(?:@(\d+))?$/.exec(id);
  if (!found) return null;
  const [, chatId, messageId, threadId] = found;
  return {
    chatId: Number(chatId),
    messageId: Number(messageId),
    threadId: threadId === undefined ? null : Number(threadId),
  };
}

/** The callback query that an id of a pressed button holds. */
export function readPressId(id: string): string | null {
  return /^c(\w+):/.exec(id)?.[1] ?? null;
}
