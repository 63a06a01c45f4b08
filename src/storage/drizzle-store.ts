import { asc } from 'drizzle-orm';
import type { GreenhouseId, InboxNo, Ledger, Store, Writes } from '../assistant/ports/store.ts';
import { insertGreenhouse, selectGreenhouse } from './greenhouse-set-up.ts';
import { selectHistory } from './history.ts';
import { householdStore } from './household.ts';
import { receive, receiveAll, selectUnhandled } from './inbox.ts';
import { endLeases, giveBack, leaseOne, leasePending } from './leases.ts';
import {
  type LockedRow,
  ledgerOf,
  lockRow,
  lockRowAndInbox,
  lookingLedger,
  readRow,
} from './ledger.ts';
import { photoStore } from './photos.ts';
import type { Database } from './schema/database.ts';
import { greenhouses } from './schema/greenhouse-tables.ts';
import { keepPartsSent, settle } from './settling.ts';
import { writeAtOnce } from './write-at-once.ts';
import { writeHandling } from './write-handling.ts';

/** How long a message may be in the hands of the process that sends it. */
export const defaultLeaseMs = 60_000;

export interface StoreParts {
  readonly database: Database;
  /** What the outbox is sent through, where not by the same. */
  readonly sending?: Database;
  readonly leaseMs: number;
  /**
   * Resolves when what was asked of `sending` last will be done even if this process dies; left out:
   * that is so only when it is done.
   */
  readonly handedOn?: () => Promise<void>;
  /** Called after each transaction that wrote. */
  readonly afterWriting?: () => Promise<void>;
  readonly close: () => Promise<void>;
}

/**
 * The store on either driver. Within a transaction nothing but its own handle may be used: the
 * embedded database has one session, and would wait for itself.
 */
export function drizzleStore(parts: StoreParts): Store {
  const { database, sending = database, leaseMs, handedOn, afterWriting, close } = parts;
  return {
    household: householdStore(database),
    photos: photoStore(database),
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
    receiveAll: (raws) => receiveAll(database, raws),
    unhandled: (channel) => selectUnhandled(database, channel),
    transact: async (id, inboxNo, work) => {
      const result = await database.transaction(async (transaction) => {
        if (inboxNo === null) return handle(transaction, id, await lockRow(transaction, id), work);
        const { row, open } = await lockRowAndInbox(transaction, id, [inboxNo]);
        if (open.size === 0) return null;
        return handle(transaction, id, row, work, open);
      });
      await afterWriting?.();
      return result;
    },
    transactAll: async (id, inboxNos, work) => {
      if (inboxNos.length === 0) return null;
      const result = await database.transaction(async (transaction) => {
        const { row, open } = await lockRowAndInbox(transaction, id, inboxNos);
        if (open.size === 0) return null;
        return handle(transaction, id, row, (ledger) => work(ledger, open), open);
      });
      await afterWriting?.();
      return result;
    },
    receiveAndTransact: async (id, raws, work) => {
      const result = await database.transaction(async (transaction) => {
        // Sent together: the lock is taken before anything is stored.
        const [row, received] = await Promise.all([
          lockRow(transaction, id),
          receiveAll(transaction, raws),
        ]);
        const open = new Set(received.filter(({ isNew }) => isNew).map(({ no }) => no));
        if (open.size === 0) return null;
        return handle(transaction, id, row, (ledger) => work(ledger, received), open);
      });
      await afterWriting?.();
      return result;
    },
    look: (id, counters) => lookingLedger(database, id, counters),
    receiveDecided: async (id, counters, raws, writes, nos) => {
      const lease = { nos, untilMs: writes.clockMs + leaseMs };
      const received = await writeAtOnce(database, id, counters, raws, writes, lease);
      if (received) await afterWriting?.();
      return received;
    },
    read: (id, work) =>
      database.transaction(
        async (transaction) => work(ledgerOf(transaction, id, await readRow(transaction, id))),
        readOnly,
      ),
    pending: (channel, nowMs, most) => leasePending(sending, channel, nowMs, most, leaseMs),
    lease: (greenhouse, no, nowMs) => leaseOne(sending, greenhouse, no, nowMs, leaseMs),
    settle: (greenhouse, no, outcome) => settle(sending, greenhouse, no, outcome),
    beginToSettle: (greenhouse, no, outcome) => {
      const done = settle(sending, greenhouse, no, outcome);
      // An earlier message that goes on under another id is written by a second statement.
      const isOneStatement = outcome.kind !== 'sent' || outcome.renews === undefined;
      const isSoon = handedOn !== undefined && isOneStatement;
      return { handedOn: isSoon ? Promise.race([done, handedOn()]) : done, done };
    },
    giveBack: (greenhouse, nos) => giveBack(sending, greenhouse, nos),
    keepPartsSent: (greenhouse, no, partsSent) => keepPartsSent(sending, greenhouse, no, partsSent),
    endLeases: (channel) => endLeases(sending, channel),
    history: (greenhouse, channel, chat, most) =>
      selectHistory(database, greenhouse, channel, chat, most),
    close,
  };
}

/** Lets `work` decide under the lock, and writes all of it. */
async function handle<T>(
  transaction: Database,
  id: GreenhouseId,
  row: LockedRow,
  work: (ledger: Ledger) => Promise<{ readonly writes: Writes; readonly result: T }>,
  open: ReadonlySet<InboxNo> = new Set(),
): Promise<T> {
  const { writes, result } = await work(ledgerOf(transaction, id, row));
  await writeHandling(transaction, id, row.counters, writes, [...open]);
  return result;
}

/** Every statement sees the same moment. */
const readOnly = { isolationLevel: 'repeatable read', accessMode: 'read only' } as const;
