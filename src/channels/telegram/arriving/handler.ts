import type { Arrival } from '../../../assistant/arrival.ts';
import type { Answered, InboxItem } from '../../../assistant/hear-all.ts';
import type { Outgoing } from '../../../assistant/outgoing.ts';
import type { GreenhouseId, PendingOutgoing } from '../../../assistant/ports/store.ts';
import { channel } from '../channel-name.ts';
import { describeError } from '../describe-error.ts';
import { readPressId } from '../message-key.ts';
import type { Lines } from '../sending/lines.ts';
import { retryDelayMs } from '../sending/retry-delay.ts';
import type { Sender } from '../sending/sender.ts';
import { untried } from '../sending/waiting.ts';
import { WakeUp } from '../sending/wake-up.ts';
import type { TelegramOptions } from '../telegram-options.ts';
import { giveUpOn } from './give-up-on.ts';

/** Something stored in the inbox of a greenhouse, waiting to be handled. */
export interface Waiting extends InboxItem {
  readonly greenhouse: GreenhouseId;
}

/** What may be otherwise after a handling, beside the logbook. */
export interface MayHaveChanged {
  readonly household: boolean;
  readonly photos: boolean;
}

/** What it needs of who sends. */
type HandlersSender = Pick<Sender, 'wake' | 'standBy' | 'endStandBy' | 'tell'>;

/** How many are handled in one transaction at most: few, so that the first is answered before the last is read. */
const mostAtOnce = 16;
/** A message that cannot be handled so often is answered by saying so. */
const mostAttempts = 5;

/**
 * Handles what is stored, in the order of the inbox, many in one transaction where many wait. Where
 * that fails, each is tried alone; one that goes on failing is given up with a word to its sender.
 */
export class Handler {
  readonly #options: TelegramOptions;
  readonly #lines: Lines;
  readonly #sender: HandlersSender;
  readonly #afterHandling: (changed: MayHaveChanged) => Promise<void>;
  readonly #wakeUp = new WakeUp();
  #queue: Waiting[] = [];
  readonly #attempts = new Map<number, number>();
  #isStopping = false;
  #isBusy = false;
  #running: Promise<void> | null = null;

  constructor(
    options: TelegramOptions,
    lines: Lines,
    sender: HandlersSender,
    afterHandling: (changed: MayHaveChanged) => Promise<void>,
  ) {
    this.#options = options;
    this.#lines = lines;
    this.#sender = sender;
    this.#afterHandling = afterHandling;
  }

  start(): void {
    this.#running ??= this.#run();
  }

  add(waiting: readonly Waiting[]): void {
    if (waiting.length === 0) return;
    this.#queue.push(...waiting);
    this.#wakeUp.call();
  }

  /**
   * Receives and handles at once, in one transaction, where nothing waits before it. False: it was
   * neither received nor handled, and has to be stored first.
   */
  async takeIn(greenhouse: GreenhouseId, arrivals: readonly Arrival[]): Promise<boolean> {
    if (this.#isBusy || this.#queue.length > 0 || this.#isStopping) return false;
    const { desk, nowMs, report } = this.#options;
    const sender = { isStandingBy: false };
    let leased: readonly PendingOutgoing[] = [];
    try {
      const taken = await desk.takeIn(greenhouse, arrivals, nowMs(), () => {
        sender.isStandingBy = this.#sender.standBy();
        return sender.isStandingBy ? channel : null;
      });
      leased = taken.leased.map((outgoing) => untried(greenhouse, outgoing));
      const items = taken.items.map((item) => ({ ...item, greenhouse }));
      await this.#handled(greenhouse, items, taken);
      return true;
    } catch (error) {
      report('warn', `Not taken in at once, so stored first: ${describeError(error)}`);
      return false;
    } finally {
      if (sender.isStandingBy) this.#sender.endStandBy(leased);
    }
  }

  /** Ends with what is being handled; what still waits is in the inbox for the next start. */
  async stop(): Promise<void> {
    this.#isStopping = true;
    this.#wakeUp.call();
    await this.#running;
  }

  async #run(): Promise<void> {
    while (!this.#isStopping) {
      const [first] = this.#queue;
      if (!first) {
        await this.#wakeUp.sleep(60_000);
        continue;
      }
      const { greenhouse } = first;
      const batch = this.#queue
        .filter((each) => each.greenhouse === greenhouse)
        .slice(0, mostAtOnce);
      const taken = new Set(batch);
      this.#queue = this.#queue.filter((each) => !taken.has(each));
      this.#isBusy = true;
      await this.#handle(greenhouse, batch);
      this.#isBusy = false;
    }
  }

  async #handle(greenhouse: GreenhouseId, batch: readonly Waiting[]): Promise<void> {
    const { desk, nowMs } = this.#options;
    try {
      const answered = await desk.handleAll(greenhouse, batch, nowMs());
      await this.#handled(greenhouse, batch, answered);
    } catch (error) {
      if (batch.length > 1) {
        for (const waiting of batch) await this.#handle(greenhouse, [waiting]);
        return;
      }
      for (const waiting of batch) await this.#failed(waiting, error);
    }
  }

  async #handled(
    greenhouse: GreenhouseId,
    batch: readonly Waiting[],
    { said, outgoing }: Answered,
  ): Promise<void> {
    await this.#afterHandling({
      household: batch.some(mayChangeHousehold),
      photos: batch.some(mayAttachPhoto),
    });
    this.#sender.tell(greenhouse, outgoing);
    for (const waiting of batch) {
      this.#attempts.delete(waiting.no);
      this.#answerPress(waiting, said.get(waiting.no) ?? []);
    }
  }

  async #failed(waiting: Waiting, error: unknown): Promise<void> {
    const { desk, nowMs, report } = this.#options;
    const attempts = (this.#attempts.get(waiting.no) ?? 0) + 1;
    this.#attempts.set(waiting.no, attempts);
    report('error', `Inbox ${waiting.no} could not be handled: ${describeError(error)}`);
    if (attempts >= mostAttempts) {
      try {
        await giveUpOn(desk, waiting, nowMs());
        this.#answerPress(waiting, []);
        await this.#afterHandling({ household: false, photos: false });
        this.#sender.wake();
        return;
      } catch (failure) {
        report('error', `Inbox ${waiting.no} stays unhandled: ${describeError(failure)}`);
      }
    }
    setTimeout(() => {
      this.add([waiting]);
    }, retryDelayMs(attempts)).unref();
  }

  /** A reply in passing is the button's answer itself, and the sender gives it. */
  #answerPress({ received }: Waiting, said: readonly Outgoing[]): void {
    const callbackId = readPressId(received.platformId);
    if (callbackId === null || said.some(({ inPassing }) => inPassing)) return;
    void this.#lines.answerPress(callbackId);
  }
}

function mayChangeHousehold({ received }: Waiting): boolean {
  return received.incoming.kind === 'wish' || received.incoming.kind === 'press';
}

/** By its caption, or by the button that says what it shows. */
function mayAttachPhoto({ received }: Waiting): boolean {
  const { incoming } = received;
  return incoming.kind === 'press' || (incoming.kind === 'message' && incoming.photo !== undefined);
}
