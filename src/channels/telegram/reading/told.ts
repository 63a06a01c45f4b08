import type { Language } from '../../../greenhouse/member.ts';
import type { MessageKey } from '../message-key.ts';

/** Somebody on the platform, member or not. */
export interface Person {
  readonly accountId: string;
  readonly name: string;
  readonly language: Language;
}

export interface Place {
  readonly chatId: number;
  readonly isPrivate: boolean;
  /** A group's title; empty in private. */
  readonly title: string;
  readonly threadId: number | null;
}

/** A command of the platform, `/start code`, without its slash and the bot's name. */
export interface Command {
  readonly name: string;
  readonly rest: string;
}

/** What an update tells, free of the platform's own form. */
export type Told =
  | Said
  | Pressed
  /** The bot came into a chat, or was put out of it or blocked. */
  | {
      readonly kind: 'standing';
      readonly person: Person;
      readonly place: Place;
      readonly isIn: boolean;
    }
  /** A group became a supergroup with another id. */
  | { readonly kind: 'moved'; readonly fromChatId: number; readonly toChatId: number }
  | { readonly kind: 'nothing' };

export interface Said {
  readonly kind: 'said';
  readonly person: Person;
  readonly place: Place;
  readonly key: MessageKey;
  /** Without the mention of the bot. Empty: a sticker, a voice message, a picture without words. */
  readonly text: string;
  /** The platform's own name for the photo that the text is the caption of; null: there is none. */
  readonly photoId: string | null;
  readonly writtenAtMs: number;
  readonly replyTo: MessageKey | null;
  /** Meant for the bot: in private, by a mention, a command, or in reply to it. */
  readonly isAddressed: boolean;
  readonly isEdit: boolean;
  readonly command: Command | null;
}

export interface Pressed {
  readonly kind: 'pressed';
  readonly person: Person;
  readonly place: Place;
  /** The message under which the button stands; null where the platform does not say. */
  readonly key: MessageKey | null;
  readonly callbackId: string;
  readonly data: string;
}
