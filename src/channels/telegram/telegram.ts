import { autoRetry } from '@grammyjs/auto-retry';
import { Api } from 'grammy';
import type { UserFromGetMe } from 'grammy/types';
import type { GreenhouseId } from '../../assistant/ports/store.ts';
import type { RoomAddress } from '../../assistant/use-cases/morning-round.ts';
import { AddressBook } from './arriving/address-book.ts';
import { Handler } from './arriving/handler.ts';
import { hookApp } from './arriving/hook-app.ts';
import { type HookServer, serveHook } from './arriving/hook-server.ts';
import { Intake } from './arriving/intake.ts';
import { PhotoKeeper } from './arriving/photo-keeper.ts';
import { Poller } from './arriving/poller.ts';
import { Reception } from './arriving/reception.ts';
import { channel } from './channel-name.ts';
import { type Claim, openClaims } from './claims.ts';
import { describeError, withoutToken } from './describe-error.ts';
import { plainFetch } from './plain-fetch.ts';
import { Pulse } from './pulse.ts';
import { wantedUpdates } from './reading/read-update.ts';
import { registerCommands } from './register-commands.ts';
import { Delivery } from './sending/delivery.ts';
import { failureOf } from './sending/failure.ts';
import { Lines } from './sending/lines.ts';
import { Pace } from './sending/pace.ts';
import { retryDelayMs } from './sending/retry-delay.ts';
import { Sender } from './sending/sender.ts';
import { WakeUp } from './sending/wake-up.ts';
import type { TelegramOptions, WebhookOptions } from './telegram-options.ts';

export { channel } from './channel-name.ts';
export type { TelegramOptions } from './telegram-options.ts';

/** Longer than the platform takes over a message, shorter than a lease on it. */
const callTimeoutS = 20;
const longestPollS = 300;
/** What a stop waits for a call or a request under way; after that its answer counts as lost. */
const stopGraceMs = 3500;
const pulseEveryMs = 60_000;

/** What is shown to whoever started the bot, once it is known by name. */
export interface TelegramReady {
  readonly username: string;
  readonly readsAllInGroups: boolean;
  readonly claims: readonly Claim[];
}

/** The channel as a whole: the parts of it, started and stopped in their order. */
export class Telegram {
  readonly #options: TelegramOptions;
  readonly #api: Api;
  readonly #pollApi: Api;
  readonly #setUpApi: Api;
  readonly #book: AddressBook;
  readonly #pace: Pace;
  readonly #pause = new WakeUp();
  readonly #stopping = new AbortController();
  #isStopping = false;
  #starting: Promise<void> | null = null;
  #sender: Sender | null = null;
  #handler: Handler | null = null;
  #photoKeeper: PhotoKeeper | null = null;
  #poller: Poller | null = null;
  #hook: HookServer | null = null;
  #pulseTimer: NodeJS.Timeout | null = null;

