import { eventually } from '../state/eventually.ts';
import type { Platform } from '../state/platform.ts';
import type { Room } from '../state/room.ts';
import { type MessageView, viewOf } from './message-view.ts';

/** Which messages a test is looking for. */
export type Fits = (message: MessageView) => boolean;

const DEFAULT_TIMEOUT_MS = 60_000;

/** A chat as its members see it. */
export class Chat {
  protected readonly platform: Platform;
  protected readonly room: Room;
  #read = 0;

  constructor(platform: Platform, room: Room) {
    this.platform = platform;
    this.room = room;
  }

  get id(): number {
    return this.room.chat.id;
  }

  /** What stands in the chat now: oldest first, edits applied, deleted messages gone. */
  get messages(): readonly MessageView[] {
    return [...this.room.messages.values()]
      .filter((stored) => !stored.deleted)
      .map((stored) => viewOf(this.platform, stored.wire, stored));
  }

  /** Those messages that the bot sent. */
  get fromBot(): readonly MessageView[] {
    return this.messages.filter((message) => message.byBot);
  }

  /** The newest message of the bot. */
  get last(): MessageView | undefined {
    return this.fromBot.at(-1);
  }

  /**
   * Reads on to the bot's next post or edit that fits, as it looked at that moment. What was read over
   * is not offered again. Rejects after `timeoutMs`.
   */
  async next(fits: Fits = () => true, timeoutMs = DEFAULT_TIMEOUT_MS): Promise<MessageView> {
    let from = this.#read;
    const { view, at } = await eventually(
      () => {
        for (; from < this.room.events.length; from += 1) {
          const view = this.#seen(from);
          if (fits(view)) return { view, at: from };
        }
        return undefined;
      },
      this.room.listeners,
      timeoutMs,
      () => this.#heard(),
    );
    this.#read = Math.max(this.#read, at + 1);
    return view;
  }

  /** Counts everything up to now as read. */
  catchUp(): void {
    this.#read = this.room.events.length;
  }

  /** Waits until some message in the chat fits as it stands now, reactions included. Rejects after `timeoutMs`. */
  shows(fits: Fits, timeoutMs = DEFAULT_TIMEOUT_MS): Promise<MessageView> {
    return eventually(
      () => this.messages.find(fits),
      this.room.listeners,
      timeoutMs,
      () => this.#heard(),
    );
  }

  #seen(index: number): MessageView {
    const { wire } = this.room.events[index]!;
    return viewOf(this.platform, wire, this.room.messages.get(wire.message_id));
  }

  #heard(): string {
    const unread = this.room.events.slice(this.#read).map((event) => {
      const { text, caption = '(no text)' } = event.wire;
      return `${event.kind} ${JSON.stringify(text ?? caption)}`;
    });
    return unread.length === 0 ? 'the bot said nothing' : `the bot ${unread.join('; ')}`;
  }
}
