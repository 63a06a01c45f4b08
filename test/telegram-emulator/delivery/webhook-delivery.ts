import type { Clock } from '../state/clock.ts';
import type { Pace } from '../state/pace.ts';
import type { PendingUpdate, UpdateQueue } from '../state/update-queue.ts';
import { retryDelayS } from './retry-delay.ts';
import { postUpdate, type WebhookReply } from './webhook-request.ts';

/** What `setWebhook` was told. */
export type WebhookSettings = {
  readonly url: string;
  readonly secret: string | undefined;
  readonly maxConnections: number;
};

type Lane = { busy: boolean; failures: number; timer: NodeJS.Timeout | undefined };

/**
 * Brings the waiting updates to the webhook. A chat is a lane: its updates go one after the other, and while
 * one fails those behind it wait. A lane is idle, busy (a request is under way) or resting (a timer is set).
 */
export class WebhookDelivery {
  readonly #updates: UpdateQueue;
  readonly #clock: Clock;
  readonly #pace: Pace;
  readonly #lanes = new Map<number, Lane>();
  /** Carries out a method that the bot has put into its answer. */
  onReply: (body: string) => void = () => undefined;
  #settings: WebhookSettings | undefined;
  #stop = new AbortController();
  #underWay = 0;
  #answersToLose = 0;
  lastError: { readonly atS: number; readonly message: string } | undefined;

  constructor(updates: UpdateQueue, clock: Clock, pace: Pace) {
    this.#updates = updates;
    this.#clock = clock;
    this.#pace = pace;
    updates.listen(() => {
      this.#pump();
    });
  }

  get settings(): WebhookSettings | undefined {
    return this.#settings;
  }

  set(settings: WebhookSettings | undefined): void {
    this.#stop.abort();
    this.#stop = new AbortController();
    for (const lane of this.#lanes.values()) clearTimeout(lane.timer);
    this.#lanes.clear();
    this.#underWay = 0;
    this.#settings = settings;
    this.lastError = undefined;
    this.#pump();
  }

  /** The bot's next answers get lost on their way, so that updates it took come again. */
  loseNextAnswers(count = 1): void {
    this.#answersToLose += count;
  }

  #pump(): void {
    const settings = this.#settings;
    if (settings === undefined) return;
    for (const update of this.#updates.pending()) {
      if (this.#underWay >= settings.maxConnections) return;
      const lane = this.#laneOf(update);
      if (!lane.busy && lane.timer === undefined) void this.#send(settings, lane, update);
    }
  }

  #laneOf(update: PendingUpdate): Lane {
    const known = this.#lanes.get(update.chatId);
    if (known !== undefined) return known;
    const lane: Lane = { busy: false, failures: 0, timer: undefined };
    this.#lanes.set(update.chatId, lane);
    return lane;
  }

  async #send(settings: WebhookSettings, lane: Lane, update: PendingUpdate): Promise<void> {
    const stop = this.#stop.signal;
    lane.busy = true;
    this.#underWay += 1;
    const patience = AbortSignal.any([stop, AbortSignal.timeout(this.#pace.webhookTimeoutMs)]);
    const reply = this.#orLost(
      await postUpdate(settings.url, settings.secret, update.wire, patience),
    );
    if (stop.aborted) return;
    lane.busy = false;
    this.#underWay -= 1;
    if (reply.kind === 'taken') {
      lane.failures = 0;
      this.#updates.drop(update.wire.update_id);
      this.onReply(reply.body);
    } else {
      this.lastError = { atS: this.#clock.nowS(), message: reply.reason };
      this.#rest(lane, reply.retryAfterS);
    }
    this.#pump();
  }

  #orLost(reply: WebhookReply): WebhookReply {
    if (reply.kind === 'failed' || this.#answersToLose === 0) return reply;
    this.#answersToLose -= 1;
    return { kind: 'failed', reason: 'Connection reset by peer', retryAfterS: 0 };
  }

  #rest(lane: Lane, retryAfterS: number): void {
    lane.failures += 1;
    const waitS = retryAfterS > 0 ? retryAfterS : retryDelayS(lane.failures);
    lane.timer = setTimeout(
      () => {
        lane.timer = undefined;
        this.#pump();
      },
      waitS * 1000 * this.#pace.webhookRetryFactor,
    );
  }
}
