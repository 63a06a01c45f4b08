import type { UpdateQueue } from '../state/update-queue.ts';
import { conflict, type Refusal } from '../wire/refusal.ts';
import type { WireUpdate } from '../wire/update.ts';

/** The one `getUpdates` that may wait at a time. */
export class LongPoll {
  readonly #updates: UpdateQueue;
  #interrupt: ((reason: string) => void) | undefined;

  constructor(updates: UpdateQueue) {
    this.#updates = updates;
  }

  /** Ends the waiting call with 409. */
  interrupt(reason: string): void {
    this.#interrupt?.(reason);
  }

  /** Up to `limit` updates as soon as there are any; none after `waitMs` or when the caller is gone. */
  take(limit: number, waitMs: number, gone: AbortSignal): Promise<readonly WireUpdate[] | Refusal> {
    this.interrupt(
      'terminated by other getUpdates request; make sure that only one bot instance is running',
    );
    const first = (): readonly WireUpdate[] =>
      this.#updates
        .pending()
        .slice(0, limit)
        .map((update) => update.wire);
    const present = first();
    if (present.length > 0 || waitMs <= 0) return Promise.resolve(present);
    return new Promise((resolve) => {
      const finish = (result: readonly WireUpdate[] | Refusal): void => {
        clearTimeout(timer);
        stopListening();
        gone.removeEventListener('abort', leave);
        if (this.#interrupt === interrupt) this.#interrupt = undefined;
        resolve(result);
      };
      const interrupt = (reason: string): void => {
        finish(conflict(reason));
      };
      const leave = (): void => {
        finish([]);
      };
      const timer = setTimeout(leave, waitMs);
      const stopListening = this.#updates.listen(() => {
        const updates = first();
        if (updates.length > 0) finish(updates);
      });
      gone.addEventListener('abort', leave);
      this.#interrupt = interrupt;
    });
  }
}
