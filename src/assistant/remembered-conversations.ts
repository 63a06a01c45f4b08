import type { Conversation } from './conversation.ts';
import type { Ledger } from './ports/store.ts';

/**
 * The conversations of one greenhouse as last written, good for as long as nobody else has written
 * to the greenhouse since: its revision tells.
 */
export class RememberedConversations {
  #revision = -1;
  readonly #byHandle = new Map<string, Conversation>();

  /** The ledger, asked only for what is not known already. */
  before(ledger: Ledger): Ledger {
    if (ledger.counters.revision !== this.#revision) this.#byHandle.clear();
    return {
      ...ledger,
      conversation: async (handle) =>
        this.#byHandle.get(handle) ?? (await ledger.conversation(handle)),
    };
  }

  /** What was written together with this revision. */
  keep(revision: number, written: readonly Conversation[]): void {
    if (revision !== this.#revision + 1) this.#byHandle.clear();
    this.#revision = revision;
    for (const conversation of written) this.#byHandle.set(conversation.handle, conversation);
  }
}
