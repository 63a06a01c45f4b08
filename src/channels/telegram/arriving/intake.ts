import type { Update } from 'grammy/types';
import type { Arrival } from '../../../assistant/arrival.ts';
import type { GreenhouseId, StoredIncoming } from '../../../assistant/ports/store.ts';
import { channel } from '../channel-name.ts';
import { keyText } from '../message-key.ts';
import { phrasesOf } from '../phrases/phrases-of.ts';
import { readUpdate } from '../reading/read-update.ts';
import type { Self } from '../reading/spoken-text.ts';
import type { Pressed, Said, Told } from '../reading/told.ts';
import { readButtonData, tieData } from '../sending/button-data.ts';
import { codeHash, invitationCode } from './codes.ts';
import { codeIn, Door, type DoorParts } from './door.ts';
import type { Handler, Waiting } from './handler.ts';
import {
  type ChannelSelf,
  type Heard,
  pressedIncoming,
  type Speaker,
  saidIncoming,
} from './incoming-of.ts';
import type { Reception } from './reception.ts';

export interface IntakeParts extends DoorParts {
  readonly handler: Handler;
  readonly reception: Reception;
  readonly self: Self & { readonly readsAll: boolean };
}

/** Something of a member, on its way into the inbox of a greenhouse. */
interface Addressed extends Heard, Arrival {
  readonly greenhouse: GreenhouseId;
}

/**
 * Takes updates in: what members say goes into the inbox of their greenhouse and on to the handler;
 * what is about coming, going and strangers is dealt with at once. When it returns, nothing of the
 * updates can be lost any more.
 */
export class Intake {
  readonly #parts: IntakeParts;
  readonly #channelSelf: ChannelSelf;
  readonly #door: Door;