  constructor(given: TelegramOptions) {
    const { token, apiRoot } = given;
    const options: TelegramOptions = {
      ...given,
      report: (level, sentence) => {
        given.report(level, withoutToken(sentence, token));
      },
    };
    const client = {
      timeoutSeconds: callTimeoutS,
      fetch: plainFetch,
      ...(apiRoot === null ? {} : { apiRoot }),
    };
    this.#options = options;
    this.#api = new Api(token, client);
    // The poller watches over its requests itself: the platform holds them for half a minute.
    this.#pollApi = new Api(token, { ...client, timeoutSeconds: longestPollS });
    this.#setUpApi = new Api(token, client);
    for (const api of [this.#api, this.#setUpApi]) {
      api.config.use((call, method, payload, signal) =>
        call(method, payload, signal ?? (this.#stopping.signal as unknown as typeof signal)),
      );
    }
    this.#setUpApi.config.use(
      autoRetry({ maxRetryAttempts: 3, maxDelaySeconds: 30, rethrowHttpErrors: true }),
    );
    this.#book = new AddressBook(options.store.household, options.nowMs);
    this.#pace = new Pace(options.rates);
  }

  /** Goes on starting in the background, so that a platform out of reach holds nothing up. */
  async start(ready: (told: TelegramReady) => void): Promise<void> {
    await this.#book.refresh();
    this.#starting ??= this.#startUp(ready);
  }

  /** Whether a member is reached by this channel. */
  reaches(greenhouse: GreenhouseId, handle: string): boolean {
    return this.#book.accountFor(greenhouse, handle)?.canBeReached ?? false;
  }

  /** The groups of a greenhouse that get its round. */
  roomsOf(greenhouse: GreenhouseId): readonly RoomAddress[] {
    return this.#book.roomsOf(greenhouse).map(({ name }) => ({ name, channel }));
  }

  /** There may be something to send. */
  wake(): void {
    this.#sender?.wake();
  }

  /** Takes nothing in any more, ends what is being handled and sent, and leaves the rest stored. */
  async stop(): Promise<void> {
    this.#isStopping = true;
    this.#pause.call();
    const grace = setTimeout(() => {
      this.#stopping.abort();
    }, stopGraceMs);
    // Whoever stops while it is starting waits for that, and ends what it began.
    await this.#starting;
    if (this.#pulseTimer) clearInterval(this.#pulseTimer);
    const hookClosed = this.#hook?.close(this.#stopping.signal);
    await this.#poller?.stop();
    await this.#handler?.stop();
    await this.#photoKeeper?.stop();
    await this.#sender?.stop();
    await hookClosed;
    clearTimeout(grace);
  }

  async #startUp(ready: (told: TelegramReady) => void): Promise<void> {
    const me = await this.#meet();
    if (!me) return;
    const { options, parts } = this.#partsFor(me);
    const { intake, pulse, sender, handler, photoKeeper } = parts;
    const { webhook, store, report } = options;
    try {
      ready({
        username: me.username,
        readsAllInGroups: me.can_read_all_group_messages,
        claims: await openClaims(options),
      });
      // One process serves a bot: what another held in its hands died with it. Should that one live
      // behind a webhook after all, a message of its may go out twice, and never more often.
      await store.endLeases(channel);
      await intake.recover();
      handler.start();
      sender.start();
      await pulse.heard();
      if (webhook) await this.#serveHook(webhook, intake, pulse);
      else await this.#poll(intake, pulse);
      await registerCommands(this.#setUpApi);
      photoKeeper.start();
    } catch (error) {
      report('error', `Telegram could not be set up whole: ${describeError(error)}`);
    }
  }

  /** Asks who the bot is, until the platform answers; null: it will not, or the bot is stopping. */
  async #meet(): Promise<UserFromGetMe | null> {
    const { report } = this.#options;
    for (let attempts = 0; !this.#isStopping; attempts += 1) {
      try {
        return await this.#setUpApi.getMe();
      } catch (error) {
        if (failureOf(error)?.kind === 'unauthorised') {
          report('error', 'Telegram does not take the token: check TELEGRAM_TOKEN.');
          return null;
        }
        report('warn', `Telegram cannot be reached yet: ${describeError(error)}`);
        await this.#pause.sleep(retryDelayMs(Math.min(attempts, 5)));
      }
    }
    return null;
  }

  #partsFor(me: UserFromGetMe) {
    const options = this.#options;
    const book = this.#book;
    const lines = new Lines(options, this.#api, this.#pace);
    const delivery = new Delivery({
      options,
      api: this.#api,
      book,
      pace: this.#pace,
      username: me.username,
    });
    const sender = new Sender(options, delivery);
    const wakeSender = () => {
      sender.wake();
    };
    const photoKeeper = new PhotoKeeper(options, this.#api);
    const handler = new Handler(options, lines, sender, async ({ household, photos }) => {
      if (household) await book.refresh();
      if (photos) photoKeeper.wake();
      options.onHandled?.();
    });
    const reception = new Reception(options, book, lines, wakeSender);
    const self = {
      id: me.id,
      username: me.username,
      readsAll: me.can_read_all_group_messages,
    };
    const intake = new Intake({ options, book, handler, lines, reception, self, wakeSender });
    const pulse = new Pulse(options, wakeSender);
    this.#sender = sender;
    this.#handler = handler;
    this.#photoKeeper = photoKeeper;
    return { options, parts: { intake, pulse, sender, handler, photoKeeper } };
  }

  async #poll(intake: Intake, pulse: Pulse): Promise<void> {
    const { report } = this.#options;
    // A webhook of before would refuse every question; what waits there comes by polling then.
    await this.#setUpApi.deleteWebhook();
    if (this.#isStopping) return;
    this.#poller = new Poller({
      api: this.#pollApi,
      takeIn: (updates) => intake.takeIn(updates),
      answered: async (atMostMs) => this.#sender?.rested(atMostMs),
      heard: () => pulse.heard(),
      report,
    });
    this.#poller.start();
  }

  async #serveHook(
    { url, secret, host, port }: WebhookOptions,
    intake: Intake,
    pulse: Pulse,
  ): Promise<void> {
    const { report } = this.#options;
    const path = new URL(url).pathname;
    const app = hookApp({ path, secret, takeIn: (updates) => intake.takeIn(updates), report });
    this.#hook = await serveHook(app, host, port);
    await this.#setUpApi.setWebhook(url, {
      secret_token: secret,
      allowed_updates: [...wantedUpdates],
    });
    this.#pulseTimer = setInterval(() => {
      pulse.heard().catch((error: unknown) => {
        report('error', `The pulse could not be noted: ${describeError(error)}`);
      });
    }, pulseEveryMs);
  }
}
