import type { Platform } from '../state/platform.ts';
import type { StoredMessage } from '../state/stored-message.ts';
import type { WireEntity } from '../wire/entity.ts';
import type { WireButton } from '../wire/keyboard.ts';
import type { WireMessage } from '../wire/message.ts';

/** A message as a member sees it at one moment. */
export type MessageView = {
  readonly id: number;
  readonly chatId: number;
  readonly byBot: boolean;
  /** First name of who sent it. */
  readonly from: string;
  /** The text, or a picture's caption; empty if there is none. */
  readonly text: string;
  readonly entities: readonly WireEntity[];
  /** What the buttons say, row by row. */
  readonly buttons: readonly (readonly string[])[];
  /** The buttons themselves, in one row. */
  readonly keys: readonly WireButton[];
  /** Emoji on it, one for each who reacted. */
  readonly reactions: readonly string[];
  /** The picture in full size. */
  readonly photo: Uint8Array | undefined;
  /** Id of the message it replies to; the beginning of its topic does not count. */
  readonly replyTo: number | undefined;
  /** Id of its topic. */
  readonly topic: number | undefined;
  readonly edited: boolean;
  readonly sentAt: Date;
  readonly wire: WireMessage;
};

/** How a message looks; `wire` may be an earlier state of what is stored. */
export const viewOf = (
  platform: Platform,
  wire: WireMessage,
  stored: StoredMessage | undefined,
): MessageView => {
  const keys = wire.reply_markup?.inline_keyboard ?? [];
  const largest = wire.photo?.at(-1)?.file_id;
  const reply = wire.reply_to_message;
  return {
    id: wire.message_id,
    chatId: wire.chat.id,
    byBot: wire.from.id === platform.bot.user.id,
    from: wire.from.first_name,
    text: wire.text ?? wire.caption ?? '',
    entities: wire.entities ?? wire.caption_entities ?? [],
    buttons: keys.map((row) => row.map((button) => button.text)),
    keys: keys.flat(),
    reactions: [...(stored?.reactions.values() ?? [])].flat(),
    photo: largest === undefined ? undefined : platform.files.byId(largest)?.bytes,
    replyTo: reply?.forum_topic_created === undefined ? reply?.message_id : undefined,
    topic: wire.is_topic_message === true ? wire.message_thread_id : undefined,
    edited: wire.edit_date !== undefined,
    sentAt: new Date(wire.date * 1000),
    wire,
  };
};
