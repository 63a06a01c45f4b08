import type { WireUpdate } from '../wire/update.ts';

/** How a bot took an update; `retryAfterS` is what its `Retry-After` asks for, 0 if nothing. */
export type WebhookReply =
  | { readonly kind: 'taken'; readonly body: string }
  | { readonly kind: 'failed'; readonly reason: string; readonly retryAfterS: number };

/** Posts one update to a bot's webhook. */
export const postUpdate = async (
  url: string,
  secret: string | undefined,
  update: WireUpdate,
  signal: AbortSignal,
): Promise<WebhookReply> => {
  try {
    const response = await fetch(url, {
      method: 'POST',
      headers: {
        'content-type': 'application/json',
        ...(secret === undefined ? {} : { 'X-Telegram-Bot-Api-Secret-Token': secret }),
      },
      body: JSON.stringify(update),
      signal,
    });
    const body = await response.text();
    if (response.ok) return { kind: 'taken', body };
    return {
      kind: 'failed',
      reason: `Wrong response from the webhook: ${response.status} ${response.statusText}`,
      retryAfterS: Number(response.headers.get('retry-after') ?? 0) || 0,
    };
  } catch (error) {
    const timedOut = error instanceof Error && error.name === 'TimeoutError';
    const reason = timedOut ? 'Read timeout expired' : 'Connection refused';
    return { kind: 'failed', reason, retryAfterS: 0 };
  }
};
