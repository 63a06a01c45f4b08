import type { Outgoing } from '../../../assistant/outgoing.ts';
import type { GreenhouseId, PendingOutgoing, Settled } from '../../../assistant/ports/store.ts';
import { describeError } from '../describe-error.ts';
import type { TelegramOptions } from '../telegram-options.ts';
import type { Delivery } from './delivery.ts';
import { Waiting } from './waiting.ts';
import { WakeUp } from './wake-up.ts';

/** One message at a time, so that a kill leaves one in doubt; a slow one does not hold up the others. */
const patienceMs = 500;
const mostAtOnce = 8;
const faultRetryMs = 2000;

/**
 * The states: asleep → taking a message from the outbox → sending it → settled, and so on. With nothing
 * left to send it can be made to stand by: it takes up nothing until it is given what was leased for it.
 */
export class Sender {
  readonly #options: TelegramOptions;
  readonly #delivery: Delivery;
  readonly #wakeUp = new WakeUp();
  readonly #underWay = new Set<Promise<void>>();
  #isStopping = false;
  #running: Promise<void> | null = null;
  readonly #waiting: Waiting;
  /** Nothing is being sent or taken up; the last may still be on its way to be settled. */
  #isFree = false;
  #isStandingBy = false;
  #leased: PendingOutgoing | null = null;
  #atRest: (() => void)[] = [];

  constructor(options: TelegramOptions, delivery: Delivery) {
    this.#options = options;
    this.#delivery = delivery;
    this.#waiting = new Waiting(options);
  }

  start(): void {
    this.#running ??= this.#run();
  }

  /** There is, or may be, something to send. */
  wake(): void {
    this.#waiting.expectMore();
    this.#wakeUp.call();
  }

  /** True: it takes up nothing until `endStandBy`, so that one message may be leased for it. */
  standBy(): boolean {
    const isFree = this.#isFree && this.#underWay.size === 0 && !this.#isStopping;
    if (!isFree || this.#isStandingBy) return false;
    this.#isStandingBy = true;
    return true;
  }

  /** Ends a standing by, with what was leased for it meanwhile and is to be sent first. */
  endStandBy(leased: PendingOutgoing | null): void {
    this.#leased = leased;
    this.#isStandingBy = false;
    this.#wakeUp.call();
  }

  /** These were written to the outbox; told of them, it need not look for them. */
  tell(greenhouse: GreenhouseId, written: readonly Outgoing[]): void {
    this.#waiting.tell(greenhouse, written);
    this.#wakeUp.call();
  }

  /** Waits until all that it knows of is sent or put off, but not for longer than that. */
  async rested(atMostMs: number): Promise<void> {
    const isAtWork = !this.#isFree || this.#leased !== null || this.#waiting.knowsSome();
    if (!isAtWork) return;
    const rest = new Promise<true>((resolve) => {
      this.#atRest.push(() => {
        resolve(true);
      });
    });
    await within(atMostMs, rest);
  }

  /** Sends what is being sent, and no more. */
  async stop(): Promise<void> {
    this.#isStopping = true;
    this.wake();
    await this.#running;
    await Promise.allSettled(this.#underWay);
  }

  async #run(): Promise<void> {
    const { report } = this.#options;
    while (!this.#isStopping || this.#leased) {
      try {
        let next = await this.#take();
        while (next) next = await this.#send(next);
        this.#tellAtRest();
        await this.#rest();
      } catch (error) {
        report('error', `The outbox could not be read: ${describeError(error)}`);
        await this.#wakeUp.sleep(faultRetryMs);
      }
    }
  }

  async #take(): Promise<PendingOutgoing | null> {
    this.#isFree = false;
    const next = this.#takeLeased() ?? (this.#isStopping ? null : await this.#waiting.take());
    this.#isFree = next === null;
    return next;
  }

  #takeLeased(): PendingOutgoing | null {
    const leased = this.#leased;
    this.#leased = null;
    if (leased) this.#waiting.drop(leased);
    return leased;
  }

  /** Sends one message, and gives the next, taken up in one breath with the settling of this one. */
  async #send(message: PendingOutgoing): Promise<PendingOutgoing | null> {
    const sending = this.#deliver(message);
    const settled = await within(patienceMs, sending);
    // What became of the last is still to be written down, which nobody has to wait for.
    if (!this.#waiting.knowsSome()) this.#tellAtRest();
    if (settled) return (await Promise.all([this.#settle(message, settled), this.#take()]))[1];
    const late = sending
      .then((outcome) => this.#settle(message, outcome))
      .finally(() => {
        this.#underWay.delete(late);
        this.wake();
      });
    this.#underWay.add(late);
    while (this.#underWay.size >= mostAtOnce) await Promise.race(this.#underWay);
    return this.#take();
  }

  async #deliver(message: PendingOutgoing): Promise<Settled> {
    const { nowMs, report } = this.#options;
    try {
      return await this.#delivery.deliver(message);
    } catch (error) {
      const because = describeError(error);
      report('error', `Message ${message.outgoing.no} could not be dealt with: ${because}`);
      return { kind: 'retry', notBeforeMs: nowMs() + faultRetryMs, because };
    }
  }

  /** Where the database does not take it, the message comes again when its lease is over. */
  async #settle({ greenhouse, outgoing }: PendingOutgoing, settled: Settled): Promise<void> {
    if (settled.kind === 'retry') this.#waiting.putOff(settled.notBeforeMs);
    try {
      await this.#options.store.settle(greenhouse, outgoing.no, settled);
    } catch (error) {
      this.#options.report('error', `A message could not be settled: ${describeError(error)}`);
    }
  }

  #tellAtRest(): void {
    for (const tell of this.#atRest.splice(0)) tell();
  }

  async #rest(): Promise<void> {
    await this.#wakeUp.sleep(this.#waiting.restMs());
    while (this.#isStandingBy) await this.#wakeUp.sleep(faultRetryMs);
  }
}

/** What a promise gives within the time; null: it takes longer, and goes on. */
async function within<T>(ms: number, promise: Promise<T>): Promise<T | null> {
  let timer: NodeJS.Timeout | undefined;
  const patience = new Promise<null>((resolve) => {
    timer = setTimeout(() => {
      resolve(null);
    }, ms);
  });
  const first = await Promise.race([promise, patience]);
  clearTimeout(timer);
  return first;
}
