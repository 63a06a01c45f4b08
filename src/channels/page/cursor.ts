import type { HistoryItem } from '../../assistant/ports/store.ts';

/** How far a page has read: the highest inbox and outbox numbers that it has seen of its chat. */
export interface Cursor {
  readonly inboxNo: number;
  readonly outgoingNo: number;
}

export const beforeAll: Cursor = { inboxNo: 0, outgoingNo: 0 };

export function cursorOf(history: readonly HistoryItem[]): Cursor {
  let { inboxNo, outgoingNo } = beforeAll;
  for (const item of history) {
    if (item.kind === 'incoming') inboxNo = Math.max(inboxNo, item.incoming.no);
    else outgoingNo = Math.max(outgoingNo, item.outgoing.no);
  }
  return { inboxNo, outgoingNo };
}

/** `12.30`, short enough for the id of a server-sent event. */
export function cursorText({ inboxNo, outgoingNo }: Cursor): string {
  return `${inboxNo}.${outgoingNo}`;
}

/** The cursor that a page sent back; null where it is none of ours. */
export function readCursor(text: string | null | undefined): Cursor | null {
  const found = /^(\d{1,15})\.(\d{1,15})$/.exec(text ?? '');
  return found && { inboxNo: Number(found[1]), outgoingNo: Number(found[2]) };
}

/** Whether a bubble, by its key `in-12` or `out-30`, came after the cursor. */
export function isAfter(key: string, cursor: Cursor): boolean {
  const [side, no] = key.split('-');
  return Number(no) > (side === 'in' ? cursor.inboxNo : cursor.outgoingNo);
}
