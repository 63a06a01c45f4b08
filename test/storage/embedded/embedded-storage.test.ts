import { drizzle } from 'drizzle-orm/pglite';
import { afterAll, beforeAll } from 'vitest';
import { drizzleStore } from '../../../src/storage/drizzle-store.ts';
import { openInMemory } from '../../../src/storage/embedded/template.ts';
import { cacheFolder, migrationsFolder } from '../folders.ts';
import { storageSuite } from '../storage-suite.ts';
import { leaseMs, type StorageUnderTest } from '../suite/storage-under-test.ts';

let subject: StorageUnderTest;

beforeAll(async () => {
  const client = await openInMemory({ migrationsFolder, cacheFolder, onMaking: () => undefined });
  subject = {
    store: drizzleStore({ database: drizzle(client), leaseMs, close: () => client.close() }),
    run: async (statement) => (await client.query(statement)).rows,
  };
});

afterAll(() => subject.store.close());

storageSuite(() => subject);
