import { join } from 'node:path';
import type { Store } from '../assistant/ports/store.ts';
import type { Config } from '../config/read-config.ts';
import { openEmbedded } from '../storage/embedded/open-embedded.ts';
import { openPostgres } from '../storage/postgres/open-postgres.ts';

/** Opens the database that the configuration names, its schema brought up to date. */
export async function openStore(config: Config, root: string): Promise<Store> {
  const migrationsFolder = join(root, 'drizzle');
  if (config.databaseUrl !== null) {
    return openPostgres({ url: config.databaseUrl, migrationsFolder });
  }
  return openEmbedded({
    folder: config.dataFolder,
    migrationsFolder,
    cacheFolder: join(root, 'node_modules', '.cache', 'brimkeeper'),
    onProgress: (sentence) => {
      console.error(sentence);
    },
  });
}
