/** How much may be sent, by what the platform documents; short bursts in a chat are let through. */
export interface Rates {
  readonly inAllPerSecond: number;
  readonly inChatPerSecond: number;
  readonly inGroupPerMinute: number;
}

export const documentedRates: Rates = {
  inAllPerSecond: 30,
  inChatPerSecond: 1,
  inGroupPerMinute: 20,
};

const secondMs = 1000;
/** One a second in a chat, reckoned over three seconds, so that a receipt and a question go together. */
const chatWindowS = 3;
const minuteMs = 60_000;
/** The platform's clock and ours do not start their seconds together. */
const marginMs = 50;

/** Keeps count of what was sent, and says when a chat may be written to next. */
export class Pace {
  readonly #rates: Rates;
  readonly #inAll: number[] = [];
  readonly #inChat = new Map<number, number[]>();
  readonly #heldUntilMs = new Map<number, number>();

  constructor(rates: Rates) {
    this.#rates = rates;
  }

  /** The earliest instant, from `nowMs` on, at which this chat may be written to. */
  freeAtMs(chatId: number, nowMs: number): number {
    const { inAllPerSecond, inChatPerSecond, inGroupPerMinute } = this.#rates;
    const here = this.#inChat.get(chatId) ?? [];
    const isGroup = chatId < 0;
    return Math.max(
      nowMs,
      this.#heldUntilMs.get(chatId) ?? 0,
      freeAt(this.#inAll, inAllPerSecond, secondMs),
      freeAt(here, inChatPerSecond * chatWindowS, chatWindowS * secondMs),
      isGroup ? freeAt(here, inGroupPerMinute, minuteMs) : 0,
    );
  }

  sent(chatId: number, atMs: number): void {
    this.#inAll.push(atMs);
    const here = this.#inChat.get(chatId) ?? [];
    here.push(atMs);
    this.#inChat.set(chatId, here);
    this.#forget(atMs);
  }

  /** The platform asked for patience with this chat. */
  hold(chatId: number, untilMs: number): void {
    this.#heldUntilMs.set(chatId, untilMs);
  }

  #forget(nowMs: number): void {
    while (this.#inAll.length > 0 && nowMs - this.#inAll[0]! > minuteMs) this.#inAll.shift();
    for (const [chatId, sent] of this.#inChat) {
      const isOver = nowMs - sent.at(-1)! > 2 * minuteMs;
      if (isOver) this.#inChat.delete(chatId);
      else if (sent.length > mostKept) sent.splice(0, sent.length - mostKept);
    }
    for (const [chatId, untilMs] of this.#heldUntilMs) {
      if (untilMs < nowMs) this.#heldUntilMs.delete(chatId);
    }
  }
}

const mostKept = 1000;

/** When fewer than `most` of the sendings lie within the window. */
function freeAt(sentMs: readonly number[], most: number, windowMs: number): number {
  const blocking = sentMs.at(-Math.max(1, Math.floor(most)));
  return blocking === undefined ? 0 : blocking + windowMs + marginMs;
}
