import { and, asc, desc, eq, inArray, isNull } from 'drizzle-orm';
import type {
  ChannelName,
  GreenhouseId,
  InboxNo,
  RawIncoming,
  Received,
  StoredIncoming,
} from '../assistant/ports/store.ts';
import { batchesOf } from './batches.ts';
import { storable } from './schema/column-types.ts';
import type { Database } from './schema/database.ts';
import { inbox } from './schema/traffic-tables.ts';

/** What stands for the platform's id where the platform has none. */
function madeId(no: InboxNo): string {
  return `#${no}`;
}

/** Stores what comes in under the platform's id, or finds it there from an earlier delivery. */
export async function receive(database: Database, raw: RawIncoming): Promise<Received> {
  const [stored] = await database
    .insert(inbox)
    .values(raw)
    .onConflictDoNothing({ target: [inbox.greenhouse, inbox.channel, inbox.platformId] })
    .returning({ no: inbox.no });
  if (stored) {
    const platformId = raw.platformId ?? madeId(stored.no);
    return { no: stored.no, platformId, isNew: true, isHandled: false };
  }
  const platformId = raw.platformId ?? '';
  const [known] = await database
    .select({ no: inbox.no, handledAtMs: inbox.handledAtMs })
    .from(inbox)
    .where(byPlatformId(raw.greenhouse, raw.channel, platformId));
  if (!known) throw new Error(`inbox: "${platformId}" was neither stored nor found`);
  return { no: known.no, platformId, isNew: false, isHandled: known.handledAtMs !== null };
}

/** The same for many, by one statement: all of them or none. */
export async function receiveAll(
  database: Database,
  raws: readonly RawIncoming[],
): Promise<readonly Received[]> {
  if (raws.length === 0) return [];
  if (raws.some(({ platformId }) => platformId === null)) return receiveOneByOne(database, raws);
  const stored = await database
    .insert(inbox)
    .values([...raws])
    .onConflictDoNothing({ target: [inbox.greenhouse, inbox.channel, inbox.platformId] })
    .returning({
      no: inbox.no,
      greenhouse: inbox.greenhouse,
      channel: inbox.channel,
      platformId: inbox.platformId,
    });
  const unclaimed = new Map(stored.map((row) => [onceKey(row), row.no]));
  const received: Received[] = [];
  for (const raw of raws) {
    const key = onceKey(raw);
    const no = unclaimed.get(key);
    // The second of two deliveries in one batch finds the first.
    unclaimed.delete(key);
    received.push(
      no === undefined
        ? await receive(database, raw)
        : { no, platformId: raw.platformId ?? madeId(no), isNew: true, isHandled: false },
    );
  }
  return received;
}

/** Without ids of the platform there is nothing to tell rows of one statement apart by. */
async function receiveOneByOne(
  database: Database,
  raws: readonly RawIncoming[],
): Promise<readonly Received[]> {
  return database.transaction(async (transaction) => {
    const received: Received[] = [];
    for (const raw of raws) received.push(await receive(transaction, raw));
    return received;
  });
}

function onceKey({
  greenhouse,
  channel,
  platformId,
}: Pick<typeof inbox.$inferSelect, 'greenhouse' | 'channel' | 'platformId'>): string {
  return JSON.stringify([greenhouse, storable(channel), storable(platformId ?? '')]);
}

export async function selectUnhandled(
  database: Database,
  channel: ChannelName,
): Promise<readonly StoredIncoming[]> {
  const rows = await database
    .select()
    .from(inbox)
    .where(and(eq(inbox.channel, channel), isNull(inbox.handledAtMs)))
    .orderBy(asc(inbox.no));
  return rows.map(storedIncomingOf);
}

export async function selectIncoming(
  database: Database,
  greenhouse: GreenhouseId,
  channel: ChannelName,
  platformId: string,
): Promise<StoredIncoming | null> {
  const [row] = await database
    .select()
    .from(inbox)
    .where(byPlatformId(greenhouse, channel, platformId));
  if (row) return storedIncomingOf(row);
  const made = /^#(\d{1,15})$/.exec(platformId)?.[1];
  if (made === undefined) return null;
  const [unnamed] = await database
    .select()
    .from(inbox)
    .where(
      and(
        eq(inbox.no, Number(made) as InboxNo),
        eq(inbox.greenhouse, greenhouse),
        eq(inbox.channel, channel),
        isNull(inbox.platformId),
      ),
    );
  return unnamed ? storedIncomingOf(unnamed) : null;
}

/** The latest of a chat, latest first. */
export async function selectIncomingOfChat(
  database: Database,
  greenhouse: GreenhouseId,
  channel: ChannelName,
  chat: string,
  most: number,
): Promise<readonly StoredIncoming[]> {
  const rows = await database
    .select()
    .from(inbox)
    .where(and(eq(inbox.greenhouse, greenhouse), eq(inbox.channel, channel), eq(inbox.chat, chat)))
    .orderBy(desc(inbox.no))
    .limit(most);
  return rows.map(storedIncomingOf);
}

export async function markHandled(
  database: Database,
  nos: readonly InboxNo[],
  atMs: number,
): Promise<void> {
  for (const batch of batchesOf(nos)) {
    await database
      .update(inbox)
      .set({ handledAtMs: atMs })
      .where(inArray(inbox.no, [...batch]));
  }
}

function byPlatformId(greenhouse: GreenhouseId, channel: ChannelName, platformId: string) {
  return and(
    eq(inbox.greenhouse, greenhouse),
    eq(inbox.channel, channel),
    eq(inbox.platformId, platformId),
  );
}

function storedIncomingOf(row: typeof inbox.$inferSelect): StoredIncoming {
  const { no, channel, receivedAtMs, writtenAtMs, chat, body } = row;
  return {
    no,
    greenhouse: row.greenhouse as GreenhouseId,
    channel,
    platformId: row.platformId ?? madeId(no),
    receivedAtMs,
    writtenAtMs,
    chat,
    body,
  };
}
