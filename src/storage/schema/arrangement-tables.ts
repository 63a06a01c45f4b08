import { index, integer, pgTable, primaryKey } from 'drizzle-orm/pg-core';
import type { ArrangementDraft, TakenBack } from '../../greenhouse/arrangement.ts';
import { document, instantMs, plainText } from './column-types.ts';
import { ofGreenhouse } from './greenhouse-tables.ts';
import { writtenAtRevision } from './logbook-tables.ts';

/** What the household settled about who goes when. Append-only, as the logbook is. */
export const arrangements = pgTable(
  'arrangements',
  {
    greenhouse: ofGreenhouse(),
    revision: writtenAtRevision(),
    /** In the handling that wrote it, from 0. */
    position: integer('position').notNull(),
    byHandle: plainText('by_handle').notNull(),
    atMs: instantMs('at_ms').notNull(),
    settled: document('settled').$type<ArrangementDraft | TakenBack>().notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.greenhouse, table.revision, table.position] }),
    index('arrangements_by_revision').on(table.greenhouse, table.revision),
  ],
);
