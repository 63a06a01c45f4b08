import { createHash } from 'node:crypto';
import { z } from 'zod';
import type { Phrases } from './phrases/phrases.ts';

/** The longest message taken, in UTF-16 units; the longest that Telegram takes as well. */
export const mostCharacters = 4096;
/** A message may have waited this long on the visitor's device. */
const longestHeldMs = 7 * 24 * 3_600_000;

const formSchema = z.object({
  as: z.string().max(100),
  /** Made by the page for one sending, the same however often that is tried. */
  id: z.string().regex(/^[\w-]{8,64}$/),
  // Forms send line ends as CR LF, whatever was typed.
  text: z.string().transform((text) => text.replaceAll('\r\n', '\n').trim()),
  /** How long it waited on the device for a connection. */
  heldMs: z.coerce
    .number()
    .int()
    .min(0)
    .default(0)
    .transform((ms) => Math.min(ms, longestHeldMs)),
});

export type MessageForm =
  | {
      readonly ok: true;
      readonly as: string;
      readonly id: string;
      readonly text: string;
      readonly heldMs: number;
    }
  | { readonly ok: false; readonly text: string; readonly because: string };

/** Reads the form of a message, or says in a sentence what is wrong with it. */
export function readMessageForm(form: unknown, phrases: Phrases): MessageForm {
  const read = formSchema.safeParse(form);
  if (!read.success) return { ok: false, text: '', because: phrases.notReadable };
  const { text } = read.data;
  if (text === '') return { ok: false, text, because: phrases.typeSomething };
  if (text.length > mostCharacters) {
    return { ok: false, text, because: phrases.tooLong(text.length, mostCharacters) };
  }
  return { ok: true, ...read.data };
}

/**
 * The message's id in the inbox. Its text is part of it: a browser that goes back brings an old
 * form with its old id, and another text under that is another message.
 */
export function messageIdOf(greenhouseId: number, form: { as: string; id: string; text: string }) {
  const mark = createHash('sha256').update(`${form.as}\n${form.text}`).digest('hex').slice(0, 16);
  return `${greenhouseId}-${form.id}-${mark}`;
}

/** The id of a press: the same button pressed twice by the same member is one press. */
export function pressIdOf(greenhouseId: number, as: string, token: string): string {
  return `${greenhouseId}-press-${as}-${token}`;
}
