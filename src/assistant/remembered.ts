import type { Conversation } from './conversation.ts';
import type { Counters, Ledger } from './ports/store.ts';

/**
 * The numbering and the conversations of one greenhouse as last written, good for as long as nobody
 * else has written to the greenhouse since: its revision tells.
 */
export class Remembered {
  #counters: Counters | null = null;
  readonly #byHandle = new Map<string, Conversation>();

  /** As of a revision; null: of that nothing is known. */
  countersAt(revision: number): Counters | null {
    return this.#counters?.revision === revision ? this.#counters : null;
  }

  /** The ledger, asked only for what is not known already. */
  before(ledger: Ledger): Ledger {
    if (ledger.counters.revision !== this.#counters?.revision) this.#byHandle.clear();
    return {
      ...ledger,
      conversation: async (handle) =>
        this.#byHandle.get(handle) ?? (await ledger.conversation(handle)),
    };
  }

  /** The numbering as it was read. */
  know(now: Counters): void {
    if (now.revision !== this.#counters?.revision) this.#byHandle.clear();
    this.#counters = now;
  }

  /** What was written, and the numbering since. */
  keep(after: Counters, written: readonly Conversation[]): void {
    if (after.revision - 1 !== this.#counters?.revision) this.#byHandle.clear();
    this.#counters = after;
    for (const conversation of written) this.#byHandle.set(conversation.handle, conversation);
  }
}
