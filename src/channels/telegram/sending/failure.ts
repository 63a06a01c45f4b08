import { GrammyError, HttpError } from 'grammy';

/** Why a call did not come through, by what is to be done about it. */
export type Failure =
  /** Too much at once: not carried out, welcome again after the wait. */
  | { readonly kind: 'flooded'; readonly waitMs: number }
  /** The group lives on under another id. */
  | { readonly kind: 'moved'; readonly toChatId: number }
  /** It will never be taken: the chat is closed to the bot, or the call is wrong. */
  | { readonly kind: 'refused'; readonly code: number; readonly because: string }
  /** The server is not well, or cannot be reached: not carried out. */
  | { readonly kind: 'unwell'; readonly because: string }
  /** The connection went before the answer: it may have been carried out. */
  | { readonly kind: 'lost'; readonly because: string }
  /** The token is not, or no longer, the bot's. */
  | { readonly kind: 'unauthorised' };

/** Errors of the connection that come before the request has left. */
const beforeSending = new Set([
  'ECONNREFUSED',
  'ENOTFOUND',
  'EAI_AGAIN',
  'ENETUNREACH',
  'EHOSTUNREACH',
  'ENETDOWN',
  'CERT_HAS_EXPIRED',
]);

/** The reason of a failed call; null where it was no failure of a call. The token is in none of its words. */
export function failureOf(error: unknown): Failure | null {
  if (error instanceof GrammyError) return refusalOf(error);
  if (!(error instanceof HttpError)) return null;
  const inner: unknown = error.error;
  const code = fieldOf(inner, 'code') ?? fieldOf(inner, 'type') ?? fieldOf(inner, 'name');
  const because = code ?? 'connection lost';
  // A page instead of an answer is a gateway that found nobody behind it.
  if (code === 'invalid-json') return { kind: 'unwell', because };
  return { kind: beforeSending.has(because) ? 'unwell' : 'lost', because };
}

/** Whether a message was refused because its topic of the group was closed or deleted. */
export function isTopicShut(error: unknown): boolean {
  const failure = failureOf(error);
  return failure?.kind === 'refused' && topicShut.test(failure.because);
}

const topicShut = /message thread not found|TOPIC_(?:CLOSED|DELETED)/u;

function refusalOf({ error_code, description, parameters }: GrammyError): Failure {
  const { retry_after, migrate_to_chat_id } = parameters;
  if (migrate_to_chat_id !== undefined) return { kind: 'moved', toChatId: migrate_to_chat_id };
  if (error_code === 429) return { kind: 'flooded', waitMs: (retry_after ?? 1) * 1000 };
  if (error_code >= 500) return { kind: 'unwell', because: `${error_code} ${description}` };
  // The real server answers 404 where the token has not even the form of one.
  if (error_code === 401 || error_code === 404) return { kind: 'unauthorised' };
  return { kind: 'refused', code: error_code, because: description };
}

function fieldOf(value: unknown, field: string): string | null {
  if (typeof value !== 'object' || value === null) return null;
  const found: unknown = Reflect.get(value, field);
  return typeof found === 'string' && found !== 'Error' ? found : null;
}
