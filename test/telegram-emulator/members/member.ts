import { tellOfMessage } from '../delivery/tell-bot.ts';
import { tellOfStanding } from '../methods/bot-standing.ts';
import { frameOf } from '../methods/message-frame.ts';
import type { CallbackAnswer } from '../state/callback-queries.ts';
import type { MenuCommand } from '../state/command-menu.ts';
import type { Person } from '../state/person.ts';
import type { Platform } from '../state/platform.ts';
import { announceChange, type Room } from '../state/room.ts';
import type { StoredMessage } from '../state/stored-message.ts';
import type { WireMessage } from '../wire/message.ts';
import { Chat } from './chat.ts';
import { menuScopes } from './menu-scopes.ts';
import { type MessageView, viewOf } from './message-view.ts';
import { captioned, type Saying, said } from './saying.ts';
import { speak } from './speak.ts';

/** A member of the platform, as a test lets them act. */
export class Member {
  readonly id: number;
  readonly name: string;
  /** The private chat with the bot. */
  readonly chat: Chat;
  readonly #platform: Platform;
  readonly #person: Person;
  readonly #room: Room;

  constructor(platform: Platform, person: Person, room: Room) {
    this.id = person.user.id;
    this.name = person.user.first_name;
    this.chat = new Chat(platform, room);
    this.#platform = platform;
    this.#person = person;
    this.#room = room;
  }

  /** Writes to the bot in private. Throws if they blocked it: their app would not let them. */
  dm(saying: Saying, where: { readonly replyTo?: MessageView } = {}): MessageView {
    if (this.#person.blocked) throw new Error(`${this.name} has blocked the bot; unblock it first`);
    this.#person.started = true;
    return speak(this.#platform, this.#room, this.#person, saying, where);
  }

  /** Opens the bot by its link, `?start=payload` if given; unblocks it if need be. */
  start(payload?: string): MessageView {
    this.unblock();
    return this.dm(payload === undefined ? '/start' : `/start ${payload}`);
  }

  /**
   * Presses a button as it was when the message looked so, even if it has gone since. Settles when the bot
   * answers or the time for it is over. Throws if there is no such button.
   */
  press(message: MessageView, label: string): Promise<CallbackAnswer> {
    const button = message.keys.find((key) => key.text === label);
    if (button?.callback_data === undefined) {
      throw new Error(
        `No button ${JSON.stringify(label)} among ${JSON.stringify(message.buttons)}`,
      );
    }
    const stored = this.#find(message);
    const query = this.#platform.callbacks.open();
    this.#platform.updates.push('callback_query', message.chatId, {
      id: query.id,
      from: this.#person.user,
      message: stored.deleted ? inaccessible(stored.wire) : stored.wire,
      chat_instance: `${message.chatId}`,
      data: button.callback_data,
    });
    return query.answer;
  }

  /** Changes the text, or a picture's caption, of an own message. */
  edit(message: MessageView, text: string): MessageView {
    const stored = this.#find(message);
    if (stored.wire.from.id !== this.id) throw new Error(`${this.name} did not write that message`);
    const { photo } = stored.wire;
    const content = photo === undefined ? said(text) : { photo, ...captioned(text) };
    const editedS = this.#platform.clock.nowS();
    stored.wire = { ...frameOf(stored.wire), ...content, edit_date: editedS };
    tellOfMessage(this.#platform, this.#roomOf(message), stored, 'edited_message');
    announceChange(this.#roomOf(message));
    return viewOf(this.#platform, stored.wire, stored);
  }

  /** Deletes a message; bots are not told. */
  remove(message: MessageView): void {
    this.#find(message).deleted = true;
    announceChange(this.#roomOf(message));
  }

  /** Puts an emoji on a message, or takes it back. The bot is told in private and where it is administrator. */
  react(message: MessageView, emoji?: string): void {
    const room = this.#roomOf(message);
    const stored = this.#find(message);
    const before = stored.reactions.get(this.id) ?? [];
    const after = emoji === undefined ? [] : [emoji];
    stored.reactions.set(this.id, after);
    announceChange(room);
    if (room.chat.type !== 'private' && room.botStanding !== 'administrator') return;
    this.#platform.updates.push('message_reaction', room.chat.id, {
      chat: room.chat,
      message_id: message.id,
      user: this.#person.user,
      date: this.#platform.clock.nowS(),
      old_reaction: before.map((one) => ({ type: 'emoji', emoji: one })),
      new_reaction: after.map((one) => ({ type: 'emoji', emoji: one })),
    });
  }

  block(): void {
    if (this.#person.blocked) return;
    this.#person.blocked = true;
    tellOfStanding(this.#platform, this.#room, this.#person.user, 'member', 'kicked');
  }

  unblock(): void {
    if (!this.#person.blocked) return;
    this.#person.blocked = false;
    tellOfStanding(this.#platform, this.#room, this.#person.user, 'kicked', 'member');
  }

  /** Deletes their account; the bot is not told. */
  deactivate(): void {
    this.#person.deactivated = true;
  }

  /** The commands their app offers in a chat, by the documented order of scopes and their language. */
  menuIn(chat: Chat): readonly MenuCommand[] {
    const room = this.#platform.rooms.get(chat.id)!;
    return this.#platform.menus.shown(
      menuScopes(room, this.id),
      this.#person.user.language_code ?? '',
    );
  }

  #roomOf(message: MessageView): Room {
    return this.#platform.rooms.get(message.chatId)!;
  }

  #find(message: MessageView): StoredMessage {
    return this.#roomOf(message).messages.get(message.id)!;
  }
}

/** What is left of a deleted message under a button (`InaccessibleMessage`): its date is always 0. */
const inaccessible = (wire: WireMessage): Pick<WireMessage, 'chat' | 'message_id' | 'date'> => ({
  chat: wire.chat,
  message_id: wire.message_id,
  date: 0,
});
