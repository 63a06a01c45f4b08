import type { PgDatabase, PgQueryResultHKT } from 'drizzle-orm/pg-core';

/** A handle that statements go through: the database itself, or an open transaction. */
export type Database = PgDatabase<PgQueryResultHKT>;
