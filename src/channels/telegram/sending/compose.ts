import { FormattedString, fmt } from '@grammyjs/parse-mode';
import type { InlineKeyboardMarkup } from 'grammy/types';
import { type Outgoing, pressToken } from '../../../assistant/outgoing.ts';
import type { GreenhouseId } from '../../../assistant/ports/store.ts';
import type { Greenhouse } from '../../../greenhouse/greenhouse.ts';
import { readerOf } from '../../../wording/reader-of.ts';
import type { Wording } from '../../../wording/wording.ts';
import { buttonData } from './button-data.ts';
import { type StyledText, splitText } from './split-text.ts';

/** A message as the platform wants it: one part or several, the buttons under the last. */
export interface Composed {
  readonly parts: readonly StyledText[];
  readonly keyboard: InlineKeyboardMarkup | null;
}

export interface Composing {
  readonly id: GreenhouseId;
  readonly greenhouse: Greenhouse;
  readonly wording: Wording;
  /** The reader hears from several greenhouses here: each message says from which it is. */
  readonly isOneOfSeveral: boolean;
  /** The link that belongs under an invitation. */
  readonly invitationLink: () => string;
  /** The longest part, in UTF-16 units. */
  readonly most: number;
}

/** The platform's limits after entities are parsed (Bot API, sendMessage and sendPhoto). */
export const mostInText = 4096;
export const mostInCaption = 1024;

/** Words and buttons of a message, worded as of when it was said. */
export function compose(outgoing: Outgoing, composing: Composing): Composed {
  const { id, greenhouse, wording, isOneOfSeveral, invitationLink, most } = composing;
  const reader = readerOf(outgoing.to, greenhouse, outgoing.atMs);
  const words = wording.reply(outgoing.reply, reader);
  const text = isInvitation(outgoing)
    ? fmt`${words}\n${invitationLink()}`
    : styled(outgoing, words);
  const headed = isOneOfSeveral ? fmt`${FormattedString.bold(greenhouse.name)}\n${text}` : text;
  let position = 0;
  const rows = outgoing.buttons.map((row) =>
    row.map(({ label }) => {
      const token = pressToken(outgoing.no, position++);
      return { text: wording.button(label, reader), callback_data: buttonData(id, token) };
    }),
  );
  return {
    parts: splitText({ text: headed.text, entities: headed.entities }, most),
    keyboard: rows.length > 0 ? { inline_keyboard: rows } : null,
  };
}

export function isInvitation({ reply }: Outgoing): boolean {
  return (
    reply.kind === 'answer' &&
    reply.answer.kind === 'household' &&
    reply.answer.news.kind === 'invited'
  );
}

/** A round's first line stands out: it is what is looked for in the chat. */
function styled({ reply }: Outgoing, words: string): FormattedString {
  const end = words.indexOf('\n');
  if (reply.kind !== 'round' || end < 0) return new FormattedString(words);
  return fmt`${FormattedString.bold(words.slice(0, end))}${words.slice(end)}`;
}
