import type { GreenhouseId, StoredStrike } from '../assistant/ports/store.ts';
import type { Entry, EntrySource, StrikeOut } from '../greenhouse/entry.ts';
import type { WeatherDay } from '../greenhouse/weather.ts';
import type { EntryDetail, entries, strikes, weatherDays } from './schema/logbook-tables.ts';

type EntryRow = typeof entries.$inferSelect;
type WeatherRow = typeof weatherDays.$inferSelect;

export function entryRow(greenhouse: GreenhouseId, revision: number, entry: Entry): EntryRow {
  const { no, system, quantity, value, atMs, source, recordedAtMs } = entry;
  return {
    greenhouse,
    no,
    revision,
    system,
    quantity,
    value,
    atMs,
    detail: detailOf(entry),
    sourceKind: source.kind,
    handle: source.kind === 'member' ? source.handle : null,
    messageId: source.messageId,
    recordedAtMs,
  };
}

/** All of an entry that has no place of its own elsewhere. */
function detailOf(entry: Entry): EntryDetail {
  return Object.fromEntries(Object.entries(entry).filter(([name]) => !keptElsewhere.has(name)));
}

const keptElsewhere: ReadonlySet<string> = new Set([
  'no',
  'system',
  'quantity',
  'value',
  'atMs',
  'source',
  'recordedAtMs',
  'struck',
] satisfies (keyof Entry)[]);

export function entryOf(row: EntryRow, struck: StrikeOut | null): Entry {
  const { no, system, quantity, value, atMs, recordedAtMs, detail } = row;
  return {
    ...detail,
    no,
    system,
    quantity,
    value,
    atMs,
    source: sourceOf(row),
    recordedAtMs,
    struck,
  };
}

function sourceOf({ sourceKind, handle, messageId }: EntryRow): EntrySource {
  if (sourceKind === 'sensor') return { kind: 'sensor', messageId };
  return { kind: 'member', handle: handle ?? '', messageId };
}

export function strikeRow(
  greenhouse: GreenhouseId,
  revision: number,
  strike: StoredStrike,
): typeof strikes.$inferInsert {
  return { greenhouse, revision, ...strike };
}

export function weatherRow(
  greenhouse: GreenhouseId,
  revision: number,
  day: WeatherDay,
): typeof weatherDays.$inferInsert {
  return { greenhouse, revision, ...day };
}

export function weatherOf(row: WeatherRow): WeatherDay {
  const { date, tMinC, tMaxC, rhMeanPercent, windMs, solarMjM2, observed, toldOn } = row;
  return {
    date,
    tMinC,
    tMaxC,
    ...(rhMeanPercent === null ? {} : { rhMeanPercent }),
    ...(windMs === null ? {} : { windMs }),
    ...(solarMjM2 === null ? {} : { solarMjM2 }),
    observed,
    toldOn,
  };
}
