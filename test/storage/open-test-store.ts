import type { Store } from '../../src/assistant/ports/store.ts';
import { openEmbedded } from '../../src/storage/embedded/open-embedded.ts';
import { cacheFolder, migrationsFolder } from './folders.ts';

/** A database in memory, empty, with the schema as it is. */
export function openTestStore(): Promise<Store> {
  return openEmbedded({ folder: 'memory', migrationsFolder, cacheFolder });
}
