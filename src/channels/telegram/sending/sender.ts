import type { Outgoing } from '../../../assistant/outgoing.ts';
import type { GreenhouseId, PendingOutgoing, Settled } from '../../../assistant/ports/store.ts';
import { channel } from '../channel-name.ts';
import { describeError } from '../describe-error.ts';
import type { TelegramOptions } from '../telegram-options.ts';
import type { Delivery } from './delivery.ts';
import { KnownWaiting } from './known-waiting.ts';
import { WakeUp } from './wake-up.ts';

/** After so many that it was told of, the whole outbox is looked through for what else is due. */
const mostKnownInTurn = 16;
/** One message at a time, so that a kill leaves one in doubt; a slow one does not hold up the others. */
const patienceMs = 500;
const mostAtOnce = 8;
const idleMs = 1000;
const faultRetryMs = 2000;

/**
 * The states: asleep → taking a message from the outbox → sending it → settled, and so on. Asleep, it
 * can be made to stand by: it takes up nothing until it is given what was leased for it.
 */
export class Sender {
  readonly #options: TelegramOptions;
  readonly #delivery: Delivery;
  readonly #wakeUp = new WakeUp();
  readonly #underWay = new Set<Promise<void>>();
  #isStopping = false;
  #running: Promise<void> | null = null;
  /** The earliest of the instants until which messages were put off. */
  #nextDueAtMs = Number.POSITIVE_INFINITY;
  #isAsleep = false;
  #isStandingBy = false;
  #leased: PendingOutgoing | null = null;
  readonly #known = new KnownWaiting();
  #knownInTurn = 0;

  constructor(options: TelegramOptions, delivery: Delivery) {
    this.#options = options;
    this.#delivery = delivery;
  }

  start(): void {
    this.#running ??= this.#run();
  }

  /** There is, or may be, something to send. */
  wake(): void {
    this.#wakeUp.call();
  }

  /** True: it takes up nothing until `endStandBy`, so that one message may be leased for it. */
  standBy(): boolean {
    const isFree = this.#isAsleep && this.#underWay.size === 0 && !this.#isStopping;
    if (!isFree || this.#isStandingBy) return false;
    this.#isStandingBy = true;
    return true;
  }

  /** Ends a standing by, with what was leased for it meanwhile and is to be sent first. */
  endStandBy(leased: PendingOutgoing | null): void {
    this.#leased = leased;
    this.#isStandingBy = false;
    this.wake();
  }

  /** Told of these, it need not look for them; to be sent they are without that as well. */
  tell(greenhouse: GreenhouseId, written: readonly Outgoing[]): void {
    this.#known.add(greenhouse, written);
    this.wake();
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
        await this.#rest();
      } catch (error) {
        report('error', `The outbox could not be read: ${describeError(error)}`);
        await this.#wakeUp.sleep(faultRetryMs);
      }
    }
  }

  async #take(): Promise<PendingOutgoing | null> {
    const leased = this.#leased;
    this.#leased = null;
    if (leased) {
      this.#known.drop(leased);
      return leased;
    }
    if (this.#isStopping) return null;
    return (await this.#takeKnown()) ?? (await this.#takeDue());
  }

  async #takeKnown(): Promise<PendingOutgoing | null> {
    const known = this.#knownInTurn < mostKnownInTurn ? this.#known.next() : null;
    if (!known) return null;
    this.#knownInTurn += 1;
    const { store, nowMs } = this.#options;
    const isTaken = await store.lease(known.greenhouse, known.outgoing.no, nowMs());
    return isTaken ? known : null;
  }

  async #takeDue(): Promise<PendingOutgoing | null> {
    const { store, nowMs } = this.#options;
    this.#knownInTurn = 0;
    const [next] = await store.pending(channel, nowMs(), 1);
    if (next) this.#known.drop(next);
    return next ?? null;
  }

  /** Sends one message, and gives the next, taken up in one breath with the settling of this one. */
  async #send(message: PendingOutgoing): Promise<PendingOutgoing | null> {
    const sending = this.#deliver(message);
    const settled = await within(patienceMs, sending);
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
    if (settled.kind === 'retry') {
      this.#nextDueAtMs = Math.min(this.#nextDueAtMs, settled.notBeforeMs);
    }
    try {
      await this.#options.store.settle(greenhouse, outgoing.no, settled);
    } catch (error) {
      this.#options.report('error', `A message could not be settled: ${describeError(error)}`);
    }
  }

  async #rest(): Promise<void> {
    const nowMs = this.#options.nowMs();
    const untilDueMs = this.#nextDueAtMs - nowMs;
    this.#nextDueAtMs = Number.POSITIVE_INFINITY;
    this.#isAsleep = true;
    await this.#wakeUp.sleep(Math.min(idleMs, Math.max(0, untilDueMs)));
    while (this.#isStandingBy) await this.#wakeUp.sleep(idleMs);
    this.#isAsleep = false;
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
