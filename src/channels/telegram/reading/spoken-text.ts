import type { Message, MessageEntity } from 'grammy/types';
import type { Command } from './told.ts';

/** Who the bot is on the platform. */
export interface Self {
  readonly id: number;
  readonly username: string;
}

export interface SpokenText {
  readonly text: string;
  readonly command: Command | null;
  readonly isMention: boolean;
  /** A command that names another bot. */
  readonly isForOther: boolean;
}

/** A message's words or a picture's caption, with the bot's name and a command taken out. */
export function spokenText(message: Message, self: Self): SpokenText {
  const raw = message.text ?? message.caption ?? '';
  const entities = message.entities ?? message.caption_entities ?? [];
  const handle = `@${self.username.toLowerCase()}`;
  const wordsOf = ({ offset, length }: MessageEntity): string => raw.slice(offset, offset + length);
  const first = entities.find(({ type, offset }) => type === 'bot_command' && offset === 0);
  if (first) {
    const [name = '', addressee] = wordsOf(first).slice(1).toLowerCase().split('@');
    const isForOther = addressee !== undefined && `@${addressee}` !== handle;
    const rest = raw.slice(first.length).trim();
    return { text: raw.trim(), command: { name, rest }, isMention: false, isForOther };
  }
  const mentions = entities.filter(
    (entity) => entity.type === 'mention' && wordsOf(entity).toLowerCase() === handle,
  );
  const text = mentions.reduceRight(
    (rest, { offset, length }) => `${rest.slice(0, offset)} ${rest.slice(offset + length)}`,
    raw,
  );
  const tidy = mentions.length > 0 ? text.replace(/^[\s,:;–-]+|[\s,]+$/gu, '') : text.trim();
  return { text: tidy, command: null, isMention: mentions.length > 0, isForOther: false };
}
