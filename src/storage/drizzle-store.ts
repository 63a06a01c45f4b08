import { asc } from 'drizzle-orm';
import type { GreenhouseId, Store } from '../assistant/ports/store.ts';
import { insertGreenhouse, selectGreenhouse } from './greenhouse-set-up.ts';
import { selectHistory } from './history.ts';
import { markHandled, receive, selectUnhandled } from './inbox.ts';
import { ledgerOf, lockStanding, readStanding } from './ledger.ts';
import { leasePending, settle } from './outbox.ts';
import type { Database } from './schema/database.ts';
import { greenhouses } from './schema/greenhouse-tables.ts';
import { writeHandling } from './write-handling.ts';

/** How long a message may be in the hands of the process that sends it. */
export const defaultLeaseMs = 60_000;

export interface StoreParts {
  readonly database: Database;
  readonly leaseMs: number;
  /** Called after each transaction that wrote. */
  readonly afterWriting?: () => Promise<void>;
  readonly close: () => Promise<void>;
}

/**
 * The store on either driver. Within a transaction nothing but its own handle may be used: the
 * embedded database has one session, and would wait for itself.
 */
export function drizzleStore({ database, leaseMs, afterWriting, close }: StoreParts): Store {
  return {
    greenhouses: async () => {
      const rows = await database
        .select({ id: greenhouses.id, name: greenhouses.name })
        .from(greenhouses)
        .orderBy(asc(greenhouses.id));
      return rows.map(({ id, name }) => ({ id: id as GreenhouseId, name }));
    },
    createGreenhouse: (greenhouse, atMs) =>
      database.transaction((transaction) => insertGreenhouse(transaction, greenhouse, atMs)),
    loadGreenhouse: (id) =>
      database.transaction((transaction) => selectGreenhouse(transaction, id), readOnly),
    receive: (raw) => receive(database, raw),
    unhandled: (channel) => selectUnhandled(database, channel),
    transact: async (id, inboxNo, work) => {
      const result = await database.transaction(async (transaction) => {
        const standing = await lockStanding(transaction, id, inboxNo);
        if (standing.isHandled) return null;
        const { counters } = standing;
        const done = await work(ledgerOf(transaction, id, standing));
        await writeHandling(transaction, id, counters, done.writes);
        if (inboxNo !== null) await markHandled(transaction, inboxNo, done.writes.clockMs);
        return done.result;
      });
      await afterWriting?.();
      return result;
    },
    read: (id, work) =>
      database.transaction(async (transaction) => {
        const standing = await readStanding(transaction, id);
        return work(ledgerOf(transaction, id, standing));
      }, readOnly),
    pending: (channel, nowMs, most) => leasePending(database, channel, nowMs, most, leaseMs),
    settle: (greenhouse, no, outcome) => settle(database, greenhouse, no, outcome),
    history: (greenhouse, channel, chat, most) =>
      selectHistory(database, greenhouse, channel, chat, most),
    close,
  };
}

/** Every statement sees the same moment. */
const readOnly = { isolationLevel: 'repeatable read', accessMode: 'read only' } as const;
