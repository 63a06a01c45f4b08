import { boolean, index, pgTable, primaryKey, text, unique } from 'drizzle-orm/pg-core';
import type { Role } from '../../greenhouse/member.ts';
import { instantMs, plainText } from './column-types.ts';
import { ofGreenhouse } from './greenhouse-tables.ts';

/** Accounts of platforms, each speaking for one member of a greenhouse. */
export const accounts = pgTable(
  'accounts',
  {
    greenhouse: ofGreenhouse(),
    channel: plainText('channel').notNull(),
    handle: plainText('handle').notNull(),
    /** The platform's own id. */
    accountId: plainText('account_id').notNull(),
    isCurrent: boolean('is_current').notNull(),
    canBeReached: boolean('can_be_reached').notNull().default(true),
  },
  (table) => [
    primaryKey({ columns: [table.greenhouse, table.channel, table.handle] }),
    unique('account_once_a_greenhouse').on(table.greenhouse, table.channel, table.accountId),
    index('accounts_by_id').on(table.channel, table.accountId),
  ],
);

/** Groups of platforms. A group belongs to one greenhouse at a time. */
export const rooms = pgTable(
  'rooms',
  {
    channel: plainText('channel').notNull(),
    /** The platform's own id; it changes where a group is moved. */
    roomId: plainText('room_id').notNull(),
    greenhouse: ofGreenhouse(),
    /** What outgoing messages are addressed to. */
    name: plainText('name').notNull(),
    canBeReached: boolean('can_be_reached').notNull().default(true),
  },
  (table) => [
    primaryKey({ columns: [table.channel, table.roomId] }),
    unique('room_name_once').on(table.greenhouse, table.channel, table.name),
  ],
);

/** Invitations by the hash of their code, used once. */
export const invitations = pgTable('invitations', {
  codeHash: text('code_hash').primaryKey(),
  greenhouse: ofGreenhouse(),
  role: text('role').$type<Role>().notNull(),
  /** null: somebody new. */
  handle: plainText('handle'),
  /** null: the bot itself, for the grower who claims the greenhouse. */
  madeBy: plainText('made_by'),
  expiresAtMs: instantMs('expires_at_ms').notNull(),
  usedAtMs: instantMs('used_at_ms'),
});

/** People without a greenhouse here, so that each is told so once. */
export const strangers = pgTable(
  'strangers',
  {
    channel: plainText('channel').notNull(),
    accountId: plainText('account_id').notNull(),
    toldAtMs: instantMs('told_at_ms').notNull(),
  },
  (table) => [primaryKey({ columns: [table.channel, table.accountId] })],
);

/** When a channel last heard from its platform. */
export const channelPulses = pgTable('channel_pulses', {
  channel: plainText('channel').primaryKey(),
  heardAtMs: instantMs('heard_at_ms').notNull(),
});
