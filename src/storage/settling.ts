import { and, eq, sql } from 'drizzle-orm';
import type { OutgoingNo } from '../assistant/outgoing.ts';
import type { GreenhouseId, Settled } from '../assistant/ports/store.ts';
import { storable } from './schema/column-types.ts';
import type { Database } from './schema/database.ts';
import { outbox } from './schema/traffic-tables.ts';

export async function settle(
  database: Database,
  greenhouse: GreenhouseId,
  no: OutgoingNo,
  outcome: Settled,
): Promise<void> {
  if (outcome.kind === 'sent') {
    const { platformId, atMs } = outcome;
    await sentFor(database).execute({
      greenhouse,
      no,
      platformId: platformId === null ? null : storable(platformId),
      atMs,
    });
  } else {
    await database
      .update(outbox)
      .set(settledColumns(outcome))
      .where(
        and(eq(outbox.greenhouse, greenhouse), eq(outbox.no, no), eq(outbox.status, 'waiting')),
      );
  }
  if (outcome.kind === 'sent' && outcome.renews !== undefined) {
    await database
      .update(outbox)
      .set({ platformId: outcome.platformId })
      .where(and(eq(outbox.greenhouse, greenhouse), eq(outbox.no, outcome.renews)));
  }
}

/** A part that arrived was answered: what was in doubt before is so no more. */
export async function keepPartsSent(
  database: Database,
  greenhouse: GreenhouseId,
  no: OutgoingNo,
  partsSent: number,
): Promise<void> {
  await database
    .update(outbox)
    .set({ partsSent, unanswered: 0 })
    .where(and(eq(outbox.greenhouse, greenhouse), eq(outbox.no, no), eq(outbox.status, 'waiting')));
}

function settledColumns(outcome: Exclude<Settled, { readonly kind: 'sent' }>) {
  switch (outcome.kind) {
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

const statements = new WeakMap<Database, ReturnType<typeof prepareSent>>();

/** Worded once, since it goes through a database for every single message. */
function sentFor(database: Database): ReturnType<typeof prepareSent> {
  const known = statements.get(database);
  if (known) return known;
  const made = prepareSent(database);
  statements.set(database, made);
  return made;
}

function prepareSent(database: Database) {
  return database
    .update(outbox)
    .set({
      status: sql`'sent'`,
      platformId: sql`${sql.placeholder('platformId')}`,
      settledAtMs: sql`${sql.placeholder('atMs')}`,
    })
    .where(
      and(
        eq(outbox.greenhouse, sql.placeholder('greenhouse')),
        eq(outbox.no, sql.placeholder('no')),
        eq(outbox.status, sql`'waiting'`),
      ),
    )
    .prepare('settle_sent');
}
