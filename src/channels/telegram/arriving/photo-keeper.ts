import type { Api } from 'grammy';
import type { GreenhouseId } from '../../../assistant/ports/store.ts';
import { attachedNotes } from '../../../assistant/use-cases/attached-notes.ts';
import { channel } from '../channel-name.ts';
import { describeError } from '../describe-error.ts';
import { failureOf } from '../sending/failure.ts';
import { retryDelayMs } from '../sending/retry-delay.ts';
import { WakeUp } from '../sending/wake-up.ts';
import type { TelegramOptions } from '../telegram-options.ts';

const publicApiRoot = 'https://api.telegram.org';
/** What the platform lets a bot fetch (Bot API, getFile). */
const mostBytes = 20 * 1024 * 1024;
const longestFetchMs = 20_000;
const idleMs = 3_600_000;

/**
 * Fetches the photos that members attached from the platform into the database. What is wanted is
 * seen from the logbook, so that a photo is fetched once, whenever the program ran. The states: asleep
 * → fetching what is not here yet → asleep; after a fault awake again a little later.
 */
export class PhotoKeeper {
  readonly #options: TelegramOptions;
  readonly #api: Api;
  readonly #wakeUp = new WakeUp();
  readonly #stopping = new AbortController();
  /** The platform will never give these. */
  readonly #refused = new Set<string>();
  #faults = 0;
  #running: Promise<void> | null = null;

  constructor(options: TelegramOptions, api: Api) {
    this.#options = options;
    this.#api = api;
  }

  start(): void {
    this.#running ??= this.#run();
  }

  /** A photo may have been attached. */
  wake(): void {
    this.#wakeUp.call();
  }

  async stop(): Promise<void> {
    this.#stopping.abort();
    this.wake();
    await this.#running;
  }

  async #run(): Promise<void> {
    while (!this.#mayEnd()) {
      try {
        for (const { id } of await this.#options.store.greenhouses()) await this.#keepAllOf(id);
        this.#faults = 0;
        await this.#wakeUp.sleep(idleMs);
      } catch (error) {
        if (this.#mayEnd()) return;
        this.#options.report('warn', `A photo is not here yet: ${describeError(error)}`);
        await this.#wakeUp.sleep(retryDelayMs(this.#faults++));
      }
    }
  }

  /** Asked anew after each wait, in which the answer may change. */
  #mayEnd(): boolean {
    return this.#stopping.signal.aborted;
  }

  async #keepAllOf(greenhouse: GreenhouseId): Promise<void> {
    const { store, desk, report } = this.#options;
    const attached = attachedNotes((await desk.standing(greenhouse)).logbook).flatMap(
      ({ photo }) => (photo?.channel === channel ? [photo] : []),
    );
    if (attached.length === 0) return;
    const here = await store.photos.idsOf(greenhouse, channel);
    const wanted = attached.filter(({ id }) => !here.has(id) && !this.#refused.has(id));
    const faults: string[] = [];
    for (const photo of wanted) {
      try {
        const bytes = await this.#fetch(photo.id);
        if (bytes) await store.photos.keep(greenhouse, photo, bytes);
        else {
          this.#refused.add(photo.id);
          report('warn', 'A photo is not given by the platform, or is too large to keep.');
        }
      } catch (error) {
        // One that cannot be had just now keeps none of the others away.
        faults.push(describeError(error));
      }
    }
    if (faults.length > 0) throw new Error(faults.join('; '));
  }

  /** Null: it cannot be had. */
  async #fetch(id: string): Promise<Uint8Array | null> {
    const path = await this.#pathOf(id);
    if (path === null) return null;
    const { apiRoot, token } = this.#options;
    const signal = AbortSignal.any([this.#stopping.signal, AbortSignal.timeout(longestFetchMs)]);
    const response = await fetch(`${apiRoot ?? publicApiRoot}/file/bot${token}/${path}`, {
      signal,
    });
    if (response.status === 404) return null;
    if (!response.ok) throw new Error(`the file server answers ${response.status}`);
    const bytes = new Uint8Array(await response.arrayBuffer());
    return bytes.length > mostBytes ? null : bytes;
  }

  async #pathOf(id: string): Promise<string | null> {
    try {
      return (await this.#api.getFile(id)).file_path ?? null;
    } catch (error) {
      if (failureOf(error)?.kind === 'refused') return null;
      throw error;
    }
  }
}