  constructor(parts: IntakeParts) {
    this.#parts = parts;
    this.#door = new Door(parts);
    const { options, self } = parts;
    this.#channelSelf = {
      readsAll: self.readsAll,
      invitationHash: (greenhouse, platformId) =>
        codeHash(invitationCode(options.token, greenhouse, platformId)),
    };
  }

  /**
   * @throws Error where the database cannot take them: they must come again.
   */
  async takeIn(updates: readonly Update[]): Promise<void> {
    const { options, book, self } = this.#parts;
    await book.refreshIfOld();
    let run: Addressed[] = [];
    for (const update of updates) {
      const receivedAtMs = options.nowMs();
      const told = readUpdate(update, self, receivedAtMs);
      if (told.kind === 'said') {
        await this.#parts.reception.noteBack(told, update.update_id, receivedAtMs);
      }
      const addressed = await this.#address(told, update, receivedAtMs);
      if (addressed) {
        run.push(addressed);
        continue;
      }
      // Coming and going decides who is who in what follows.
      await this.#store(run);
      run = [];
      await this.#receive(told, update, receivedAtMs);
    }
    await this.#store(run);
  }

  /** Takes up what was stored and never handled: a process that died in between. */
  async recover(): Promise<void> {
    const { options, book, handler } = this.#parts;
    await book.refresh();
    const waiting: Waiting[] = [];
    for (const stored of await options.store.unhandled(channel)) {
      waiting.push(await this.#again(stored));
    }
    handler.add(waiting);
  }

  async #again(stored: StoredIncoming): Promise<Waiting> {
    const { self } = this.#parts;
    const { no, greenhouse, platformId, receivedAtMs, body } = stored;
    const update = body as Update;
    const told = readUpdate(update, self, receivedAtMs);
    if (told.kind === 'said') await this.#door.openAgain(told, stored);
    const speaker = await this.#speakerIn(greenhouse, told);
    const heard = speaker && this.#hear(told, update.update_id, speaker);
    // From nobody of the household any more: it is passed over, and counts as handled.
    const incoming = heard?.incoming ?? { kind: 'press', from: '', chat: null, token: '' };
    return { no, greenhouse, received: { channel, platformId, incoming } };
  }

  async #store(run: readonly Addressed[]): Promise<void> {
    const [first] = run;
    if (!first) return;
    const { options, handler } = this.#parts;
    // Polled updates are confirmed when this returns, handled or only stored; a webhook waits for its
    // answer, and handling is not for it to wait for.
    const isOneGreenhouse = run.every(({ greenhouse }) => greenhouse === first.greenhouse);
    if (!options.webhook && isOneGreenhouse && (await handler.takeIn(first.greenhouse, run)))
      return;
    const received = await options.store.receiveAll(run.map(({ raw }) => raw));
    handler.add(
      run.flatMap(({ greenhouse, incoming }, position): Waiting[] => {
        const { no, platformId, isNew } = received[position]!;
        return isNew ? [{ no, greenhouse, received: { channel, platformId, incoming } }] : [];
      }),
    );
  }

  /** What a member of a greenhouse says to it; null: it is something else. */
  async #address(told: Told, update: Update, receivedAtMs: number): Promise<Addressed | null> {
    if (told.kind !== 'said' && told.kind !== 'pressed') return null;
    if (told.kind === 'said' && codeIn(told) !== null) return null;
    const greenhouse = await this.#greenhouseOf(told);
    if (greenhouse === null) return null;
    const speaker = await this.#speakerIn(greenhouse, told);
    const heard = speaker && this.#hear(told, update.update_id, speaker);
    if (!heard) return null;
    const { platformId, incoming } = heard;
    const raw = {
      greenhouse,
      channel,
      platformId,
      receivedAtMs,
      writtenAtMs: told.kind === 'said' ? told.writtenAtMs : receivedAtMs,
      chat: incoming.chat ?? incoming.from,
      body: update,
    };
    return { greenhouse, raw, platformId, incoming };
  }

  #hear(told: Told, updateId: number, speaker: Speaker): Heard | null {
    if (told.kind === 'said') {
      const { place, person, text, key } = told;
      const isTurning = place.isPrivate && isSameName(text, speaker.name);
      if (isTurning && this.#parts.book.accountsOf(person.accountId).length > 1) {
        const wish = { kind: 'turn-to', accountId: person.accountId } as const;
        const from = speaker.member.handle;
        return { platformId: keyText(key), incoming: { kind: 'wish', from, chat: null, wish } };
      }
      return saidIncoming(told, updateId, speaker, this.#channelSelf);
    }
    if (told.kind !== 'pressed') return null;
    const heard = pressedIncoming(told, speaker, this.#channelSelf);
    if (told.data !== tieData) return heard;
    const { chatId, title } = told.place;
    const { readsAll } = this.#channelSelf;
    const wish = { kind: 'tie-room', roomId: String(chatId), title, readsAll } as const;
    const from = speaker.member.handle;
    return { ...heard, incoming: { kind: 'wish', from, chat: speaker.room, wish } };
  }

  /** The greenhouse that somebody speaks to: the group's, the button's, or their own. */
  async #greenhouseOf(told: Said | Pressed): Promise<GreenhouseId | null> {
    const { options, book, reception } = this.#parts;
    const { place, person } = told;
    if (told.kind === 'pressed') return readButtonData(told.data)?.greenhouse ?? null;
    if (!place.isPrivate) {
      const room = book.room(String(place.chatId));
      if (room) return room.greenhouse;
      return reception.tyingGreenhouse(told);
    }
    const accounts = book.accountsOf(person.accountId);
    if (accounts.length < 2) return accounts[0]?.greenhouse ?? null;
    for (const { greenhouse } of accounts) {
      const standing = await options.desk.standing(greenhouse);
      if (isSameName(told.text, standing.greenhouse.name)) return greenhouse;
    }
    return reception.meantOf(accounts, told);
  }

  async #speakerIn(greenhouse: GreenhouseId, told: Told): Promise<Speaker | null> {
    if (told.kind !== 'said' && told.kind !== 'pressed') return null;
    const { options, book } = this.#parts;
    const { place, person } = told;
    const account = book.accountIn(greenhouse, person.accountId);
    if (!account) return null;
    const { members, name } = (await options.desk.standing(greenhouse)).greenhouse;
    const member = members.find(({ handle }) => handle === account.handle);
    if (!member) return null;
    if (place.isPrivate) return { greenhouse, name, member, members, room: null };
    const room = book.room(String(place.chatId));
    // A group that is being tied has its name only when that is done.
    if (room && room.greenhouse !== greenhouse) return null;
    return { greenhouse, name, member, members, room: room?.name ?? place.title };
  }

  /** Coming, going, strangers, and buttons that are nobody's. */
  async #receive(told: Told, update: Update, receivedAtMs: number): Promise<void> {
    const { reception, lines } = this.#parts;
    switch (told.kind) {
      case 'nothing':
        return;
      case 'moved':
        return reception.move(told);
      case 'standing':
        return reception.changeStanding(told, update.update_id, receivedAtMs);
      case 'said': {
        const code = codeIn(told);
        if (code !== null) return this.#door.open(told, code, update, receivedAtMs);
        return reception.greet(told, receivedAtMs);
      }
      case 'pressed': {
        if (told.data === tieData) return this.#tieByButton(told, update, receivedAtMs);
        const phrases = phrasesOf(told.person.language);
        const isOurs = readButtonData(told.data) !== null;
        return lines.answerPress(
          told.callbackId,
          isOurs ? phrases.notYourButton : phrases.oldButton,
        );
      }
    }
  }

  async #tieByButton(pressed: Pressed, update: Update, receivedAtMs: number): Promise<void> {
    const { options, reception, lines, handler } = this.#parts;
    const { place, person, callbackId } = pressed;
    const greenhouse = place.isPrivate ? null : await reception.growersGreenhouse(person);
    const speaker = greenhouse === null ? null : await this.#speakerIn(greenhouse, pressed);
    const heard = speaker && this.#hear(pressed, update.update_id, speaker);
    if (!heard || greenhouse === null) {
      return lines.answerPress(callbackId, phrasesOf(person.language).onlyGrowersTie);
    }
    const { platformId, incoming } = heard;
    const [received] = await options.store.receiveAll([
      {
        greenhouse,
        channel,
        platformId,
        receivedAtMs,
        writtenAtMs: receivedAtMs,
        chat: incoming.from,
        body: update,
      },
    ]);
    if (!received?.isNew) return;
    handler.add([{ no: received.no, greenhouse, received: { channel, platformId, incoming } }]);
  }
}

function isSameName(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}
