import { and, eq, getTableColumns, gt, inArray, isNull, lte, type SQL, sql } from 'drizzle-orm';
import type { OutgoingNo } from '../assistant/outgoing.ts';
import type { ChannelName, GreenhouseId, PendingOutgoing } from '../assistant/ports/store.ts';
import { outgoingOf } from './outgoing-messages.ts';
import type { Database } from './schema/database.ts';
import { outbox } from './schema/traffic-tables.ts';

/**
 * The states of an outgoing message: `waiting`, and leased to a process while that sends it; then
 * `sent` or `given-up`. A retry makes it wait until a later time, and all of its chat behind it.
 * What is leased singly counts as tried from then on. What is leased together, as it is written, is
 * sent in its order, each when the one before is settled, so that one of them is under way at a time.
 */

/**
 * Leases the first waiting message of each chat, where it is due and in nobody's hands. A message
 * leased and not settled comes again when its lease is over: its process is taken for dead.
 */
export async function leasePending(
  database: Database,
  channel: ChannelName,
  nowMs: number,
  most: number,
  leaseMs: number,
): Promise<readonly PendingOutgoing[]> {
  const { anyWaiting, lease } = statementsFor(database);
  // Most often nothing does, and that is told in a tenth of the time.
  if ((await anyWaiting.execute({ channel })).length === 0) return [];
  const rows = await lease.execute({ channel, nowMs, most, untilMs: nowMs + leaseMs });
  return rows
    .toSorted((one, other) => one.greenhouse - other.greenhouse || one.no - other.no)
    .map((row) => ({
      greenhouse: row.greenhouse as GreenhouseId,
      outgoing: outgoingOf(row),
      attempts: row.attempts - 1,
      unanswered: row.unanswered,
      partsSent: row.partsSent,
      editsPlatformId: row.editsPlatformId,
    }));
}

/**
 * Leases one message that nobody has tried yet, where it is due and no other of its chat waits
 * before it. False: it is not, or is in other hands, and comes by `leasePending` when its turn is.
 */
export async function leaseOne(
  database: Database,
  greenhouse: GreenhouseId,
  no: OutgoingNo,
  nowMs: number,
  leaseMs: number,
): Promise<boolean> {
  const { leaseOne } = statementsFor(database);
  const rows = await leaseOne.execute({ greenhouse, no, nowMs, untilMs: nowMs + leaseMs });
  return rows.length > 0;
}

/** What goes through a database for every single message: worded once, since wording takes longer. */
interface Statements {
  readonly anyWaiting: ReturnType<typeof prepareAnyWaiting>;
  readonly leaseOne: ReturnType<typeof prepareLeaseOne>;
  readonly lease: ReturnType<typeof prepareLease>;
}

const statements = new WeakMap<Database, Statements>();

function statementsFor(database: Database): Statements {
  const known = statements.get(database);
  if (known) return known;
  const made = {
    anyWaiting: prepareAnyWaiting(database),
    leaseOne: prepareLeaseOne(database),
    lease: prepareLease(database),
  };
  statements.set(database, made);
  return made;
}

function prepareAnyWaiting(database: Database) {
  return database
    .select({ no: outbox.no })
    .from(outbox)
    .where(and(eq(outbox.status, sql`'waiting'`), eq(outbox.channel, sql.placeholder('channel'))))
    .limit(1)
    .prepare('any_waiting');
}

const isLeaseOver = sql`(${outbox.leasedUntilMs} > 0)`;

function prepareLease(database: Database) {
  return database
    .update(outbox)
    .set({
      leasedUntilMs: sql`${sql.placeholder('untilMs')}`,
      attempts: sql`greatest(${outbox.attempts}, ${isLeaseOver}::integer) + 1`,
      // A lease still on it ended with its process, before the platform's answer.
      unanswered: sql`${outbox.unanswered} + ${isLeaseOver}::integer`,
    })
    .where(sql`(${outbox.greenhouse}, ${outbox.no}) in (${dueNow})`)
    .returning({ ...getTableColumns(outbox), editsPlatformId: platformIdOfEdited })
    .prepare('lease_outgoing');
}

