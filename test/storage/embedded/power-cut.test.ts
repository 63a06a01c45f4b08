import {
  copyFileSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { GreenhouseId, Store } from '../../../src/assistant/ports/store.ts';
import { openEmbedded } from '../../../src/storage/embedded/open-embedded.ts';
import { cacheFolder, migrationsFolder } from '../folders.ts';
import { demoGreenhouse } from '../suite/demo-greenhouse.ts';
import { entry, incoming, look, startMs, write } from '../suite/storage-under-test.ts';

/**
 * A disk beside the real one, which holds of each file what was last brought to the disk: what a
 * power cut surely leaves. Of what was written since, any part may be there or not.
 */
const blockBytes = 4096;
const handled = 12;

let root: string;
let store: Store;
let id: GreenhouseId;

function path(name: string): string {
  return join(root, name);
}

/** Keeps the synced state of a file; a directory's names are kept with its files. */
function keepSynced(file: string): void {
  if (statSync(file).isDirectory()) return;
  const kept = join(path('synced'), relative(path('folder'), file));
  mkdirSync(dirname(kept), { recursive: true });
  copyFileSync(file, kept);
}

beforeAll(async () => {
  root = mkdtempSync(join(tmpdir(), 'brimkeeper-'));
  const made = await openEmbedded({ folder: path('folder'), migrationsFolder, cacheFolder });
  await made.close();
  cpSync(path('folder'), path('synced'), { recursive: true });
  store = await openEmbedded({
    folder: path('folder'),
    migrationsFolder,
    cacheFolder,
    onSync: keepSynced,
  });
  id = await store.createGreenhouse(demoGreenhouse, startMs);
  for (let no = 1; no <= handled; no += 1) {
    const received = await store.receive(incoming(id, 'page', `u${no}`));
    await write(store, id, { entries: [entry(no, { note: 'x'.repeat(400) })] }, received.no);
  }
  await store.receive(incoming(id, 'page', 'acknowledged'));
});

afterAll(async () => {
  await store.close();
  rmSync(root, { recursive: true, force: true });
});

function filesUnder(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((each) => each.isFile())
    .map((each) => join(each.parentPath, each.name));
}

/** The folder after a cut: of each block that was not synced, `survives` says whether it got there. */
function afterCut(name: string, survives: () => boolean): string {
  cpSync(path('synced'), path(name), { recursive: true });
  for (const file of filesUnder(join(path('folder'), 'database'))) {
    const target = join(path(name), relative(path('folder'), file));
    const now = readFileSync(file);
    const before = readOrNull(target);
    if (before === null) {
      if (!survives()) continue;
      mkdirSync(dirname(target), { recursive: true });
    }
    const mixed = Buffer.from(before ?? Buffer.alloc(0));
    const longest = before !== null && !survives() ? before.length : now.length;
    const result = Buffer.alloc(longest);
    mixed.copy(result);
    for (let at = 0; at < longest; at += blockBytes) {
      if (survives()) now.copy(result, at, at, Math.min(at + blockBytes, longest));
    }
    writeFileSync(target, result);
  }
  return path(name);
}

function readOrNull(file: string): Buffer | null {
  try {
    return readFileSync(file);
  } catch {
    return null;
  }
}

async function expectAllThere(folder: string): Promise<void> {
  const after = await openEmbedded({ folder, migrationsFolder, cacheFolder });
  try {
    expect((await after.loadGreenhouse(id)).greenhouse).toEqual(demoGreenhouse);
    const { entries } = await look(after, id, (ledger) => ledger.changesSince(-1));
    expect(entries.map(({ no }) => no)).toEqual(Array.from({ length: handled }, (_, i) => i + 1));
    const unhandled = await after.unhandled('page');
    expect(unhandled.map(({ platformId }) => platformId)).toEqual(['acknowledged']);
    const again = await after.receive(incoming(id, 'page', 'u7'));
    expect(again).toMatchObject({ isNew: false, isHandled: true });
  } finally {
    await after.close();
  }
}

describe('after a power cut', () => {
  it('all that was acknowledged is there, where nothing else reached the disk', async () => {
    await expectAllThere(afterCut('nothing-else', () => false));
  });

  it('all that was acknowledged is there, whatever part of the rest reached the disk', async () => {
    const [seed] = fc.sample(fc.integer(), 1);
    const runs = fc.sample(fc.infiniteStream(fc.boolean()), { numRuns: 2, seed: seed! });
    for (const [i, coins] of runs.entries()) {
      const folder = afterCut(`part-${i}`, () => coins.next().value === true);
      await expectAllThere(folder).catch((cause: unknown) => {
        throw new Error(`with seed ${seed!}, run ${i}`, { cause });
      });
    }
  });
});
