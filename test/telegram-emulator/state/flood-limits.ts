import type { Refusal } from '../wire/refusal.ts';
import { tooManyRequests } from '../wire/refusal.ts';
import type { Clock } from './clock.ts';

/** Documented: no more than about 30 messages a second in all. */
const IN_ALL_A_SECOND = 30;
/** Documented: about one message a second in one chat, short bursts let through; the burst is our guess. */
const IN_CHAT_BURST = 3;
const IN_CHAT_WINDOW_MS = 3000;
/** Documented: no more than 20 messages a minute in one group. */
const IN_GROUP_A_MINUTE = 20;
const MINUTE_MS = 60_000;

/** Counts what the bot sends and refuses what is too much; off unless a test asks for it. */
export class FloodLimits {
  enabled = false;
  readonly #clock: Clock;
  #sent: { readonly chatId: number; readonly atMs: number }[] = [];

  constructor(clock: Clock) {
    this.#clock = clock;
  }

  /** Group ids are negative. */
  admit(chatId: number): Refusal | undefined {
    if (!this.enabled) return undefined;
    const nowMs = this.#clock.nowMs();
    this.#sent = this.#sent.filter((sent) => nowMs - sent.atMs < MINUTE_MS);
    const here = this.#sent.filter((sent) => sent.chatId === chatId).map((sent) => sent.atMs);
    const waitMs = Math.max(
      waitFor(
        this.#sent.map((sent) => sent.atMs),
        IN_ALL_A_SECOND,
        1000,
        nowMs,
      ),
      waitFor(here, IN_CHAT_BURST, IN_CHAT_WINDOW_MS, nowMs),
      chatId < 0 ? waitFor(here, IN_GROUP_A_MINUTE, MINUTE_MS, nowMs) : 0,
    );
    if (waitMs > 0) return tooManyRequests(Math.ceil(waitMs / 1000));
    this.#sent.push({ chatId, atMs: nowMs });
    return undefined;
  }
}

/** How long until fewer than `most` of the sends lie within the window. */
const waitFor = (
  sentMs: readonly number[],
  most: number,
  windowMs: number,
  nowMs: number,
): number => {
  const within = sentMs.filter((atMs) => nowMs - atMs < windowMs);
  return within.length < most ? 0 : within[within.length - most]! + windowMs - nowMs;
};