function prepareLeaseOne(database: Database) {
  return database
    .update(outbox)
    .set({ leasedUntilMs: sql`${sql.placeholder('untilMs')}`, attempts: sql`1` })
    .where(
      and(
        eq(outbox.greenhouse, sql.placeholder('greenhouse')),
        eq(outbox.no, sql.placeholder('no')),
        eq(outbox.status, sql`'waiting'`),
        eq(outbox.attempts, sql`0`),
        isNull(outbox.edits),
        lte(outbox.notBeforeMs, sql.placeholder('nowMs')),
        lte(outbox.leasedUntilMs, sql.placeholder('nowMs')),
        sql`not exists (${waitingInChatOf(sql`"outbox"`)} and "waiting"."no" < "outbox"."no")`,
      ),
    )
    .returning({ no: outbox.no })
    .prepare('lease_one_outgoing');
}

/** What waits in the chat for which a row of the outbox is, whether it is due or not. */
export function waitingInChatOf(row: SQL): SQL {
  return sql`
    select from "outbox" "waiting"
    where "waiting"."status" = 'waiting' and "waiting"."channel" = ${row}."channel"
      and "waiting"."greenhouse" = ${row}."greenhouse" and "waiting"."to" = ${row}."to"`;
}

const waiting = sql`"status" = 'waiting' and "channel" = ${sql.placeholder('channel')}`;
const now = sql.placeholder('nowMs');

/**
 * Up to `most` first messages of their chats, due and in nobody's hands, locked; the longest due
 * first. From one chat the index is stepped to the next, so that it takes as long as there are
 * chats, however many messages wait behind.
 */
const dueNow = sql`
  with recursive "first" as (
    (
      select "greenhouse", "to", "no", "not_before_ms", "leased_until_ms" from "outbox"
      where ${waiting} order by "greenhouse", "to", "no" limit 1
    )
    union all
    select "next".* from "first" cross join lateral (
      select "greenhouse", "to", "no", "not_before_ms", "leased_until_ms" from "outbox"
      where ${waiting} and ("greenhouse", "to") > ("first"."greenhouse", "first"."to")
      order by "greenhouse", "to", "no" limit 1
    ) "next"
  )
  select "greenhouse", "no" from "outbox"
  where ${waiting} and "leased_until_ms" <= ${now} and ("greenhouse", "no") in (
    select "greenhouse", "no" from "first"
    where "not_before_ms" <= ${now} and "leased_until_ms" <= ${now}
    order by "not_before_ms", "greenhouse", "no" limit ${sql.placeholder('most')}
  )
  for update skip locked`;

/**
 * What the platform calls the message that a row takes the place of. The names are written out,
 * since drizzle leaves the table's off in what an update returns.
 */
const platformIdOfEdited = sql<string | null>`(
  select "edited"."platform_id" from "outbox" "edited"
  where "edited"."greenhouse" = "outbox"."greenhouse" and "edited"."no" = "outbox"."edits"
)`;

/** What was leased and not tried waits on, as if nobody had taken it up. */
export async function giveBack(
  database: Database,
  greenhouse: GreenhouseId,
  nos: readonly OutgoingNo[],
): Promise<void> {
  await database
    .update(outbox)
    .set({ leasedUntilMs: 0 })
    .where(
      and(
        eq(outbox.greenhouse, greenhouse),
        inArray(outbox.no, [...nos]),
        eq(outbox.status, 'waiting'),
      ),
    );
}

/**
 * Whether a leased message may have gone out: surely not one that was leased together with others and
 * still had one before it. The names are written out, since drizzle leaves the table's off.
 */
const mayBeOut = sql`("outbox"."attempts" > 0 or not exists (
  select from "outbox" "before"
  where "before"."status" = 'waiting' and "before"."channel" = "outbox"."channel"
    and "before"."greenhouse" = "outbox"."greenhouse" and "before"."no" < "outbox"."no"
    and "before"."leased_until_ms" = "outbox"."leased_until_ms"
))`;

/**
 * Takes back what a process that is surely gone held in its hands: of one channel, or of all.
 * Whether the platform has it, nobody knows; of what was leased together it can have the first only.
 */
export async function endLeases(database: Database, channel?: ChannelName): Promise<void> {
  await database
    .update(outbox)
    .set({
      leasedUntilMs: 0,
      attempts: sql`greatest(${outbox.attempts}, ${mayBeOut}::integer)`,
      unanswered: sql`${outbox.unanswered} + ${mayBeOut}::integer`,
    })
    .where(
      and(
        eq(outbox.status, sql`'waiting'`),
        gt(outbox.leasedUntilMs, 0),
        channel === undefined ? undefined : eq(outbox.channel, channel),
      ),
    );
}
