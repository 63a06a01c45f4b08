import type { Outgoing } from '../../../assistant/outgoing.ts';
import type { GreenhouseId, PendingOutgoing } from '../../../assistant/ports/store.ts';
import { channel } from '../channel-name.ts';
import type { TelegramOptions } from '../telegram-options.ts';

/** So often the outbox is looked through, whatever is known: other processes write to it too. */
const lookEveryMs = 1000;
/** What is told of beyond that is found in the outbox in time. */
const mostKnown = 1000;

/**
 * Takes up what waits in the outbox, one by one. What this process wrote is taken up by its number,
 * which is quicker than to look for it; the outbox is looked through where there may be more, and
 * every second.
 */
export class Waiting {
  readonly #options: TelegramOptions;
  /** In nobody's hands yet, as far as is known here. */
  #known: PendingOutgoing[] = [];
  #mayBeMore = true;
  #lookAtMs = Number.NEGATIVE_INFINITY;
  /** The earliest of the instants until which messages were put off. */
  #nextDueAtMs = Number.POSITIVE_INFINITY;

  constructor(options: TelegramOptions) {
    this.#options = options;
  }

  /** These were written to the outbox. */
  tell(greenhouse: GreenhouseId, written: readonly Outgoing[]): void {
    const here = written.filter((outgoing) => outgoing.channel === channel);
    // What the earlier message is called that another takes the place of is known to the outbox only.
    const plain = here.filter(({ edits }) => edits === undefined);
    const kept = plain.slice(0, Math.max(0, mostKnown - this.#known.length));
    this.#known.push(...kept.map((outgoing) => untried(greenhouse, outgoing)));
    if (kept.length < here.length) this.expectMore();
  }

  knowsSome(): boolean {
    return this.#known.length > 0;
  }

  /** There may be something that is not known here. */
  expectMore(): void {
    this.#mayBeMore = true;
  }

  putOff(untilMs: number): void {
    this.#nextDueAtMs = Math.min(this.#nextDueAtMs, untilMs);
  }

  /** How long nothing has to be done if nothing comes. */
  restMs(): number {
    const untilMs = Math.min(this.#lookAtMs, this.#nextDueAtMs) - this.#options.nowMs();
    return Math.min(lookEveryMs, Math.max(0, untilMs));
  }

  /** @throws Error where the database cannot be reached. */
  async take(): Promise<PendingOutgoing | null> {
    const found = this.restMs() > 0 ? null : await this.#look();
    return found ?? (await this.#takeKnown()) ?? (this.#mayBeMore ? this.#look() : null);
  }

  /** It has been taken up by another way. */
  drop({ greenhouse, outgoing }: PendingOutgoing): void {
    this.#known = this.#known.filter(
      (known) => known.greenhouse !== greenhouse || known.outgoing.no !== outgoing.no,
    );
  }

  async #takeKnown(): Promise<PendingOutgoing | null> {
    const { store, nowMs } = this.#options;
    const next = this.#known.shift();
    if (!next) return null;
    if (await store.lease(next.greenhouse, next.outgoing.no, nowMs())) return next;
    this.expectMore();
    return null;
  }

  async #look(): Promise<PendingOutgoing | null> {
    const { store, nowMs } = this.#options;
    const now = nowMs();
    this.#lookAtMs = now + lookEveryMs;
    if (this.#nextDueAtMs <= now) this.#nextDueAtMs = Number.POSITIVE_INFINITY;
    this.#mayBeMore = false;
    try {
      const [found] = await store.pending(channel, now, 1);
      if (!found) return null;
      this.drop(found);
      this.expectMore();
      return found;
    } catch (error) {
      this.expectMore();
      throw error;
    }
  }
}

/** A message as the outbox gives it out for the first time. */
export function untried(greenhouse: GreenhouseId, outgoing: Outgoing): PendingOutgoing {
  return {
    greenhouse,
    outgoing,
    attempts: 0,
    unanswered: 0,
    partsSent: 0,
    editsPlatformId: null,
  };
}
