import type { WireMessage } from '../wire/message.ts';

/** The part of a message that no edit changes: where and when it stands, by whom, in reply to what. */
export const frameOf = (wire: WireMessage): WireMessage => ({
  message_id: wire.message_id,
  ...(wire.message_thread_id === undefined ? {} : { message_thread_id: wire.message_thread_id }),
  ...(wire.is_topic_message === undefined ? {} : { is_topic_message: true }),
  from: wire.from,
  chat: wire.chat,
  date: wire.date,
  ...(wire.reply_to_message === undefined ? {} : { reply_to_message: wire.reply_to_message }),
});
