import { sql } from 'drizzle-orm';
import {
  bigint,
  boolean,
  date,
  index,
  integer,
  pgTable,
  primaryKey,
  text,
  unique,
} from 'drizzle-orm/pg-core';
import type { Conversation } from '../../assistant/conversation.ts';
import type { Outgoing, OutgoingNo } from '../../assistant/outgoing.ts';
import type { InboxNo } from '../../assistant/ports/store.ts';
import type { Duty } from '../../greenhouse/duty.ts';
import type { LocalDate } from '../../greenhouse/local-time.ts';
import { document, instantMs, plainText } from './column-types.ts';
import { ofGreenhouse } from './greenhouse-tables.ts';
import { writtenAtRevision } from './logbook-tables.ts';

export const inbox = pgTable(
  'inbox',
  {
    no: bigint('no', { mode: 'number' }).$type<InboxNo>().primaryKey().generatedAlwaysAsIdentity(),
    greenhouse: ofGreenhouse(),
    channel: plainText('channel').notNull(),
    /** null: the platform has none. */
    platformId: plainText('platform_id'),
    receivedAtMs: instantMs('received_at_ms').notNull(),
    writtenAtMs: instantMs('written_at_ms').notNull(),
    chat: plainText('chat').notNull(),
    /** null is JSON's own null: drizzle hands that on as the column's. */
    body: document('body'),
    /** The greenhouse's clock when it was handled, with all that it caused. */
    handledAtMs: instantMs('handled_at_ms'),
  },
  (table) => [
    unique('inbox_once').on(table.greenhouse, table.channel, table.platformId),
    index('inbox_of_chat').on(table.greenhouse, table.channel, table.chat, table.no),
    index('inbox_unhandled').on(table.channel, table.no).where(sql`${table.handledAtMs} is null`),
  ],
);

/** waiting → sent or given up; a retry waits on, until a later time. */
export type OutboxStatus = 'waiting' | 'sent' | 'given-up';

export const outbox = pgTable(
  'outbox',
  {
    greenhouse: ofGreenhouse(),
    no: bigint('no', { mode: 'number' }).$type<OutgoingNo>().notNull(),
    atMs: instantMs('at_ms').notNull(),
    channel: plainText('channel').notNull(),
    to: plainText('to').notNull(),
    inReplyTo: plainText('in_reply_to'),
    kind: text('kind').$type<Outgoing['reply']['kind']>().notNull(),
    reply: document('reply').$type<Outgoing['reply']>().notNull(),
    buttons: document('buttons').$type<Outgoing['buttons']>().notNull(),
    /** The earlier message whose place it takes. */
    edits: bigint('edits', { mode: 'number' }).$type<OutgoingNo>(),
    inPassing: boolean('in_passing').notNull().default(false),
    status: text('status').$type<OutboxStatus>().notNull().default('waiting'),
    attempts: integer('attempts').notNull().default(0),
    /** Those that ended without the platform's answer. */
    unanswered: integer('unanswered').notNull().default(0),
    notBeforeMs: instantMs('not_before_ms').notNull(),
    /** Until then it is in the hands of a process that sends it. */
    leasedUntilMs: instantMs('leased_until_ms').notNull().default(0),
    /** How many parts of a long message the platform has, while the rest waits. */
    partsSent: integer('parts_sent').notNull().default(0),
    /** The platform's id of the message, or of its last part so far, once sent. */
    platformId: plainText('platform_id'),
    settledAtMs: instantMs('settled_at_ms'),
    /** Why it was put off or given up. */
    because: plainText('because'),
  },
  (table) => [
    primaryKey({ columns: [table.greenhouse, table.no] }),
    index('outbox_waiting')
      .on(table.channel, table.greenhouse, table.to, table.no)
      .where(sql`${table.status} = 'waiting'`),
    index('outbox_latest').on(table.greenhouse, table.to, table.no),
    index('outbox_latest_of_kind').on(table.greenhouse, table.to, table.kind, table.no),
    index('outbox_by_platform_id').on(table.greenhouse, table.to, table.platformId),
    index('outbox_latest_of_channel').on(table.greenhouse, table.channel, table.to, table.no),
  ],
);

/** One row a local morning: the round goes out once. */
export const mornings = pgTable(
  'mornings',
  {
    greenhouse: ofGreenhouse(),
    date: date('date').$type<LocalDate>().notNull(),
    sentAtMs: instantMs('sent_at_ms').notNull(),
    revision: writtenAtRevision(),
    duties: document('duties').$type<readonly Duty[]>().notNull(),
    outgoing: document('outgoing').$type<readonly OutgoingNo[]>().notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.greenhouse, table.date] }),
    index('mornings_by_revision').on(table.greenhouse, table.revision),
  ],
);

export const conversations = pgTable(
  'conversations',
  {
    greenhouse: ofGreenhouse(),
    handle: plainText('handle').notNull(),
    state: document('state').$type<Conversation>().notNull(),
  },
  (table) => [primaryKey({ columns: [table.greenhouse, table.handle] })],
);

/** Keys of what is said once. */
export const notices = pgTable(
  'notices',
  {
    greenhouse: ofGreenhouse(),
    key: plainText('key').notNull(),
    atMs: instantMs('at_ms').notNull(),
  },
  (table) => [primaryKey({ columns: [table.greenhouse, table.key] })],
);
