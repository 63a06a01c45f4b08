import type { Account } from '../../../assistant/household/household.ts';
import { changeHousehold, tellShutOut } from '../../../assistant/household/tell-growers.ts';
import type { GreenhouseId } from '../../../assistant/ports/store.ts';
import { channel } from '../channel-name.ts';
import { keyText } from '../message-key.ts';
import { phrasesOf } from '../phrases/phrases-of.ts';
import type { Person, Said, Told } from '../reading/told.ts';
import { tieData } from '../sending/button-data.ts';
import type { Lines } from '../sending/lines.ts';
import type { TelegramOptions } from '../telegram-options.ts';
import type { AddressBook } from './address-book.ts';
import { householdWords } from './household-words.ts';

/** How long one polite line is enough. */
const enoughForMs = 24 * 3_600_000;

/** Receives those who belong to no greenhouse, and notes who can be reached. */
export class Reception {
  readonly #options: TelegramOptions;
  readonly #book: AddressBook;
  readonly #lines: Lines;
  readonly #wakeSender: () => void;

  constructor(options: TelegramOptions, book: AddressBook, lines: Lines, wakeSender: () => void) {
    this.#options = options;
    this.#book = book;
    this.#lines = lines;
    this.#wakeSender = wakeSender;
  }

  /** One polite line to a stranger; nothing to those who talk among themselves. */
  async greet({ place, person, isAddressed, command }: Said, nowMs: number): Promise<void> {
    if (!isAddressed) return;
    const phrases = phrasesOf(person.language);
    if (command?.name === 'privacy') {
      await this.#lines.say(place.chatId, phrases.privacy);
      return;
    }
    const isMember = this.#book.accountsOf(person.accountId).length > 0;
    if (place.isPrivate) {
      // What a member says and nothing can be made of, such as an edited sticker.
      if (!isMember) await this.#once(person.accountId, place.chatId, phrases.stranger, nowMs);
      return;
    }
    const room = this.#book.room(String(place.chatId));
    if (room) {
      if (this.#book.accountIn(room.greenhouse, person.accountId)) return;
      await this.#once(person.accountId, place.chatId, phrases.stranger, nowMs);
      return;
    }
    await this.#greetGroup(place.chatId, person, nowMs);
  }

  async changeStanding(
    { place, person, isIn }: Extract<Told, { kind: 'standing' }>,
    updateId: number,
    nowMs: number,
  ): Promise<void> {
    if (place.isPrivate) {
      for (const account of this.#book.accountsOf(person.accountId)) {
        await this.#changeReach(account.greenhouse, account.handle, isIn, updateId, nowMs);
      }
    } else {
      const room = this.#book.room(String(place.chatId));
      if (room) await this.#changeReach(room.greenhouse, room.name, isIn, updateId, nowMs);
      else if (isIn) await this.#greetGroup(place.chatId, person, nowMs);
    }
    await this.#book.refresh();
    this.#wakeSender();
  }

  /** Whoever writes where nothing could be sent can be reached there again, told of it or not. */
  async noteBack({ place, person, isEdit }: Said, updateId: number, nowMs: number): Promise<void> {
    const shut = place.isPrivate
      ? this.#book.accountsOf(person.accountId).some(({ canBeReached }) => !canBeReached)
      : this.#book.room(String(place.chatId))?.canBeReached === false;
    if (!shut || isEdit) return;
    await this.changeStanding({ kind: 'standing', place, person, isIn: true }, updateId, nowMs);
  }

  async move({ fromChatId, toChatId }: Extract<Told, { kind: 'moved' }>): Promise<void> {
    const { household } = this.#options.store;
    await household.moveRoom(channel, String(fromChatId), String(toChatId));
    await this.#book.refresh();
  }

  /** The greenhouse that a group is being tied to by these words; null: they are other words. */
  async tyingGreenhouse({
    isAddressed,
    text,
    person,
    command,
  }: Said): Promise<GreenhouseId | null> {
    if (!isAddressed || command) return null;
    if (!householdWords.tie.some((pattern) => pattern.test(text))) return null;
    return this.growersGreenhouse(person);
  }

  /** The greenhouse of which somebody is a grower, the current one first. */
  async growersGreenhouse({ accountId }: Person): Promise<GreenhouseId | null> {
    for (const { greenhouse, handle } of this.#book.accountsOf(accountId)) {
      const { members } = (await this.#options.desk.standing(greenhouse)).greenhouse;
      const member = members.find((each) => each.handle === handle);
      if (member?.role === 'grower') return greenhouse;
    }
    return null;
  }

  /** Of several greenhouses, the one that a private message is for: that of the message it is about. */
  async meantOf(
    accounts: readonly Account[],
    { replyTo, key, isEdit }: Said,
  ): Promise<GreenhouseId> {
    const about = isEdit ? key : replyTo;
    if (about) {
      for (const { greenhouse, handle } of accounts) {
        const isThere = await this.#options.store.read(greenhouse, async (ledger) => {
          const id = keyText(about);
          return (
            (await ledger.outgoingByPlatformId(channel, handle, id)) ??
            (await ledger.incoming(channel, id))
          );
        });
        if (isThere) return greenhouse;
      }
    }
    return accounts[0]!.greenhouse;
  }

  async #changeReach(
    greenhouse: GreenhouseId,
    to: string,
    canBeReached: boolean,
    updateId: number,
    nowMs: number,
  ): Promise<void> {
    const { desk } = this.#options;
    if (canBeReached) {
      const changes = [{ kind: 'reach-changed', channel, to, canBeReached }] as const;
      return changeHousehold(desk, greenhouse, changes, nowMs);
    }
    const { members } = (await desk.standing(greenhouse)).greenhouse;
    const name = members.find(({ handle }) => handle === to)?.name ?? to;
    const told = {
      alert: { kind: 'not-delivered', to: name, because: { kind: 'shut-out' } } as const,
      onceFor: `${channel} shut out ${to} ${updateId}`,
    };
    await tellShutOut(desk, greenhouse, channel, to, told, nowMs);
  }

  async #greetGroup(chatId: number, { language }: Person, nowMs: number): Promise<void> {
    const phrases = phrasesOf(language);
    await this.#once(String(chatId), chatId, phrases.helloGroup, nowMs, {
      inline_keyboard: [[{ text: phrases.tieButton, callback_data: tieData }]],
    });
  }

  async #once(
    who: string,
    chatId: number,
    text: string,
    nowMs: number,
    keyboard?: Parameters<Lines['say']>[2],
  ): Promise<void> {
    const { household } = this.#options.store;
    const toldAtMs = await household.strangerToldAtMs(channel, who);
    if (toldAtMs !== null && nowMs - toldAtMs < enoughForMs) return;
    const isSaid = await this.#lines.say(chatId, text, keyboard);
    if (isSaid) await household.tellStranger(channel, who, nowMs);
  }
}
