import type { Outgoing } from '../../../assistant/outgoing.ts';
import type {
  GreenhouseId,
  PendingOutgoing,
  Settled,
  Settling,
} from '../../../assistant/ports/store.ts';
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
 * What was leased together goes out in its order, each handed on as settled before the next is sent;
 * where one is not sent, or takes long, the rest is given back, since its chat may have to wait.
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
  #leased: PendingOutgoing[] = [];
  /** Of the message before; that of the one before that is done. */
  #settling: Promise<void> = Promise.resolve();
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

  /** True: it takes up nothing until `endStandBy`, so that messages may be leased for it. */
  standBy(): boolean {
    const hasNone = this.#isFree && this.#underWay.size === 0 && this.#leased.length === 0;
    const isFree = hasNone && !this.#isStopping;
    if (!isFree || this.#isStandingBy) return false;
    this.#isStandingBy = true;
    return true;
  }

  /** Ends a standing by, with what was leased for it meanwhile and is to be sent first. */
  endStandBy(leased: readonly PendingOutgoing[]): void {
    this.#leased = [...leased];
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
    const isAtWork = !this.#isFree || this.#leased.length > 0 || this.#waiting.knowsSome();
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
    await Promise.allSettled([...this.#underWay, this.#settling]);
  }

  async #run(): Promise<void> {
    const { report } = this.#options;
    while (!this.#isStopping) {
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
    await this.#giveBack();
  }

  async #take(): Promise<PendingOutgoing | null> {
    this.#isFree = false;
    const next = this.#isStopping ? null : (this.#takeLeased() ?? (await this.#waiting.take()));
    this.#isFree = next === null;
    return next;
  }

  #takeLeased(): PendingOutgoing | null {
    const leased = this.#leased.shift() ?? null;
    if (leased) this.#waiting.drop(leased);
    return leased;
  }

  /** Sends one message, and gives the next, taken up while this one is being settled. */
  async #send(message: PendingOutgoing): Promise<PendingOutgoing | null> {
    const sending = this.#deliver(message);
    const settled = await within(patienceMs, sending);
    // What became of the last is still to be written down, which nobody has to wait for.
    if (!this.#waiting.knowsSome()) this.#tellAtRest();
    if (settled) await this.#handOn(message, settled);
    else await this.#letRun(message, sending);
    if (settled?.kind !== 'sent') await this.#giveBack();
    return this.#take();
  }

  /** Nobody waits for a message that takes long, unless there are many of them. */
  async #letRun(message: PendingOutgoing, sending: Promise<Settled>): Promise<void> {
    const late = sending
      .then((outcome) => this.#settle(message, outcome).done)
      .finally(() => {
        this.#underWay.delete(late);
        this.wake();
      });
    this.#underWay.add(late);
    while (this.#underWay.size >= mostAtOnce) await Promise.race(this.#underWay);
  }

  /** Waits until a kill leaves no doubt about this message; it is written down while the next is sent. */
  async #handOn(message: PendingOutgoing, settled: Settled): Promise<void> {
    await this.#settling;
    const { handedOn, done } = this.#settle(message, settled);
    this.#settling = done;
    await (settled.kind === 'sent' ? handedOn : done);
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
  #settle({ greenhouse, outgoing }: PendingOutgoing, settled: Settled): Settling {
    if (settled.kind === 'retry') this.#waiting.putOff(settled.notBeforeMs);
    const { handedOn, done } = this.#options.store.beginToSettle(greenhouse, outgoing.no, settled);
    const told = done.catch((error: unknown) => {
      this.#options.report('error', `A message could not be settled: ${describeError(error)}`);
    });
    return { handedOn: handedOn.catch(() => told), done: told };
  }

  /** What was leased and is not sent now waits in the outbox like all else. */
  async #giveBack(): Promise<void> {
    const [first, ...others] = this.#leased.splice(0);
    if (!first) return;
    const nos = [first, ...others].map(({ outgoing }) => outgoing.no);
    try {
      await this.#options.store.giveBack(first.greenhouse, nos);
    } catch (error) {
      // It is sent when its lease is over.
      this.#options.report('error', `Messages could not be given back: ${describeError(error)}`);
    }
    this.#waiting.expectMore();
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
