import { existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { PGlite } from '@electric-sql/pglite';
import { drizzle } from 'drizzle-orm/pglite';
import { migrate } from 'drizzle-orm/pglite/migrator';
import type { Store } from '../../assistant/ports/store.ts';
import { defaultLeaseMs, drizzleStore } from '../drizzle-store.ts';
import { endLeases } from '../leases.ts';
import { knownMigrations, migrationsPlace, migrationsToCome } from '../migrations.ts';
import type { Progress } from '../progress.ts';
import { DurableFolder, syncDirectory, syncTree } from './durable-folder.ts';
import { lockFolder } from './folder-lock.ts';
import { parseOnce } from './parse-once.ts';
import { durableOptions, unsyncedOptions } from './pglite-options.ts';
import { blobOf, openInMemory, templateArchive } from './template.ts';
import { upkeepOf } from './upkeep.ts';

export interface EmbeddedOptions {
  /** Where the database is kept; `memory`: nowhere, it is gone when closed. */
  readonly folder: string;
  readonly migrationsFolder: string;
  /** Where an empty database is kept ready, so that the next new one starts in half a second. */
  readonly cacheFolder?: string;
  readonly onProgress?: (progress: Progress) => void;
  readonly leaseMs?: number;
  /**
   * When writes to the folder reach the disk. `each-commit`, the default: before they are
   * acknowledged. `at-close`: several times as fast, for what can be done again after a power cut.
   */
  readonly sync?: 'each-commit' | 'at-close';
  /** Called for each file of the folder that was brought to the disk. */
  readonly onSync?: (path: string) => void;
}

/**
 * Opens the embedded database and brings it up to date; a new folder is made.
 *
 * In a folder, what is committed outlasts a power cut (see DurableFolder) unless told otherwise,
 * and one process at a time may have it.
 *
 * @throws DatabaseRefused where another process has the folder, or a newer version wrote it.
 */
export async function openEmbedded(options: EmbeddedOptions): Promise<Store> {
  options.onProgress?.({ kind: 'opening-database' });
  const { folder } = options;
  if (folder === 'memory') return storeOn(await openInMemory(templateOptions(options)), options);
  mkdirSync(folder, { recursive: true });
  const lock = lockFolder(folder);
  try {
    const client = await openFolder(folder, options);
    return await storeOn(client, options, () => {
      if (options.sync === 'at-close') syncTree(databaseIn(folder));
      lock.release();
    });
  } catch (error) {
    lock.release();
    throw error;
  }
}

async function storeOn(
  client: PGlite,
  { onProgress, leaseMs }: EmbeddedOptions,
  afterClosing: () => void = () => undefined,
): Promise<Store> {
  const database = drizzle(parseOnce(client));
  // Nobody else can hold any: this process has the database to itself.
  await endLeases(database);
  onProgress?.({ kind: 'ready' });
  return drizzleStore({
    database,
    leaseMs: leaseMs ?? defaultLeaseMs,
    afterWriting: upkeepOf(client),
    close: async () => {
      if (client.closed) return;
      await client.close();
      afterClosing();
    },
  });
}

function databaseIn(folder: string): string {
  return join(folder, 'database');
}

async function openFolder(folder: string, options: EmbeddedOptions): Promise<PGlite> {
  const place = databaseIn(folder);
  if (!existsSync(place)) await makeIn(folder, place, options);
  const client = await PGlite.create(
    options.sync === 'at-close'
      ? { ...unsyncedOptions, dataDir: place }
      : { ...durableOptions, fs: new DurableFolder(place, options.onSync) },
  );
  try {
    await bringUpToDate(client, options);
  } catch (error) {
    await client.close();
    throw error;
  }
  return client;
}

/** Made aside and then renamed: a making that is cut short leaves nothing that looks finished. */
async function makeIn(folder: string, place: string, options: EmbeddedOptions): Promise<void> {
  const archive = await templateArchive(templateOptions(options));
  const unfinished = join(folder, 'database-in-the-making');
  rmSync(unfinished, { recursive: true, force: true });
  // The archive is of a running database. PostgreSQL recovers it, and brings every file to the disk.
  const made = await PGlite.create({
    ...durableOptions,
    fs: new DurableFolder(unfinished, options.onSync),
    loadDataDir: blobOf(archive),
  });
  await made.close();
  renameSync(unfinished, place);
  syncDirectory(folder);
}

async function bringUpToDate(
  client: PGlite,
  { migrationsFolder, onProgress }: EmbeddedOptions,
): Promise<void> {
  const known = knownMigrations(migrationsFolder);
  const toCome = await migrationsToCome(
    known,
    async (statement) => (await client.query(statement)).rows,
  );
  if (toCome === 0) return;
  onProgress?.({ kind: 'migrating-database' });
  await migrate(drizzle(client), { migrationsFolder, ...migrationsPlace });
}

function templateOptions({ migrationsFolder, cacheFolder, onProgress }: EmbeddedOptions) {
  return {
    migrationsFolder,
    ...(cacheFolder === undefined ? {} : { cacheFolder }),
    onMaking: () => onProgress?.({ kind: 'making-database' }),
  };
}
