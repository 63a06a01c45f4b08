import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openEmbedded } from '../../../src/storage/embedded/open-embedded.ts';
import { cacheFolder, migrationsFolder } from '../../storage/folders.ts';

let made: Promise<string> | null = null;

/**
 * Lays a database without a greenhouse in a new folder, as a first start does before all else. It
 * is made once a test process and copied from then on, which takes a tenth of the time.
 */
export async function layEmptyDatabase(folder: string): Promise<void> {
  cpSync(await (made ??= make()), folder, { recursive: true });
}

async function make(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'brimkeeper-empty-'));
  process.once('exit', () => {
    rmSync(folder, { recursive: true, force: true });
  });
  await (await openEmbedded({ folder, migrationsFolder, cacheFolder })).close();
  return folder;
}
