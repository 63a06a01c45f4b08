import { and, asc, between, desc, eq, isNull } from 'drizzle-orm';
import type { Outgoing, OutgoingNo } from '../assistant/outgoing.ts';
import type { ChannelName, GreenhouseId } from '../assistant/ports/store.ts';
import type { Database } from './schema/database.ts';
import { outbox } from './schema/traffic-tables.ts';

export function outgoingRow(
  greenhouse: GreenhouseId,
  outgoing: Outgoing,
): typeof outbox.$inferInsert {
  return { ...outgoing, greenhouse, kind: outgoing.reply.kind, notBeforeMs: outgoing.atMs };
}

export function outgoingOf(row: typeof outbox.$inferSelect): Outgoing {
  const { no, atMs, channel, to, inReplyTo, reply, buttons, edits, inPassing } = row;
  return {
    no,
    atMs,
    channel,
    to,
    inReplyTo,
    reply,
    buttons,
    ...(edits === null ? {} : { edits }),
    ...(inPassing ? { inPassing } : {}),
  };
}

export async function selectOutgoing(
  database: Database,
  greenhouse: GreenhouseId,
  no: OutgoingNo,
): Promise<Outgoing | null> {
  const [row] = await database
    .select()
    .from(outbox)
    .where(and(eq(outbox.greenhouse, greenhouse), eq(outbox.no, no)));
  return row ? outgoingOf(row) : null;
}

export async function selectOutgoingByPlatformId(
  database: Database,
  greenhouse: GreenhouseId,
  channel: ChannelName,
  chat: string,
  platformId: string,
): Promise<Outgoing | null> {
  const [row] = await database
    .select()
    .from(outbox)
    .where(
      and(
        eq(outbox.greenhouse, greenhouse),
        eq(outbox.channel, channel),
        eq(outbox.to, chat),
        eq(outbox.platformId, platformId),
      ),
    )
    .orderBy(desc(outbox.no))
    .limit(1);
  return row ? outgoingOf(row) : null;
}

export async function selectLatestOutgoing(
  database: Database,
  greenhouse: GreenhouseId,
  chat: string,
  kind?: Outgoing['reply']['kind'],
): Promise<Outgoing | null> {
  const ofKind = kind === undefined ? undefined : eq(outbox.kind, kind);
  const [row] = await database
    .select()
    .from(outbox)
    .where(
      and(eq(outbox.greenhouse, greenhouse), eq(outbox.to, chat), isNull(outbox.edits), ofKind),
    )
    .orderBy(desc(outbox.no))
    .limit(1);
  return row ? outgoingOf(row) : null;
}

/** What was said unasked to a chat between two instants, earliest first. */
export async function selectAlertsTo(
  database: Database,
  greenhouse: GreenhouseId,
  chat: string,
  fromMs: number,
  untilMs: number,
): Promise<readonly Outgoing[]> {
  const rows = await database
    .select()
    .from(outbox)
    .where(
      and(
        eq(outbox.greenhouse, greenhouse),
        eq(outbox.to, chat),
        eq(outbox.kind, 'alert'),
        between(outbox.atMs, fromMs, untilMs),
      ),
    )
    .orderBy(asc(outbox.no));
  return rows.map(outgoingOf);
}

/** The latest to a chat, latest first, whether sent or not. */
export async function selectOutgoingOfChat(
  database: Database,
  greenhouse: GreenhouseId,
  channel: ChannelName,
  chat: string,
  most: number,
): Promise<readonly Outgoing[]> {
  const rows = await database
    .select()
    .from(outbox)
    .where(and(eq(outbox.greenhouse, greenhouse), eq(outbox.channel, channel), eq(outbox.to, chat)))
    .orderBy(desc(outbox.no))
    .limit(most);
  return rows.map(outgoingOf);
}
