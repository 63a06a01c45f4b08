import type { PendingOutgoing } from '../../../assistant/ports/store.ts';
import { channel } from '../channel-name.ts';
import { describeError } from '../describe-error.ts';
import type { TelegramOptions } from '../telegram-options.ts';
import type { Delivery } from './delivery.ts';
import { WakeUp } from './wake-up.ts';

/** One message at a time, so that a kill leaves one in doubt; a slow one does not hold up the others. */
const patienceMs = 500;
const mostAtOnce = 8;
const idleMs = 1000;
const faultRetryMs = 2000;

/** The states: asleep → taking a message from the outbox → sending it → settled, and so on. */
export class Sender {
  readonly #options: TelegramOptions;
  readonly #delivery: Delivery;
  readonly #wakeUp = new WakeUp();
  readonly #underWay = new Set<Promise<void>>();
  #isStopping = false;
  #running: Promise<void> | null = null;
  /** The earliest of the instants until which messages were put off. */
  #nextDueAtMs = Number.POSITIVE_INFINITY;

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

  /** Sends what is being sent, and no more. */
  async stop(): Promise<void> {
    this.#isStopping = true;
    this.wake();
    await this.#running;
    await Promise.allSettled(this.#underWay);
  }

  async #run(): Promise<void> {
    const { store, nowMs, report } = this.#options;
    while (!this.#isStopping) {
      try {
        const [next] = await store.pending(channel, nowMs(), 1);
        if (next) await this.#send(next);
        else await this.#rest();
      } catch (error) {
        report('error', `The outbox could not be read: ${describeError(error)}`);
        await this.#wakeUp.sleep(faultRetryMs);
      }
    }
  }

  async #send(next: PendingOutgoing): Promise<void> {
    const sending = this.#deliver(next)
      .catch((error: unknown) => {
        this.#options.report('error', `A message could not be settled: ${describeError(error)}`);
      })
      .finally(() => {
        this.#underWay.delete(sending);
      });
    this.#underWay.add(sending);
    await withinPatience(sending);
    while (this.#underWay.size >= mostAtOnce) await Promise.race(this.#underWay);
  }

  async #deliver(next: PendingOutgoing): Promise<void> {
    const { store, nowMs, report } = this.#options;
    const { greenhouse, outgoing } = next;
    try {
      const settled = await this.#delivery.deliver(next);
      if (settled.kind === 'retry') {
        this.#nextDueAtMs = Math.min(this.#nextDueAtMs, settled.notBeforeMs);
      }
      await store.settle(greenhouse, outgoing.no, settled);
    } catch (error) {
      report('error', `Message ${outgoing.no} could not be dealt with: ${describeError(error)}`);
      const notBeforeMs = nowMs() + faultRetryMs;
      const because = describeError(error);
      await store.settle(greenhouse, outgoing.no, { kind: 'retry', notBeforeMs, because });
    }
  }

  async #rest(): Promise<void> {
    const nowMs = this.#options.nowMs();
    const untilDueMs = this.#nextDueAtMs - nowMs;
    this.#nextDueAtMs = Number.POSITIVE_INFINITY;
    await this.#wakeUp.sleep(Math.min(idleMs, Math.max(0, untilDueMs)));
  }
}

async function withinPatience(sending: Promise<void>): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const patience = new Promise<void>((resolve) => {
    timer = setTimeout(resolve, patienceMs);
  });
  await Promise.race([sending, patience]);
  clearTimeout(timer);
}
