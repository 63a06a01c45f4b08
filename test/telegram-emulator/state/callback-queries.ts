import type { Clock } from './clock.ts';
import type { Pace } from './pace.ts';

/** What the member who pressed a button gets to see. */
export type CallbackAnswer =
  | { readonly kind: 'answered'; readonly text: string | undefined; readonly alert: boolean }
  | { readonly kind: 'unanswered' };

type OpenQuery = { readonly atMs: number; readonly settle: (answer: CallbackAnswer) => void };

/** Pressed buttons that wait for an answer, each for a limited time. */
export class CallbackQueries {
  readonly #clock: Clock;
  readonly #pace: Pace;
  readonly #open = new Map<string, OpenQuery>();
  #count = 0;

  constructor(clock: Clock, pace: Pace) {
    this.#clock = clock;
    this.#pace = pace;
  }

  /** A new query; the promise settles when the bot answers or the time is over. */
  open(): { readonly id: string; readonly answer: Promise<CallbackAnswer> } {
    this.#count += 1;
    const id = `49120000000${String(this.#count).padStart(8, '0')}`;
    const answer = new Promise<CallbackAnswer>((resolve) => {
      const timer = setTimeout(() => {
        resolve({ kind: 'unanswered' });
      }, this.#pace.callbackLifetimeS * 1000);
      timer.unref();
      const settle = (given: CallbackAnswer): void => {
        clearTimeout(timer);
        resolve(given);
      };
      this.#open.set(id, { atMs: this.#clock.nowMs(), settle });
    });
    return { id, answer };
  }

  /** False if the query is unknown, answered already (from memory: the server no longer knows it) or too old. */
  answer(id: string, answer: CallbackAnswer): boolean {
    const query = this.#open.get(id);
    if (query === undefined) return false;
    this.#open.delete(id);
    const old = this.#clock.nowMs() - query.atMs > this.#pace.callbackLifetimeS * 1000;
    query.settle(old ? { kind: 'unanswered' } : answer);
    return !old;
  }
}
