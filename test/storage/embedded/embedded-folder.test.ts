import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PGlite } from '@electric-sql/pglite';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '../../../src/assistant/ports/store.ts';
import { type EmbeddedOptions, openEmbedded } from '../../../src/storage/embedded/open-embedded.ts';
import { DatabaseRefused } from '../../../src/storage/refusal.ts';
import { type Child, startChild } from '../child-process.ts';
import { cacheFolder, migrationsFolder } from '../folders.ts';
import { demoGreenhouse } from '../suite/demo-greenhouse.ts';
import { entry, incoming, look, startMs, write } from '../suite/storage-under-test.ts';

let root: string;
let folder: string;
const stores: Store[] = [];
const children: Child[] = [];

beforeAll(async () => {
  root = mkdtempSync(join(tmpdir(), 'brimkeeper-'));
  folder = join(root, 'made');
  await (await open()).close();
});

afterAll(() => {
  rmSync(root, { recursive: true, force: true });
});

// Making a folder brings two thousand files to the disk; most tests take a copy of one.
beforeEach(() => {
  folder = mkdtempSync(join(root, 'copy-'));
  cpSync(join(root, 'made'), folder, { recursive: true });
});

afterEach(async () => {
  for (const child of children.splice(0)) await child.kill();
  for (const store of stores.splice(0)) await store.close();
});

async function open(options: Partial<EmbeddedOptions> = {}): Promise<Store> {
  const store = await openEmbedded({ folder, migrationsFolder, cacheFolder, ...options });
  stores.push(store);
  return store;
}

function holder(): Child {
  const child = startChild(new URL('holder.ts', import.meta.url), [folder]);
  children.push(child);
  return child;
}

describe('an embedded folder', () => {
  it.each(['each-commit', 'at-close'] as const)(
    'holds what was written, read again by the next process (synced %s)',
    async (sync) => {
      const first = await open({ sync });
      const id = await first.createGreenhouse(demoGreenhouse, startMs);
      await write(first, id, { entries: [entry(1)] });
      await first.close();
      const second = await open();
      expect((await second.loadGreenhouse(id)).greenhouse).toEqual(demoGreenhouse);
      const { entries } = await look(second, id, (ledger) => ledger.changesSince(-1));
      expect(entries).toEqual([entry(1)]);
    },
  );

  it('tells what it is at', async () => {
    folder = join(root, 'told');
    const kinds = async () => {
      const told: string[] = [];
      const store = await open({ onProgress: ({ kind }) => told.push(kind) });
      await store.close();
      return told;
    };
    expect((await kinds()).filter((kind) => kind !== 'making-database')).toEqual([
      'opening-database',
      'ready',
    ]);
    expect(await kinds()).toEqual(['opening-database', 'ready']);
  });

  it('is refused while this process has it, and free once that is closed', async () => {
    const first = await open();
    await expect(open()).rejects.toThrow(DatabaseRefused);
    await first.close();
    await open();
  });

  it('is refused while another process has it, and free once that is killed', async () => {
    const other = holder();
    expect(await other.line()).toBe('open with nothing');
    const refused = await open().catch((error: unknown) => error);
    expect(refused).toMatchObject({ refusal: { kind: 'folder-in-use', folder } });
    expect(String(refused)).toMatch(/in use by another process \(\d+\)\. Stop that one first/);
    await other.kill();
    const store = await open();
    await store.createGreenhouse(demoGreenhouse, startMs);
    expect(await holder().line()).toMatch(/^refused: The folder .* is in use by another process/);
  });

  it('goes to one of several processes at most when they all come at once', async () => {
    await (await open()).close();
    const lines = await Promise.all([holder(), holder(), holder()].map((child) => child.line()));
    expect(lines.filter((line) => line.startsWith('open')).length).toBeLessThanOrEqual(1);
    expect(lines.filter((line) => line.startsWith('refused')).length).toBeGreaterThanOrEqual(2);
  });

  it('leaves no lock behind', async () => {
    await (await open()).close();
    expect(readdirSync(folder)).toEqual(['database']);
  });

  it('is made anew where its making was cut short', async () => {
    folder = join(root, 'cut-short');
    const unfinished = join(folder, 'database-in-the-making');
    mkdirSync(unfinished, { recursive: true });
    writeFileSync(join(unfinished, 'PG_VERSION'), '18\n');
    const store = await open();
    expect(await store.greenhouses()).toEqual([]);
    expect(existsSync(unfinished)).toBe(false);
  });

  it('is refused, and left as it is, where a newer version has written it', async () => {
    await (await open()).close();
    const place = join(folder, 'database');
    const client = await PGlite.create(place);
    await client.query(
      `insert into drizzle.__drizzle_migrations (hash, created_at) values ('of later', 9e12)`,
    );
    await client.close();
    const refused = await open().catch((error: unknown) => error);
    expect(refused).toMatchObject({ refusal: { kind: 'newer-database', unknownMigrations: 1 } });
    expect(String(refused)).toContain('written by a newer version');
    // The folder is free again, and refused for the same reason.
    await expect(open()).rejects.toMatchObject({ refusal: { kind: 'newer-database' } });
  });

  it('hands out at once what a process that is gone had in its hands', async () => {
    const first = await open();
    const id = await first.createGreenhouse(demoGreenhouse, startMs);
    const received = await first.receive(incoming(id, 'page', 'u1'));
    await first.transact(id, received.no, () =>
      Promise.resolve({
        writes: {
          clockMs: startMs,
          entries: [],
          strikes: [],
          weather: [],
          greenhouse: null,
          conversations: [],
          morning: null,
          notices: [],
          outgoing: [
            {
              no: 1 as never,
              atMs: startMs,
              channel: 'page',
              to: 'ines',
              inReplyTo: null,
              reply: { kind: 'refusal', because: { kind: 'cannot-handle' } },
              buttons: [],
            },
          ],
        },
        result: null,
      }),
    );
    expect(await first.pending('page', startMs, 9)).toHaveLength(1);
    await first.close();
    const second = await open();
    expect(await second.pending('page', startMs, 9)).toMatchObject([{ unanswered: 1 }]);
  });
});
