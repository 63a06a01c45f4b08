import type { UpdateKind, WireUpdate } from '../wire/update.ts';
import type { Clock } from './clock.ts';

/** Documented: updates are kept on the server no longer than 24 hours. */
const KEPT_MS = 24 * 3600 * 1000;
/** Documented: without updates for at least a week the next id is chosen at random. */
const SILENCE_BEFORE_NEW_IDS_MS = 7 * 24 * 3600 * 1000;
/** Documented: all kinds but these are sent to a bot that names none. */
const ONLY_ON_REQUEST: readonly UpdateKind[] = ['chat_member', 'message_reaction'];

/** An update that the bot has not confirmed. */
export type PendingUpdate = {
  readonly wire: WireUpdate;
  readonly chatId: number;
  readonly atMs: number;
};

/** The updates waiting for the bot, oldest first, until it confirms them or they expire. */
export class UpdateQueue {
  readonly #clock: Clock;
  #pending: PendingUpdate[] = [];
  #lastId = 871_000_000;
  #lastAtMs: number;
  #allowed: readonly string[] = [];
  readonly #listeners = new Set<() => void>();

  constructor(clock: Clock) {
    this.#clock = clock;
    this.#lastAtMs = clock.nowMs();
  }

  /** An empty list means the platform's default set. The choice stays until another is made. */
  allow(kinds: readonly string[]): void {
    this.#allowed = kinds;
  }

  get allowed(): readonly string[] {
    return this.#allowed;
  }

  push(kind: UpdateKind, chatId: number, body: unknown): void {
    if (!this.#lets(kind)) return;
    const nowMs = this.#clock.nowMs();
    this.#lastId = this.#nextId(nowMs);
    this.#lastAtMs = nowMs;
    this.#pending.push({ wire: { update_id: this.#lastId, [kind]: body }, chatId, atMs: nowMs });
    for (const listener of [...this.#listeners]) listener();
  }

  /** Everything unconfirmed and unexpired, oldest first. */
  pending(): readonly PendingUpdate[] {
    const oldestMs = this.#clock.nowMs() - KEPT_MS;
    if (this.#pending.some((update) => update.atMs < oldestMs)) {
      this.#pending = this.#pending.filter((update) => update.atMs >= oldestMs);
    }
    return this.#pending;
  }

  /**
   * Forgets what comes before `offset`. A negative one keeps only so many from the end. One that lies
   * beyond every id given out is from before the ids began anew and confirms nothing (from memory).
   */
  confirm(offset: number): void {
    if (offset < 0) this.#pending = this.#pending.slice(offset);
    else if (offset > 0 && offset <= this.#lastId + 1) {
      this.#pending = this.#pending.filter((update) => update.wire.update_id >= offset);
    }
    this.#announce();
  }

  /** Forgets one update, which a webhook has taken. */
  drop(updateId: number): void {
    this.#pending = this.#pending.filter((update) => update.wire.update_id !== updateId);
    this.#announce();
  }

  clear(): void {
    this.#pending = [];
    this.#announce();
  }

  /** Calls back after every change; answers with the way to stop it. */
  listen(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  #announce(): void {
    for (const listener of [...this.#listeners]) listener();
  }

  #lets(kind: UpdateKind): boolean {
    return this.#allowed.length === 0
      ? !ONLY_ON_REQUEST.includes(kind)
      : this.#allowed.includes(kind);
  }

  /** Lower and higher by turns after a silence, since neither may be relied on. */
  #nextId(nowMs: number): number {
    return nowMs - this.#lastAtMs < SILENCE_BEFORE_NEW_IDS_MS
      ? this.#lastId + 1
      : (this.#lastId + 600_000_000) % 1_000_000_000;
  }
}
