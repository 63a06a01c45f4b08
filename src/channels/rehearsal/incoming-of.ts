import type { Incoming, ReplyTarget } from '../../assistant/incoming.ts';
import type { LineIn } from './line-in.ts';

/** What a member's line means to the assistant. */
export function incomingOf(
  line: Extract<LineIn, { kind: 'message' | 'edit' | 'press' }>,
  handles: readonly string[],
  channel: string,
): Incoming {
  switch (line.kind) {
    case 'message':
      return {
        kind: 'message',
        from: line.from,
        chat: line.chat,
        text: line.text,
        writtenAtMs: line.sentAtMs ?? line.atMs,
        ...(line.photo === null ? {} : { photo: { channel, id: line.photo } }),
        replyTo: line.replyTo === null ? null : replyTarget(line.replyTo, line.from, handles),
      };
    case 'edit':
      return {
        kind: 'edit',
        from: line.from,
        chat: line.chat,
        edits: idOf(line.from, line.edits),
        text: line.text,
      };
    case 'press':
      return { kind: 'press', from: line.from, chat: null, token: line.press };
  }
}

function replyTarget(replyTo: string, from: string, handles: readonly string[]): ReplyTarget {
  if (replyTo === 'last' || replyTo === 'round') return { kind: replyTo };
  const members = [from, ...handles.filter((handle) => handle !== from)];
  return { kind: 'message', ids: [replyTo, ...members.map((handle) => idOf(handle, replyTo))] };
}

/** A member's own message ids are unique to the member. */
export function idOf(handle: string, id: string): string {
  return `${handle}/${id}`;
}
