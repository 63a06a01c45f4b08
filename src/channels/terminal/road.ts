import type { Outgoing } from '../../assistant/outgoing.ts';
import type { GreenhouseId, InboxNo } from '../../assistant/ports/store.ts';
import { readIncomingBody, type TerminalIncoming } from './incoming-body.ts';
import { channel, type TerminalOptions } from './terminal-options.ts';

/** How many messages are taken from the outbox at a time. */
const batch = 50;

/** The terminal's part of the road: into the inbox, over the desk, out of the outbox. */
export class Road {
  readonly #options: TerminalOptions;

  constructor(options: TerminalOptions) {
    this.#options = options;
  }

  /**
   * Stores what was typed, then handles it.
   *
   * @throws Error where it could not be stored or handled; what was stored is handled at the next start.
   */
  async takeIn(incoming: TerminalIncoming): Promise<void> {
    const { store, greenhouseId, nowMs } = this.#options;
    const receivedAtMs = nowMs();
    const { no, platformId } = await store.receive({
      greenhouse: greenhouseId,
      channel,
      // A terminal has no ids of its own: the inbox gives one.
      platformId: null,
      receivedAtMs,
      writtenAtMs: receivedAtMs,
      chat: incoming.from,
      body: incoming,
    });
    await this.#handle(no, platformId, incoming);
  }

  /** Handles what was stored and never handled, since the process died in between. */
  async recover(): Promise<void> {
    const { store, report, greenhouseId } = this.#options;
    const left = await store.unhandled(channel);
    for (const stored of left.filter(({ greenhouse }) => greenhouse === greenhouseId)) {
      try {
        await this.#handle(stored.no, stored.platformId, readIncomingBody(stored.body));
      } catch (error) {
        report(error, `handling the stored message ${stored.platformId}`);
      }
    }
  }

  /**
   * Prints what waits in the outbox; a message is sent once it is printed. What cannot be worded any
   * more, since the set-up lost what it is about, is given up: it would hold back all behind it.
   */
  async deliver(print: (outgoing: Outgoing) => Promise<void>): Promise<void> {
    const { store, report, nowMs } = this.#options;
    for (;;) {
      const pending = await store.pending(channel, nowMs(), batch);
      // Only the first message of each chat is given at a time.
      if (pending.length === 0) return;
      for (const { greenhouse, outgoing } of pending) {
        try {
          await print(outgoing);
        } catch (error) {
          report(error, `printing message ${outgoing.no}`);
          await this.#settle(greenhouse, outgoing, 'given-up');
          continue;
        }
        await this.#settle(greenhouse, outgoing, 'sent');
      }
    }
  }

  #settle(greenhouse: GreenhouseId, { no }: Outgoing, kind: 'sent' | 'given-up'): Promise<void> {
    const { store, nowMs } = this.#options;
    const atMs = nowMs();
    return store.settle(
      greenhouse,
      no,
      kind === 'sent'
        ? { kind, platformId: null, atMs }
        : { kind, because: 'it could not be worded', atMs },
    );
  }

  #handle(no: InboxNo, platformId: string, incoming: TerminalIncoming): Promise<void> {
    const { desk, greenhouseId, nowMs } = this.#options;
    return desk.handle(greenhouseId, no, { channel, platformId, incoming }, nowMs());
  }
}
