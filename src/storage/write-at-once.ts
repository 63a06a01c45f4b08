import { type SQL, sql } from 'drizzle-orm';
import type { OutgoingNo } from '../assistant/outgoing.ts';
import { countersAfter } from '../assistant/ports/counters-after.ts';
import type {
  Counters,
  GreenhouseId,
  InboxNo,
  RawIncoming,
  ReceivedDecided,
  Writes,
} from '../assistant/ports/store.ts';
import { waitingInChatOf } from './leases.ts';
import { entryRow, strikeRow } from './logbook-rows.ts';
import { outgoingRow } from './outgoing-messages.ts';
import { type Recordset, recordsetOf } from './recordset.ts';
import { storable } from './schema/column-types.ts';
import type { Database } from './schema/database.ts';
import { entries, strikes } from './schema/logbook-tables.ts';
import { conversations, inbox, outbox } from './schema/traffic-tables.ts';
import { strikesOf } from './write-handling.ts';

/**
 * Receives things, and writes what was decided on them beforehand, by one statement: one journey to
 * the database, and no lock held while anybody thinks. Messages of the outbox may be leased by the same
 * statement, where none waited in their chat before. Null, and nothing is written: the
 * greenhouse stands elsewhere by now, or one of the things was here before.
 */
export async function writeAtOnce(
  database: Database,
  id: GreenhouseId,
  before: Counters,
  raws: readonly RawIncoming[],
  writes: Writes,
  lease: { readonly nos: readonly OutgoingNo[]; readonly untilMs: number },
): Promise<ReceivedDecided | null> {
  if (!fitsAtOnce(raws, writes)) return null;
  const after = countersAfter(before, writes);
  const { revision } = after;
  const rows = await statementFor(database).execute({
    id,
    before: before.revision,
    ...after,
    inbox: inboxRows.encode(raws.map((raw) => ({ ...raw, handledAtMs: writes.clockMs }))),
    entries: entryRows.encode(writes.entries.map((entry) => entryRow(id, revision, entry))),
    strikes: strikeRows.encode(strikesOf(writes).map((strike) => strikeRow(id, revision, strike))),
    conversations: conversationRows.encode(
      writes.conversations.map((state) => ({ greenhouse: id, handle: state.handle, state })),
    ),
    outgoing: outgoingRows.encode(
      writes.outgoing.map((outgoing) => ({ inPassing: false, ...outgoingRow(id, outgoing) })),
    ),
    leaseNos: JSON.stringify(lease.nos),
    leaseUntilMs: lease.untilMs,
  });
  const [row] = rows;
  if (!row) return null;
  const nos = new Map(rows.map(({ no, platformId }) => [platformId, no]));
  return {
    nos: raws.map(({ platformId }) => nos.get(storable(platformId ?? ''))!),
    leased: row.leased,
  };
}

/** What is written seldom is not in the statement. */
function fitsAtOnce(raws: readonly RawIncoming[], writes: Writes): boolean {
  const { weather, greenhouse, morning, notices, household = [], arrangements = [] } = writes;
  const seldom = [weather, notices, household, arrangements];
  return (
    greenhouse === null &&
    morning === null &&
    seldom.every((list) => list.length === 0) &&
    new Set(raws.map(({ platformId }) => platformId)).size === raws.length &&
    raws.every(({ platformId }) => platformId !== null)
  );
}

const inboxRows = recordsetOf(inbox, [
  'greenhouse',
  'channel',
  'platformId',
  'receivedAtMs',
  'writtenAtMs',
  'chat',
  'body',
  'handledAtMs',
]);
const entryRows = recordsetOf(entries, [
  'greenhouse',
  'no',
  'revision',
  'system',
  'quantity',
  'value',
  'atMs',
  'detail',
  'sourceKind',
  'handle',
  'messageId',
  'recordedAtMs',
]);
const strikeRows = recordsetOf(strikes, ['greenhouse', 'entry', 'revision', 'byHandle', 'atMs']);
const conversationRows = recordsetOf(conversations, ['greenhouse', 'handle', 'state']);
const outgoingRows = recordsetOf(outbox, [
  'greenhouse',
  'no',
  'atMs',
  'channel',
  'to',
  'inReplyTo',
  'kind',
  'reply',
  'buttons',
  'edits',
  'inPassing',
  'notBeforeMs',
]);

const given = (name: string): SQL => sql`${sql.placeholder(name)}`;
const statements = new WeakMap<Database, ReturnType<typeof prepare>>();

function statementFor(database: Database): ReturnType<typeof prepare> {
  const known = statements.get(database);
  if (known) return known;
  const made = prepare(database);
  statements.set(database, made);
  return made;
}

/**
 * Everything hangs on `current`, which is empty where the greenhouse has gone on. Whoever waits for
 * its row in the update reads the revision anew, so that of two only one can be first.
 */
function prepare(database: Database) {
  const named = (name: string, statement: SQL) => database.$with(name, {}).as(statement);
  const received = {
    no: sql<InboxNo>`"no"`.mapWith(inbox.no).as('no'),
    platformId: sql<string>`"platform_id"`.as('platform_id'),
  };
  const inserted = database
    .$with('received', received)
    .as(sql`${insertOf(inbox, inboxRows, 'inbox')} returning "no", "platform_id"`);
  const said = named(
    'said',
    sql`
      insert into ${outbox} (${outgoingRows.names}, "leased_until_ms")
      select ${outgoingRows.values},
        case when "taken" then ${given('leaseUntilMs')}::bigint else 0 end
      from "current", ${outgoingRows.from(given('outgoing'))}
      cross join lateral (
        select "given"."no" in (
            select "value"::bigint from json_array_elements_text(${given('leaseNos')}::json)
          )
          and "given"."edits" is null
          and not exists (${waitingInChatOf(sql`"given"`)}) as "taken"
      ) "first"
      returning "no", "leased_until_ms"`,
  );
  const leased = sql`array(
    select "no"::text from "said" where "leased_until_ms" > 0 order by "no"
  )`.mapWith(outgoingNos);
  return database
    .with(
      named(
        'current',
        sql`
          update "greenhouses" set "revision" = ${given('revision')},
            "last_entry_no" = ${given('lastEntryNo')},
            "last_outgoing_no" = ${given('lastOutgoingNo')}, "clock_ms" = ${given('clockMs')}
          where "id" = ${given('id')} and "revision" = ${given('before')} and not exists (
            select from ${inboxRows.from(given('inbox'))}
            join ${inbox} using ("greenhouse", "channel", "platform_id")
          ) returning "id"`,
      ),
      inserted,
      named('logged', insertOf(entries, entryRows, 'entries')),
      named('struck', sql`${insertOf(strikes, strikeRows, 'strikes')} on conflict do nothing`),
      named(
        'talked',
        sql`${insertOf(conversations, conversationRows, 'conversations')}
          on conflict ("greenhouse", "handle") do update set "state" = excluded."state"`,
      ),
      said,
    )
    .select({ no: inserted.no, platformId: inserted.platformId, leased })
    .from(inserted)
    .prepare('write_at_once');
}

function outgoingNos(texts: readonly string[]): readonly OutgoingNo[] {
  return texts.map((text) => Number(text) as OutgoingNo);
}

function insertOf(
  table: typeof inbox | typeof entries | typeof strikes | typeof conversations,
  { names, values, from }: Pick<Recordset<never>, 'names' | 'values' | 'from'>,
  parameter: string,
): SQL {
  return sql`insert into ${table} (${names})
    select ${values} from "current", ${from(given(parameter))}`;
}
