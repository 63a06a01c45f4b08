import { type MigrationMeta, readMigrationFiles } from 'drizzle-orm/migrator';
import { DatabaseRefused } from './refusal.ts';

/** Reads rows by a statement without parameters; the drivers differ in how. */
export type ReadRows = (statement: string) => Promise<readonly unknown[]>;

/** Where drizzle's migrator keeps what it has applied: its own defaults, named since we read them. */
export const migrationsPlace = {
  migrationsSchema: 'drizzle',
  migrationsTable: '__drizzle_migrations',
} as const;

const appliedTable = `${migrationsPlace.migrationsSchema}.${migrationsPlace.migrationsTable}`;

/** @throws Error where the folder holds no migrations. */
export function knownMigrations(migrationsFolder: string): readonly MigrationMeta[] {
  return readMigrationFiles({ migrationsFolder });
}

/**
 * Makes sure that every migration of the database is one of ours, and tells how many are to come.
 *
 * @throws DatabaseRefused where a newer version has been at it.
 */
export async function migrationsToCome(
  known: readonly MigrationMeta[],
  readRows: ReadRows,
): Promise<number> {
  const [{ found }] = (await readRows(`select to_regclass('${appliedTable}') as found`)) as [
    { found: string | null },
  ];
  if (found === null) return known.length;
  const applied = (await readRows(`select hash from ${appliedTable}`)) as { hash: string }[];
  const hashes = new Set(known.map(({ hash }) => hash));
  const unknownMigrations = applied.filter(({ hash }) => !hashes.has(hash)).length;
  if (unknownMigrations > 0) {
    throw new DatabaseRefused({ kind: 'newer-database', unknownMigrations });
  }
  return known.length - applied.length;
}
