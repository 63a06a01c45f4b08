import type { InboxNo } from '../../assistant/ports/store.ts';
import { type PageIncoming, readIncomingBody } from './incoming-body.ts';
import { channel, type PageOptions } from './page-options.ts';
import type { Watchers } from './watchers.ts';

/** How many messages are taken from the outbox at a time. */
const batch = 50;
const firstRetryMs = 5_000;
const longestRetryMs = 15 * 60_000;

/** The page's part of the road: into the inbox, over the desk, out of the outbox to open pages. */
export class Road {
  readonly #options: PageOptions;
  readonly #watchers: Watchers;
  #failures = 0;
  /** When stored messages that could not be handled are tried again; null: there are none. */
  #retryAtMs: number | null = null;

  constructor(options: PageOptions, watchers: Watchers) {
    this.#options = options;
    this.#watchers = watchers;
  }

  /**
   * Stores what a visitor sent and handles it, once for each `platformId`. When it returns, the
   * replies are in the database.
   *
   * @throws Error where it could not be stored or handled; what was stored is tried again.
   */
  async takeIn(platformId: string, incoming: PageIncoming): Promise<void> {
    const { store, greenhouseId, nowMs } = this.#options;
    const receivedAtMs = nowMs();
    const received = await store.receive({
      greenhouse: greenhouseId,
      channel,
      platformId,
      receivedAtMs,
      writtenAtMs: incoming.kind === 'message' ? incoming.writtenAtMs : receivedAtMs,
      chat: incoming.from,
      body: incoming,
    });
    if (!received.isHandled) {
      try {
        await this.#handle(received.no, received.platformId, incoming);
      } catch (error) {
        this.#tryAgainLater();
        throw error;
      }
    }
    await this.deliver();
  }

  /** Handles what was stored and never handled: the process died in between, or the database did. */
  async recover(): Promise<void> {
    const { store, report, greenhouseId } = this.#options;
    const left = await store.unhandled(channel);
    this.#retryAtMs = null;
    let failed = 0;
    for (const stored of left.filter(({ greenhouse }) => greenhouse === greenhouseId)) {
      try {
        await this.#handle(stored.no, stored.platformId, readIncomingBody(stored.body));
      } catch (error) {
        failed += 1;
        report(error, `handling the stored message ${stored.platformId}`);
      }
    }
    if (failed > 0) this.#tryAgainLater();
    else this.#failures = 0;
    await this.deliver();
  }

  /**
   * Sends what waits in the outbox. A message of the page is sent once it is stored, since every
   * page reads the chat from the database; those that are open are woken to do so.
   */
  async deliver(): Promise<void> {
    const { store, nowMs } = this.#options;
    if (this.#retryAtMs !== null && nowMs() >= this.#retryAtMs) return this.recover();
    let settled = 0;
    for (;;) {
      const pending = await store.pending(channel, nowMs(), batch);
      for (const { greenhouse, outgoing } of pending) {
        const atMs = nowMs();
        await store.settle(greenhouse, outgoing.no, { kind: 'sent', platformId: null, atMs });
      }
      settled += pending.length;
      // Only the first message of each chat is given at a time.
      if (pending.length === 0) break;
    }
    if (settled > 0) this.#watchers.wakeAll();
  }

  #tryAgainLater(): void {
    const waitMs = Math.min(firstRetryMs * 2 ** this.#failures, longestRetryMs);
    this.#failures += 1;
    this.#retryAtMs = this.#options.nowMs() + waitMs;
  }

  #handle(no: InboxNo, platformId: string, incoming: PageIncoming): Promise<void> {
    const { desk, greenhouseId, nowMs } = this.#options;
    return desk.handle(greenhouseId, no, { channel, platformId, incoming }, nowMs());
  }
}
