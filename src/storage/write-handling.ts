import { eq, sql } from 'drizzle-orm';
import { countersAfter } from '../assistant/ports/counters-after.ts';
import type {
  Counters,
  GreenhouseId,
  InboxNo,
  StoredStrike,
  Writes,
} from '../assistant/ports/store.ts';
import type { Arrangement } from '../greenhouse/arrangement.ts';
import type { WeatherDay } from '../greenhouse/weather.ts';
import { batchesOf } from './batches.ts';
import { replaceSetUp } from './greenhouse-set-up.ts';
import { writeHousehold } from './household-changes.ts';
import { markHandled } from './inbox.ts';
import { entryRow, strikeRow, weatherRow } from './logbook-rows.ts';
import { outgoingRow } from './outgoing-messages.ts';
import { arrangements } from './schema/arrangement-tables.ts';
import type { Database } from './schema/database.ts';
import { greenhouses } from './schema/greenhouse-tables.ts';
import { entries, strikes, weatherDays } from './schema/logbook-tables.ts';
import { conversations, mornings, notices, outbox } from './schema/traffic-tables.ts';

/**
 * Writes all that a handling caused, one statement a table, and raises the revision by one. The
 * inbox rows that it handled are marked.
 */
export async function writeHandling(
  transaction: Database,
  id: GreenhouseId,
  counters: Counters,
  writes: Writes,
  handled: readonly InboxNo[],
): Promise<void> {
  const after = countersAfter(counters, writes);
  const { revision } = after;
  await writeWeather(transaction, id, revision, writes.weather);
  if (writes.greenhouse) await replaceSetUp(transaction, id, writes.greenhouse, revision);
  await writeHousehold(transaction, id, writes.household ?? [], writes.clockMs);
  // Sent one behind the other without waiting for each answer: a connection keeps their order, and a
  // failed one fails the transaction.
  await Promise.all([
    ...batchesOf(writes.entries).map((batch) =>
      transaction.insert(entries).values(batch.map((entry) => entryRow(id, revision, entry))),
    ),
    ...batchesOf(arrangementRows(id, revision, writes.arrangements ?? [])).map((batch) =>
      transaction.insert(arrangements).values(batch),
    ),
    ...batchesOf(strikesOf(writes)).map((batch) =>
      transaction
        .insert(strikes)
        .values(batch.map((strike) => strikeRow(id, revision, strike)))
        .onConflictDoNothing(),
    ),
    ...batchesOf(writes.conversations).map((batch) =>
      transaction
        .insert(conversations)
        .values(batch.map((state) => ({ greenhouse: id, handle: state.handle, state })))
        .onConflictDoUpdate({
          target: [conversations.greenhouse, conversations.handle],
          set: { state: sql`excluded.state` },
        }),
    ),
    ...batchesOf(writes.outgoing).map((batch) =>
      transaction.insert(outbox).values(batch.map((outgoing) => outgoingRow(id, outgoing))),
    ),
    ...(writes.morning
      ? [transaction.insert(mornings).values({ ...writes.morning, greenhouse: id, revision })]
      : []),
    ...batchesOf(writes.notices).map((batch) =>
      transaction
        .insert(notices)
        .values(batch.map((key) => ({ greenhouse: id, key, atMs: writes.clockMs })))
        .onConflictDoNothing(),
    ),
    transaction.update(greenhouses).set(after).where(eq(greenhouses.id, id)),
    markHandled(transaction, handled, writes.clockMs),
  ]);
}

function arrangementRows(
  greenhouse: GreenhouseId,
  revision: number,
  settled: readonly Arrangement[],
): readonly (typeof arrangements.$inferInsert)[] {
  return settled.map(({ byHandle, atMs, ...draft }, position) => ({
    greenhouse,
    revision,
    position,
    byHandle,
    atMs,
    settled: draft,
  }));
}

/** An entry may be written struck out already; the mark is kept where all marks are. */
export function strikesOf({ entries: written, strikes: marked }: Writes): readonly StoredStrike[] {
  const own = written.flatMap(({ no, struck }) => (struck ? [{ entry: no, ...struck }] : []));
  return own.length === 0 ? marked : [...own, ...marked];
}

async function writeWeather(
  transaction: Database,
  id: GreenhouseId,
  revision: number,
  days: readonly WeatherDay[],
): Promise<void> {
  for (const batch of batchesOf([...lastToldOf(days).values()])) {
    await transaction
      .insert(weatherDays)
      .values(batch.map((day) => weatherRow(id, revision, day)))
      .onConflictDoUpdate({
        target: [weatherDays.greenhouse, weatherDays.date],
        set: {
          revision: sql`excluded.revision`,
          tMinC: sql`excluded.t_min_c`,
          tMaxC: sql`excluded.t_max_c`,
          rhMeanPercent: sql`excluded.rh_mean_percent`,
          windMs: sql`excluded.wind_ms`,
          solarMjM2: sql`excluded.solar_mj_m2`,
          observed: sql`excluded.observed`,
          toldOn: sql`excluded.told_on`,
        },
        // An observation stands before any forecast.
        setWhere: sql`excluded.observed or not ${weatherDays.observed}`,
      });
  }
}

/** A statement may write a day once only: the last told, an observation before any forecast. */
function lastToldOf(days: readonly WeatherDay[]): ReadonlyMap<string, WeatherDay> {
  const told = new Map<string, WeatherDay>();
  for (const day of days) {
    if (day.observed || told.get(day.date)?.observed !== true) told.set(day.date, day);
  }
  return told;
}
