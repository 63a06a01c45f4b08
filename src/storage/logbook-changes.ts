import { and, asc, eq, gt } from 'drizzle-orm';
import type { Changes, GreenhouseId, Morning, StoredStrike } from '../assistant/ports/store.ts';
import type { Arrangement } from '../greenhouse/arrangement.ts';
import type { Entry } from '../greenhouse/entry.ts';
import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import type { WeatherDay } from '../greenhouse/weather.ts';
import { entryOf, weatherOf } from './logbook-rows.ts';
import { arrangements } from './schema/arrangement-tables.ts';
import type { Database } from './schema/database.ts';
import { entries, strikes, weatherDays } from './schema/logbook-tables.ts';
import { mornings } from './schema/traffic-tables.ts';

/** What was written after a revision; everything for -1. */
export async function selectChanges(
  database: Database,
  id: GreenhouseId,
  since: number,
  setUpSince: (revision: number) => Promise<Greenhouse | null>,
): Promise<Changes> {
  return {
    entries: await selectEntries(database, id, since),
    strikes: await selectStrikes(database, id, since),
    weather: await selectWeather(database, id, since),
    mornings: await selectMornings(database, id, since),
    arrangements: await selectArrangements(database, id, since),
    greenhouse: await setUpSince(since),
  };
}

async function selectEntries(
  database: Database,
  id: GreenhouseId,
  since: number,
): Promise<readonly Entry[]> {
  const rows = await database
    .select({ entry: entries, byHandle: strikes.byHandle, struckAtMs: strikes.atMs })
    .from(entries)
    .leftJoin(
      strikes,
      and(eq(strikes.greenhouse, entries.greenhouse), eq(strikes.entry, entries.no)),
    )
    .where(and(eq(entries.greenhouse, id), gt(entries.revision, since)))
    .orderBy(asc(entries.no));
  return rows.map(({ entry, byHandle, struckAtMs }) =>
    entryOf(
      entry,
      byHandle === null || struckAtMs === null ? null : { byHandle, atMs: struckAtMs },
    ),
  );
}

async function selectStrikes(
  database: Database,
  id: GreenhouseId,
  since: number,
): Promise<readonly StoredStrike[]> {
  return database
    .select({ entry: strikes.entry, byHandle: strikes.byHandle, atMs: strikes.atMs })
    .from(strikes)
    .where(and(eq(strikes.greenhouse, id), gt(strikes.revision, since)))
    .orderBy(asc(strikes.revision), asc(strikes.entry));
}

async function selectWeather(
  database: Database,
  id: GreenhouseId,
  since: number,
): Promise<readonly WeatherDay[]> {
  const rows = await database
    .select()
    .from(weatherDays)
    .where(and(eq(weatherDays.greenhouse, id), gt(weatherDays.revision, since)))
    .orderBy(asc(weatherDays.date));
  return rows.map(weatherOf);
}

async function selectMornings(
  database: Database,
  id: GreenhouseId,
  since: number,
): Promise<readonly Morning[]> {
  return database
    .select({
      date: mornings.date,
      sentAtMs: mornings.sentAtMs,
      duties: mornings.duties,
      outgoing: mornings.outgoing,
    })
    .from(mornings)
    .where(and(eq(mornings.greenhouse, id), gt(mornings.revision, since)))
    .orderBy(asc(mornings.date));
}

async function selectArrangements(
  database: Database,
  id: GreenhouseId,
  since: number,
): Promise<readonly Arrangement[]> {
  const rows = await database
    .select({
      settled: arrangements.settled,
      byHandle: arrangements.byHandle,
      atMs: arrangements.atMs,
    })
    .from(arrangements)
    .where(and(eq(arrangements.greenhouse, id), gt(arrangements.revision, since)))
    .orderBy(asc(arrangements.revision), asc(arrangements.position));
  return rows.map(({ settled, ...by }) => ({ ...settled, ...by }));
}
