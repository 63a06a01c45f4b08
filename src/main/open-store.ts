import { join } from 'node:path';
import type { Store } from '../assistant/ports/store.ts';
import type { Config } from '../config/read-config.ts';
import { openEmbedded } from '../storage/embedded/open-embedded.ts';
import { openPostgres } from '../storage/postgres/open-postgres.ts';
import { tellProgress } from './tell-progress.ts';

/**
 * Opens the database that the configuration names, its schema brought up to date.
 *
 * @throws DatabaseRefused with a clear sentence where it cannot be had.
 */
export async function openStore(config: Config, root: string): Promise<Store> {
  const options = { migrationsFolder: join(root, 'drizzle'), onProgress: tellProgress };
  return config.databaseUrl === null
    ? openEmbedded({ ...options, folder: config.dataFolder, cacheFolder: cacheFolder(root) })
    : openPostgres({ ...options, url: config.databaseUrl });
}

/** Where an empty database is kept ready; it can be thrown away at any time. */
export function cacheFolder(root: string): string {
  return join(root, 'node_modules', '.cache', 'brimkeeper');
}
