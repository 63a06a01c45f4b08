import {
  bigint,
  boolean,
  date,
  doublePrecision,
  foreignKey,
  index,
  pgTable,
  primaryKey,
  text,
} from 'drizzle-orm/pg-core';
import type { EntryDraft, EntryNo, EntrySource } from '../../greenhouse/entry.ts';
import type { LocalDate } from '../../greenhouse/local-time.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { document, instantMs, plainText } from './column-types.ts';
import { ofGreenhouse } from './greenhouse-tables.ts';

/** The optional part of an entry: it grows with what people log, without a migration. */
export type EntryDetail = Omit<EntryDraft, 'system' | 'quantity' | 'value' | 'atMs'>;

/** The revision of the greenhouse that wrote the row. */
export function writtenAtRevision() {
  return bigint('revision', { mode: 'number' }).notNull();
}

/** Append-only: a trigger of the migrations refuses every update and delete. */
export const entries = pgTable(
  'entries',
  {
    greenhouse: ofGreenhouse(),
    no: bigint('no', { mode: 'number' }).$type<EntryNo>().notNull(),
    revision: writtenAtRevision(),
    system: text('system').$type<SystemId>(),
    quantity: text('quantity').$type<Quantity>().notNull(),
    value: doublePrecision('value').notNull(),
    atMs: instantMs('at_ms').notNull(),
    /** What only some entries have: the product, the probe, a note … */
    detail: document('detail').$type<EntryDetail>().notNull(),
    sourceKind: text('source_kind').$type<EntrySource['kind']>().notNull(),
    handle: plainText('handle'),
    messageId: plainText('message_id').notNull(),
    recordedAtMs: instantMs('recorded_at_ms').notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.greenhouse, table.no] }),
    index('entries_by_revision').on(table.greenhouse, table.revision),
  ],
);

/** Append-only as well; the first strike of an entry stands. */
export const strikes = pgTable(
  'strikes',
  {
    greenhouse: ofGreenhouse(),
    entry: bigint('entry', { mode: 'number' }).$type<EntryNo>().notNull(),
    revision: writtenAtRevision(),
    byHandle: plainText('by_handle').notNull(),
    atMs: instantMs('at_ms').notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.greenhouse, table.entry] }),
    foreignKey({
      name: 'strikes_an_entry',
      columns: [table.greenhouse, table.entry],
      foreignColumns: [entries.greenhouse, entries.no],
    }),
    index('strikes_by_revision').on(table.greenhouse, table.revision),
  ],
);

/** The weather as last told, a row a day. */
export const weatherDays = pgTable(
  'weather_days',
  {
    greenhouse: ofGreenhouse(),
    date: date('date').$type<LocalDate>().notNull(),
    revision: writtenAtRevision(),
    tMinC: doublePrecision('t_min_c').notNull(),
    tMaxC: doublePrecision('t_max_c').notNull(),
    rhMeanPercent: doublePrecision('rh_mean_percent'),
    windMs: doublePrecision('wind_ms'),
    solarMjM2: doublePrecision('solar_mj_m2'),
    observed: boolean('observed').notNull(),
    toldOn: date('told_on').$type<LocalDate>().notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.greenhouse, table.date] }),
    index('weather_days_by_revision').on(table.greenhouse, table.revision),
  ],
);
