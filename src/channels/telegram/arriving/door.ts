import type { Update } from 'grammy/types';
import type { Invitation } from '../../../assistant/household/household.ts';
import { letIn, openInvitation } from '../../../assistant/household/let-in.ts';
import type { StoredIncoming } from '../../../assistant/ports/store.ts';
import { channel } from '../channel-name.ts';
import { keyText } from '../message-key.ts';
import { phrasesOf } from '../phrases/phrases-of.ts';
import type { Person, Said } from '../reading/told.ts';
import type { Lines } from '../sending/lines.ts';
import type { TelegramOptions } from '../telegram-options.ts';
import type { AddressBook } from './address-book.ts';
import { codeHash, looksLikeClaim } from './codes.ts';

export interface DoorParts {
  readonly options: TelegramOptions;
  readonly book: AddressBook;
  readonly lines: Lines;
  /** There may be something to send. */
  readonly wakeSender: () => void;
}

/** Lets people in by the code that they bring, each code once. */
export class Door {
  readonly #parts: DoorParts;

  constructor(parts: DoorParts) {
    this.#parts = parts;
  }

  /** @throws Error where the database cannot take it: the message must come again. */
  async open(said: Said, code: string, update: Update, receivedAtMs: number): Promise<void> {
    const { options, lines, book, wakeSender } = this.#parts;
    const invitation = await this.#invitation(code);
    const platformId = keyText(said.key);
    if (!invitation) {
      if (await this.#wasUsedForThis(said, platformId)) return;
      await lines.say(said.place.chatId, phrasesOf(said.person.language).codeIsVoid);
      return;
    }
    const { greenhouse } = invitation;
    const { no, isHandled } = await options.store.receive({
      greenhouse,
      channel,
      platformId,
      receivedAtMs,
      writtenAtMs: said.writtenAtMs,
      chat: said.person.accountId,
      body: update,
    });
    if (isHandled) return;
    await letIn(options.desk, invitation, no, newcomer(said, platformId), options.nowMs());
    await book.refresh();
    wakeSender();
  }

  /** Lets in whoever brought a code to a process that died before it could. */
  async openAgain(said: Said, { no, greenhouse, platformId }: StoredIncoming): Promise<void> {
    const { options } = this.#parts;
    const code = codeIn(said);
    const invitation = code === null ? null : await this.#invitation(code);
    if (invitation?.greenhouse !== greenhouse) return;
    await letIn(options.desk, invitation, no, newcomer(said, platformId), options.nowMs());
  }

  /** The same message delivered a second time finds its own code used. */
  async #wasUsedForThis({ person }: Said, platformId: string): Promise<boolean> {
    const { options, book } = this.#parts;
    for (const { greenhouse } of book.accountsOf(person.accountId)) {
      const known = await options.store.read(greenhouse, (ledger) =>
        ledger.incoming(channel, platformId),
      );
      if (known) return true;
    }
    return false;
  }

  #invitation(code: string): Promise<Invitation | null> {
    const { store, nowMs } = this.#parts.options;
    return openInvitation(store.household, codeHash(code), nowMs());
  }
}

/** The code that a private message brings: behind `/start`, or typed alone as it was printed. */
export function codeIn({ place, command, text, isEdit }: Said): string | null {
  if (!place.isPrivate || isEdit) return null;
  if (command) return command.name === 'start' && command.rest !== '' ? command.rest : null;
  return looksLikeClaim(text) ? text.trim() : null;
}

function newcomer({ person }: { readonly person: Person }, messageId: string) {
  const { accountId, name, language } = person;
  return { channel, accountId, name, language, messageId };
}
