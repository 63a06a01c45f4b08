import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openEmbedded } from '../../../src/storage/embedded/open-embedded.ts';
import { migrationsFolder } from '../folders.ts';
import { demoGreenhouse } from '../suite/demo-greenhouse.ts';
import { startMs } from '../suite/storage-under-test.ts';

let cacheFolder: string;

beforeEach(() => {
  cacheFolder = mkdtempSync(join(tmpdir(), 'brimkeeper-'));
});

afterEach(() => {
  rmSync(cacheFolder, { recursive: true, force: true });
});

/** Opens a database in memory, uses it, and tells whether it had to be made. */
async function wasMade(folder = cacheFolder): Promise<boolean> {
  let made = false;
  const store = await openEmbedded({
    folder: 'memory',
    migrationsFolder,
    cacheFolder: folder,
    onProgress: ({ kind }) => {
      made ||= kind === 'making-database';
    },
  });
  expect(await store.greenhouses()).toEqual([]);
  await store.createGreenhouse(demoGreenhouse, startMs);
  await store.close();
  return made;
}

describe('a database in memory', () => {
  it('is made once, then loaded empty from what was kept, and made again where that is spoilt', async () => {
    expect(await wasMade()).toBe(true);
    const [name, ...others] = readdirSync(cacheFolder);
    expect(others).toEqual([]);
    expect(await wasMade()).toBe(false);
    const file = join(cacheFolder, name!);
    const spoilt = readFileSync(file);
    spoilt[100_000]! ^= 1;
    writeFileSync(file, spoilt);
    expect(await wasMade()).toBe(true);
    expect(await wasMade()).toBe(false);
  });

  it('is made where nothing can be kept', async () => {
    const file = join(cacheFolder, 'a-file');
    writeFileSync(file, '');
    expect(await wasMade(join(file, 'not-a-folder'))).toBe(true);
  });
});
