import { z } from 'zod';
import type { MessageIncoming, PressIncoming } from '../../assistant/incoming.ts';

export type TerminalIncoming = MessageIncoming | PressIncoming;

const bodySchema = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('message'),
    from: z.string(),
    chat: z.null(),
    text: z.string(),
    writtenAtMs: z.number(),
    replyTo: z.null(),
  }),
  z.object({ kind: z.literal('press'), from: z.string(), chat: z.null(), token: z.string() }),
]);

/**
 * Reads back what the terminal stored in the inbox.
 *
 * @throws ZodError where the row was not written by the terminal.
 */
export function readIncomingBody(body: unknown): TerminalIncoming {
  return bodySchema.parse(body);
}
