import type { Desk } from '../../../assistant/desk.ts';
import type { OutgoingNo } from '../../../assistant/outgoing.ts';
import { channel } from '../channel-name.ts';
import type { Waiting } from './handler.ts';

/** Closes an inbox row that cannot be handled, telling its sender that nothing was logged. */
export async function giveUpOn(
  desk: Desk,
  { greenhouse, no, received }: Waiting,
  nowMs: number,
): Promise<void> {
  const { from, chat } = received.incoming;
  await desk.transact(greenhouse, no, nowMs, (standing, { counters }) => {
    const isMember = standing.greenhouse.members.some(({ handle }) => handle === from);
    const outgoing = {
      no: (counters.lastOutgoingNo + 1) as OutgoingNo,
      atMs: nowMs,
      channel,
      to: chat ?? from,
      inReplyTo: received.platformId,
      reply: { kind: 'refusal' as const, because: { kind: 'cannot-handle' as const } },
      buttons: [],
    };
    const writes = isMember ? { outgoing: [outgoing] } : {};
    return Promise.resolve({ standing, writes, result: undefined });
  });
}
