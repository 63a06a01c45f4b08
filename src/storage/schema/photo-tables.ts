import { pgTable, primaryKey } from 'drizzle-orm/pg-core';
import { bytes, plainText } from './column-types.ts';
import { ofGreenhouse } from './greenhouse-tables.ts';

/** Photos that members attached to a system or a kind of work, fetched from their platform. */
export const photos = pgTable(
  'photos',
  {
    greenhouse: ofGreenhouse(),
    channel: plainText('channel').notNull(),
    /** The channel's own name for it. */
    photoId: plainText('photo_id').notNull(),
    bytes: bytes('bytes').notNull(),
  },
  (table) => [primaryKey({ columns: [table.greenhouse, table.channel, table.photoId] })],
);
