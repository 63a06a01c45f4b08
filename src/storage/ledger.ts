import { and, asc, eq, inArray } from 'drizzle-orm';
import type { Counters, GreenhouseId, InboxNo, Ledger, SetUp } from '../assistant/ports/store.ts';
import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import { selectGreenhouse } from './greenhouse-set-up.ts';
import { selectDirectory } from './household.ts';
import { selectIncoming } from './inbox.ts';
import { selectChanges } from './logbook-changes.ts';
import {
  selectAlertsTo,
  selectLatestOutgoing,
  selectOutgoing,
  selectOutgoingByPlatformId,
} from './outgoing-messages.ts';
import type { Database } from './schema/database.ts';
import { greenhouses } from './schema/greenhouse-tables.ts';
import { conversations, inbox, notices } from './schema/traffic-tables.ts';

/** A greenhouse's row as it stands for the length of a transaction. */
export interface LockedRow {
  readonly counters: Counters;
  readonly setUpRevision: number;
}

const rowColumns = {
  revision: greenhouses.revision,
  setUpRevision: greenhouses.setUpRevision,
  lastEntryNo: greenhouses.lastEntryNo,
  lastOutgoingNo: greenhouses.lastOutgoingNo,
  clockMs: greenhouses.clockMs,
};

/** @throws RangeError where there is no such greenhouse. */
export async function readRow(database: Database, id: GreenhouseId): Promise<LockedRow> {
  const [row] = await database.select(rowColumns).from(greenhouses).where(eq(greenhouses.id, id));
  return lockedRow(id, row);
}

/**
 * Waits for the greenhouse and locks it. `no key update`, since new inbox rows refer to it.
 *
 * @throws RangeError where there is no such greenhouse.
 */
export async function lockRow(database: Database, id: GreenhouseId): Promise<LockedRow> {
  const [row] = await database
    .select(rowColumns)
    .from(greenhouses)
    .where(eq(greenhouses.id, id))
    .for('no key update');
  return lockedRow(id, row);
}

/**
 * Locks the greenhouse, and inbox rows with it: a second handling of one of those must read what
 * the first one wrote, which only a lock makes sure of. `open`: those not handled yet.
 *
 * @throws RangeError where the greenhouse has not all of these rows.
 */
export async function lockRowAndInbox(
  database: Database,
  id: GreenhouseId,
  nos: readonly InboxNo[],
): Promise<{ readonly row: LockedRow; readonly open: ReadonlySet<InboxNo> }> {
  const rows = await database
    .select({ ...rowColumns, no: inbox.no, handledAtMs: inbox.handledAtMs })
    .from(greenhouses)
    .innerJoin(inbox, and(eq(inbox.greenhouse, greenhouses.id), inArray(inbox.no, [...nos])))
    .where(eq(greenhouses.id, id))
    .orderBy(asc(inbox.no))
    .for('no key update');
  if (rows.length !== new Set(nos).size) {
    throw new RangeError(`greenhouse ${id} has no inbox rows ${nos.join(', ')}`);
  }
  const open = rows.filter(({ handledAtMs }) => handledAtMs === null).map(({ no }) => no);
  return { row: lockedRow(id, rows[0]), open: new Set(open) };
}

function lockedRow(
  id: GreenhouseId,
  row: (Counters & { readonly setUpRevision: number }) | undefined,
): LockedRow {
  if (!row) throw new RangeError(`there is no greenhouse ${id}`);
  const { revision, setUpRevision, lastEntryNo, lastOutgoingNo, clockMs } = row;
  return { counters: { revision, lastEntryNo, lastOutgoingNo, clockMs }, setUpRevision };
}

/** The same without a transaction: each answer is of its own moment. */
export function lookingLedger(database: Database, id: GreenhouseId, counters: Counters): Ledger {
  return {
    ...ledgerOf(database, id, { counters, setUpRevision: 0 }),
    setUp: () => selectGreenhouse(database, id),
    changesSince: async (revision) => {
      const { setUpRevision } = await readRow(database, id);
      return ledgerOf(database, id, { counters, setUpRevision }).changesSince(revision);
    },
  };
}

/** What the assistant may read, through the handle of an open transaction. */
export function ledgerOf(
  transaction: Database,
  id: GreenhouseId,
  { counters, setUpRevision }: LockedRow,
): Ledger {
  // Six tables, and nobody else writes them meanwhile: read once.
  const read: { setUp?: Promise<SetUp> } = {};
  const setUp = (): Promise<SetUp> => (read.setUp ??= selectGreenhouse(transaction, id));
  const setUpSince = async (revision: number): Promise<Greenhouse | null> =>
    setUpRevision > revision ? (await setUp()).greenhouse : null;
  return {
    greenhouse: id,
    counters,
    setUp,
    changesSince: (revision) => selectChanges(transaction, id, revision, setUpSince),
    conversation: async (handle) => {
      const [row] = await transaction
        .select({ state: conversations.state })
        .from(conversations)
        .where(and(eq(conversations.greenhouse, id), eq(conversations.handle, handle)));
      return row?.state ?? null;
    },
    outgoing: (no) => selectOutgoing(transaction, id, no),
    outgoingByPlatformId: (channel, chat, platformId) =>
      selectOutgoingByPlatformId(transaction, id, channel, chat, platformId),
    latestOutgoing: (chat, kind) => selectLatestOutgoing(transaction, id, chat, kind),
    alertsTo: (chat, fromMs, untilMs) => selectAlertsTo(transaction, id, chat, fromMs, untilMs),
    incoming: (channel, platformId) => selectIncoming(transaction, id, channel, platformId),
    hasNotice: async (key) => {
      const rows = await transaction
        .select({ key: notices.key })
        .from(notices)
        .where(and(eq(notices.greenhouse, id), eq(notices.key, key)));
      return rows.length > 0;
    },
    directory: (channel) => selectDirectory(transaction, channel, id),
  };
}
