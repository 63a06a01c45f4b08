import { afterAll, beforeAll } from 'vitest';
import { openPostgres } from '../../../src/storage/postgres/open-postgres.ts';
import { migrationsFolder } from '../folders.ts';
import { storageSuite } from '../storage-suite.ts';
import { leaseMs, type StorageUnderTest } from '../suite/storage-under-test.ts';
import { describeOnPostgres } from './test-server.ts';

await describeOnPostgres('on PostgreSQL', (database) => {
  let subject: StorageUnderTest;

  beforeAll(async () => {
    const { url } = database();
    subject = {
      store: await openPostgres({ url, migrationsFolder, leaseMs }),
      run: (statement) => database().run(statement),
    };
  });

  afterAll(() => subject.store.close());

  storageSuite(() => subject);
});
