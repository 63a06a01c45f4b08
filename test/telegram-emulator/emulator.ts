import { LongPoll } from './delivery/long-poll.ts';
import { WebhookDelivery } from './delivery/webhook-delivery.ts';
import { serveApi } from './http/api-server.ts';
import { carryOut } from './http/carry-out.ts';
import { RequestParameters } from './http/request-parameters.ts';
import { World } from './members/world.ts';
import { CallLog } from './state/call-log.ts';
import { CallbackQueries } from './state/callback-queries.ts';
import { Clock } from './state/clock.ts';
import { CommandMenus } from './state/command-menu.ts';
import { eventually } from './state/eventually.ts';
import { FaultPlan } from './state/fault-plan.ts';
import { FileCabinet } from './state/file-cabinet.ts';
import { FloodLimits } from './state/flood-limits.ts';
import { type Pace, testPace } from './state/pace.ts';
import type { Platform } from './state/platform.ts';
import { UpdateQueue } from './state/update-queue.ts';

/** How the emulated platform is to be. */
export type EmulatorOptions = {
  /** Any free port if left out. */
  readonly port?: number;
  readonly botName?: string;
  readonly botUsername?: string;
  /** Privacy mode of the bot; on if left out, as on the platform. */
  readonly privacy?: boolean;
  /** Whether a bare mention passes privacy mode; yes if left out. */
  readonly mentionsPassPrivacy?: boolean;
  readonly pace?: Partial<Pace>;
};

/** A running emulator and a test's grip on it. */
export type Emulator = {
  /** The root of the Bot API, for a client's `apiRoot`. */
  readonly url: string;
  readonly token: string;
  readonly username: string;
  readonly world: World;
  readonly calls: CallLog;
  readonly faults: FaultPlan;
  readonly pace: Pace;
  readonly webhook: WebhookDelivery;
  /** Whether too many messages are refused; not so at first. */
  readonly limitFlood: (on: boolean) => void;
  /** How many updates the bot has not confirmed. */
  readonly pendingCount: () => number;
  /** Waits until the bot has confirmed every update. Rejects after `timeoutMs`. */
  readonly drained: (timeoutMs?: number) => Promise<void>;
  readonly stop: () => Promise<void>;
};

/** Ids and tokens are made up; the token has the form of a real one. */
const BOT_ID = 7_000_000_001;
const TOKEN = `${BOT_ID}:AAEmulatedTokenOfNoRealBot_0123456789`;

/** Starts an emulated platform with one bot and nobody else. */
export const startEmulator = async (options: EmulatorOptions = {}): Promise<Emulator> => {
  const username = options.botUsername ?? 'emulated_test_bot';
  const clock = new Clock();
  const pace: Pace = { ...testPace(), ...options.pace };
  const updates = new UpdateQueue(clock);
  const platform: Platform = {
    bot: {
      token: TOKEN,
      user: {
        id: BOT_ID,
        is_bot: true,
        first_name: options.botName ?? 'Emulated bot',
        username,
      },
      privacy: options.privacy ?? true,
    },
    clock,
    pace,
    people: new Map(),
    rooms: new Map(),
    files: new FileCabinet(),
    updates,
    callbacks: new CallbackQueries(clock, pace),
    menus: new CommandMenus(),
    calls: new CallLog(),
    faults: new FaultPlan(),
    flood: new FloodLimits(clock),
    longPoll: new LongPoll(updates),
    webhook: new WebhookDelivery(updates, clock, pace),
    mentionsPassPrivacy: options.mentionsPassPrivacy ?? true,
    lastMessageId: 0,
  };
  platform.webhook.onReply = (body) => {
    carryOutReply(platform, body);
  };
  const server = await serveApi(platform, options.port ?? 0);
  return {
    url: server.url,
    token: TOKEN,
    username,
    world: new World(platform),
    calls: platform.calls,
    faults: platform.faults,
    pace,
    webhook: platform.webhook,
    limitFlood: (on) => {
      platform.flood.enabled = on;
    },
    pendingCount: () => updates.pending().length,
    drained: (timeoutMs = 10_000) => untilDrained(updates, timeoutMs),
    stop: () => {
      platform.webhook.set(undefined);
      return server.stop();
    },
  };
};

/** A webhook may answer with a method to call; its result goes nowhere. */
const carryOutReply = (platform: Platform, body: string): void => {
  if (!body.startsWith('{')) return;
  const { method, ...values } = JSON.parse(body) as Record<string, unknown>;
  if (typeof method !== 'string') return;
  const parameters = new RequestParameters(new Map(Object.entries(values)));
  void carryOut(platform, method, parameters, new AbortController().signal);
};

const untilDrained = async (updates: UpdateQueue, timeoutMs: number): Promise<void> => {
  const changes = new Set<() => void>();
  const stopListening = updates.listen(() => {
    for (const listener of [...changes]) listener();
  });
  try {
    await eventually(
      () => (updates.pending().length === 0 ? true : undefined),
      changes,
      timeoutMs,
      () => `${updates.pending().length} updates are not confirmed`,
    );
  } finally {
    stopListening();
  }
};
