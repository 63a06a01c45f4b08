import { z } from 'zod';
import type { MessageIncoming, PressIncoming } from '../../assistant/incoming.ts';
import type { SystemId } from '../../greenhouse/system.ts';

/** What a visitor of the page can do in the chat. */
export type PageIncoming = MessageIncoming | PressIncoming;

const bodySchema = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('message'),
    from: z.string(),
    chat: z.null(),
    text: z.string(),
    writtenAtMs: z.number(),
    replyTo: z.null(),
    photo: z.object({ channel: z.string(), id: z.string() }).exactOptional(),
    photoOf: z
      .string()
      .transform((id) => id as SystemId)
      .exactOptional(),
  }),
  z.object({ kind: z.literal('press'), from: z.string(), chat: z.null(), token: z.string() }),
]);

/**
 * Reads back what the page stored in the inbox.
 *
 * @throws ZodError where the row was not written by the page.
 */
export function readIncomingBody(body: unknown): PageIncoming {
  return bodySchema.parse(body);
}
