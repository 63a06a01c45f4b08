import type { Api } from 'grammy';
import type { Update } from 'grammy/types';
import { describeError } from '../describe-error.ts';
import { wantedUpdates } from '../reading/read-update.ts';
import { failureOf } from '../sending/failure.ts';
import { retryDelayMs } from '../sending/retry-delay.ts';
import { WakeUp } from '../sending/wake-up.ts';

export interface PollerOptions {
  readonly api: Api;
  /** Takes updates in; rejects where they must come again. */
  readonly takeIn: (updates: readonly Update[]) => Promise<void>;
  /** Resolves when what was taken in is answered as well, or after so long. */
  readonly answered: (atMostMs: number) => Promise<void>;
  /** The platform has answered. */
  readonly heard: () => Promise<void>;
  readonly report: (level: 'info' | 'warn' | 'error', sentence: string) => void;
  /** How long the platform may hold a request that it has nothing for. */
  readonly pollS?: number;
  /** A request without an answer for so long hangs: a stalled proxy can hold it for ever. */
  readonly watchdogMs?: number;
}

const defaultPollS = 30;
const defaultWatchdogMs = 90_000;
/** Few, so that the first is answered before the last is read. */
const mostUpdates = 16;
/** Those who write at the same time are taken in together: that serves all of them sooner. */
const answerPatienceMs = 25;
/** Asked again at once, two processes would throw each other out without end. */
const conflictWaitMs = 5000;

const conflictSentence =
  'Another process asks for the updates of this bot (409): messages go to one or the other. Stop one of the two, or give each a bot of its own.';

/**
 * Asks for updates, has them stored, and confirms them by asking for what follows. The states: asking
 * → storing → waiting a moment for the answers → asking on; after a fault a pause that grows.
 */
export class Poller {
  readonly #options: PollerOptions;
  readonly #pause = new WakeUp();
  #offset: number | undefined;
  #isStopping = false;
  #asking: AbortController | null = null;
  #running: Promise<void> | null = null;
  #faults = 0;

  constructor(options: PollerOptions) {
    this.#options = options;
  }

  start(): void {
    this.#running ??= this.#run();
  }

  /** Ends the request under way; what was stored is confirmed, so that it does not come again. */
  async stop(): Promise<void> {
    this.#isStopping = true;
    this.#asking?.abort();
    this.#pause.call();
    await this.#running;
    if (this.#offset === undefined) return;
    try {
      await this.#ask({ offset: this.#offset, limit: 1, timeout: 0 }, lastWordMs);
    } catch (error) {
      this.#options.report('info', `The last updates will come again: ${describeError(error)}`);
    }
  }

  async #run(): Promise<void> {
    while (!this.#mayEnd()) {
      try {
        await this.#once();
        this.#faults = 0;
      } catch (error) {
        if (this.#mayEnd()) return;
        await this.#pause.sleep(this.#waitAfter(error));
        this.#faults += 1;
      }
    }
  }

  /** Asked anew after each wait, in which the answer may change. */
  #mayEnd(): boolean {
    return this.#isStopping;
  }

  async #once(): Promise<void> {
    const { pollS = defaultPollS, watchdogMs = defaultWatchdogMs } = this.#options;
    const { takeIn, answered, heard } = this.#options;
    const updates = await this.#ask(
      {
        ...(this.#offset === undefined ? {} : { offset: this.#offset }),
        limit: mostUpdates,
        timeout: pollS,
      },
      watchdogMs,
    );
    await heard();
    const last = updates.at(-1);
    if (!last) return;
    await takeIn(updates);
    // The order is the platform's: after a week of silence the numbers may start anywhere.
    this.#offset = last.update_id + 1;
    await answered(answerPatienceMs);
  }

  async #ask(
    question: { readonly offset?: number; readonly limit: number; readonly timeout: number },
    withinMs: number,
  ): Promise<readonly Update[]> {
    const asking = new AbortController();
    this.#asking = asking;
    const watchdog = setTimeout(() => {
      asking.abort();
    }, withinMs);
    try {
      const signal = asking.signal as unknown as Parameters<Api['getUpdates']>[1];
      return await this.#options.api.getUpdates(
        { ...question, allowed_updates: [...wantedUpdates] },
        signal,
      );
    } finally {
      clearTimeout(watchdog);
      this.#asking = null;
    }
  }

  #waitAfter(error: unknown): number {
    const { report } = this.#options;
    const failure = failureOf(error);
    if (failure?.kind === 'flooded') return failure.waitMs;
    if (failure?.kind === 'refused' && failure.code === 409) {
      report('warn', conflictSentence);
      return conflictWaitMs;
    }
    if (failure?.kind === 'unauthorised') {
      report('error', 'Telegram does not take the token any more; nothing comes in.');
      return retryDelayMs(this.#faults + 5);
    }
    const level = this.#faults === 0 ? 'info' : 'warn';
    report(level, `Telegram could not be asked: ${describeError(error)}`);
    return retryDelayMs(Math.min(this.#faults, mostDoublings));
  }
}

const lastWordMs = 3000;
/** Half a minute at most: people wait. */
const mostDoublings = 5;
