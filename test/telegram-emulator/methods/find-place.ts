import type { RequestParameters } from '../http/request-parameters.ts';
import type { Room, Topic } from '../state/room.ts';
import type { WireMessage } from '../wire/message.ts';
import { badRequest, Refusal } from '../wire/refusal.ts';
import { findMessage } from './find-message.ts';

/** Where in a chat a message goes: under which topic and in reply to what. */
export type Place = {
  readonly topic: Topic | undefined;
  readonly replyTo: WireMessage | undefined;
};

/** Reads `message_thread_id` and `reply_parameters`. */
export const findPlace = (room: Room, parameters: RequestParameters): Place | Refusal => {
  const replyTo = findReplied(room, parameters);
  if (replyTo instanceof Refusal) return replyTo;
  const named = parameters.integer('message_thread_id');
  // A thread that is no topic is refused too: in a supergroup without topics replies carry a thread id
  // that cannot be written to, and neither can the id 1 of the general topic (from memory).
  const topic = room.topics.get(named ?? replyTo?.message_thread_id ?? 0);
  if (named !== undefined && topic === undefined) return badRequest('message thread not found');
  return topic?.closed === true ? badRequest('TOPIC_CLOSED') : { topic, replyTo };
};

const findReplied = (
  room: Room,
  parameters: RequestParameters,
): WireMessage | undefined | Refusal => {
  if (!parameters.has('reply_parameters')) return undefined;
  const reply = parameters.record('reply_parameters');
  const messageId = reply?.['message_id'];
  if (typeof messageId !== 'number') {
    return badRequest('can\'t parse reply parameters: Can\'t find field "message_id"');
  }
  const stored = findMessage(room, messageId);
  if (stored !== undefined) return stored.wire;
  return reply?.['allow_sending_without_reply'] === true
    ? undefined
    : badRequest('message to be replied not found');
};
