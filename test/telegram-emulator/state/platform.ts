import type { LongPoll } from '../delivery/long-poll.ts';
import type { WebhookDelivery } from '../delivery/webhook-delivery.ts';
import type { BotAccount } from './bot-account.ts';
import type { CallLog } from './call-log.ts';
import type { CallbackQueries } from './callback-queries.ts';
import type { Clock } from './clock.ts';
import type { CommandMenus } from './command-menu.ts';
import type { FaultPlan } from './fault-plan.ts';
import type { FileCabinet } from './file-cabinet.ts';
import type { FloodLimits } from './flood-limits.ts';
import type { Pace } from './pace.ts';
import type { Person } from './person.ts';
import type { Room } from './room.ts';
import type { UpdateQueue } from './update-queue.ts';

/** Everything there is on the emulated platform. */
export type Platform = {
  readonly bot: BotAccount;
  readonly clock: Clock;
  readonly pace: Pace;
  readonly people: Map<number, Person>;
  readonly rooms: Map<number, Room>;
  readonly files: FileCabinet;
  readonly updates: UpdateQueue;
  readonly callbacks: CallbackQueries;
  readonly menus: CommandMenus;
  readonly calls: CallLog;
  readonly faults: FaultPlan;
  readonly flood: FloodLimits;
  readonly longPoll: LongPoll;
  readonly webhook: WebhookDelivery;
  /** Whether a bare mention of the bot passes privacy mode; the platform's own texts disagree. */
  mentionsPassPrivacy: boolean;
  /** The account's counter, shared by private chats and basic groups. */
  lastMessageId: number;
};
