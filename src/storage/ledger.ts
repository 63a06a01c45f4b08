import { and, eq } from 'drizzle-orm';
import type { Counters, GreenhouseId, InboxNo, Ledger } from '../assistant/ports/store.ts';
import { selectIncoming } from './inbox.ts';
import { selectChanges } from './logbook-changes.ts';
import {
  selectLatestOutgoing,
  selectOutgoing,
  selectOutgoingByPlatformId,
} from './outgoing-messages.ts';
import type { Database } from './schema/database.ts';
import { greenhouses } from './schema/greenhouse-tables.ts';
import { conversations, inbox, notices } from './schema/traffic-tables.ts';

/** A greenhouse's row as it stands for the length of a transaction. */
export interface Standing {
  readonly counters: Counters;
  readonly setUpRevision: number;
  readonly isHandled: boolean;
}

const standingColumns = {
  revision: greenhouses.revision,
  setUpRevision: greenhouses.setUpRevision,
  lastEntryNo: greenhouses.lastEntryNo,
  lastOutgoingNo: greenhouses.lastOutgoingNo,
  clockMs: greenhouses.clockMs,
};

/** @throws RangeError where there is no such greenhouse. */
export async function readStanding(database: Database, id: GreenhouseId): Promise<Standing> {
  const [row] = await database
    .select(standingColumns)
    .from(greenhouses)
    .where(eq(greenhouses.id, id));
  if (!row) throw new RangeError(`there is no greenhouse ${id}`);
  const { setUpRevision, ...counters } = row;
  return { counters, setUpRevision, isHandled: false };
}

/**
 * Waits for the greenhouse and locks it, and its inbox row with it: a second handling of that row
 * must read what the first one wrote. `no key update`, since new inbox rows refer to the greenhouse.
 *
 * @throws RangeError where there is no such greenhouse, or no such inbox row of it.
 */
export async function lockStanding(
  database: Database,
  id: GreenhouseId,
  inboxNo: InboxNo | null,
): Promise<Standing> {
  const [row] =
    inboxNo === null
      ? await database
          .select(standingColumns)
          .from(greenhouses)
          .where(eq(greenhouses.id, id))
          .for('no key update')
      : await database
          .select({ ...standingColumns, handledAtMs: inbox.handledAtMs })
          .from(greenhouses)
          .innerJoin(inbox, and(eq(inbox.greenhouse, greenhouses.id), eq(inbox.no, inboxNo)))
          .where(eq(greenhouses.id, id))
          .for('no key update');
  if (!row) {
    const thing = inboxNo === null ? '' : ` with an inbox row ${inboxNo}`;
    throw new RangeError(`there is no greenhouse ${id}${thing}`);
  }
  const { revision, setUpRevision, lastEntryNo, lastOutgoingNo, clockMs } = row;
  return {
    counters: { revision, lastEntryNo, lastOutgoingNo, clockMs },
    setUpRevision,
    isHandled: 'handledAtMs' in row && row.handledAtMs !== null,
  };
}

/** What the assistant may read, through the handle of an open transaction. */
export function ledgerOf(
  transaction: Database,
  id: GreenhouseId,
  { counters, setUpRevision }: Standing,
): Ledger {
  return {
    counters,
    changesSince: (revision) => selectChanges(transaction, id, revision, setUpRevision),
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
    incoming: (channel, platformId) => selectIncoming(transaction, id, channel, platformId),
    hasNotice: async (key) => {
      const rows = await transaction
        .select({ key: notices.key })
        .from(notices)
        .where(and(eq(notices.greenhouse, id), eq(notices.key, key)));
      return rows.length > 0;
    },
  };
}
