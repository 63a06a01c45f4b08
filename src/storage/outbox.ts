import { and, asc, eq, getTableColumns, gt, lte, notExists, sql } from 'drizzle-orm';
import { alias } from 'drizzle-orm/pg-core';
import type { OutgoingNo } from '../assistant/outgoing.ts';
import type {
  ChannelName,
  GreenhouseId,
  PendingOutgoing,
  Settled,
} from '../assistant/ports/store.ts';
import { outgoingOf } from './outgoing-messages.ts';
import type { Database } from './schema/database.ts';
import { outbox } from './schema/traffic-tables.ts';

/**
 * The states of an outgoing message: `waiting`, and leased to a process while that sends it; then
 * `sent` or `given-up`. A retry makes it wait until a later time, and all of its chat behind it.
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
  const earlier = alias(outbox, 'earlier');
  const due = database.$with('due').as(
    database
      .select({ greenhouse: outbox.greenhouse, no: outbox.no })
      .from(outbox)
      .where(
        and(
          eq(outbox.status, sql`'waiting'`),
          eq(outbox.channel, channel),
          lte(outbox.notBeforeMs, nowMs),
          lte(outbox.leasedUntilMs, nowMs),
          notExists(
            database
              .select({ one: sql`1` })
              .from(earlier)
              .where(
                and(
                  eq(earlier.status, sql`'waiting'`),
                  eq(earlier.channel, outbox.channel),
                  eq(earlier.greenhouse, outbox.greenhouse),
                  eq(earlier.to, outbox.to),
                  sql`${earlier.no} < ${outbox.no}`,
                ),
              ),
          ),
        ),
      )
      .orderBy(asc(outbox.greenhouse), asc(outbox.no))
      .limit(most)
      .for('update', { skipLocked: true }),
  );
  const rows = await database
    .with(due)
    .update(outbox)
    .set({
      leasedUntilMs: nowMs + leaseMs,
      attempts: sql`${outbox.attempts} + 1`,
      // A lease still on it ended with its process, before the platform's answer.
      unanswered: sql`${outbox.unanswered} + (${outbox.leasedUntilMs} > 0)::integer`,
    })
    .where(sql`(${outbox.greenhouse}, ${outbox.no}) in (select "greenhouse", "no" from ${due})`)
    .returning({ ...getTableColumns(outbox), editsPlatformId: platformIdOfEdited });
  return rows
    .toSorted((one, other) => one.greenhouse - other.greenhouse || one.no - other.no)
    .map((row) => ({
      greenhouse: row.greenhouse as GreenhouseId,
      outgoing: outgoingOf(row),
      attempts: row.attempts - 1,
      unanswered: row.unanswered,
      editsPlatformId: row.editsPlatformId,
    }));
}

/**
 * What the platform calls the message that a row takes the place of. The names are written out,
 * since drizzle leaves the table's off in what an update returns.
 */
const platformIdOfEdited = sql<string | null>`(
  select "edited"."platform_id" from "outbox" "edited"
  where "edited"."greenhouse" = "outbox"."greenhouse" and "edited"."no" = "outbox"."edits"
)`;

export async function settle(
  database: Database,
  greenhouse: GreenhouseId,
  no: OutgoingNo,
  outcome: Settled,
): Promise<void> {
  await database
    .update(outbox)
    .set(settledColumns(outcome))
    .where(and(eq(outbox.greenhouse, greenhouse), eq(outbox.no, no), eq(outbox.status, 'waiting')));
  if (outcome.kind === 'sent' && outcome.renews !== undefined) {
    await database
      .update(outbox)
      .set({ platformId: outcome.platformId })
      .where(and(eq(outbox.greenhouse, greenhouse), eq(outbox.no, outcome.renews)));
  }
}

function settledColumns(outcome: Settled) {
  switch (outcome.kind) {
    case 'sent':
      return { status: 'sent', platformId: outcome.platformId, settledAtMs: outcome.atMs } as const;
    case 'retry': {
      const unanswered = outcome.isUnanswered === true ? 1 : 0;
      return {
        notBeforeMs: outcome.notBeforeMs,
        leasedUntilMs: 0,
        because: outcome.because,
        unanswered: sql`${outbox.unanswered} + ${unanswered}`,
      };
    }
    case 'given-up':
      return { status: 'given-up', settledAtMs: outcome.atMs, because: outcome.because } as const;
  }
}

/**
 * Takes back what a process that is surely gone held in its hands: of one channel, or of all.
 * Whether the platform has it, nobody knows.
 */
export async function endLeases(database: Database, channel?: ChannelName): Promise<void> {
  await database
    .update(outbox)
    .set({ leasedUntilMs: 0, unanswered: sql`${outbox.unanswered} + 1` })
    .where(
      and(
        eq(outbox.status, sql`'waiting'`),
        gt(outbox.leasedUntilMs, 0),
        channel === undefined ? undefined : eq(outbox.channel, channel),
      ),
    );
}
