import { randomBytes } from 'node:crypto';
import postgres from 'postgres';
import { afterAll, beforeAll, describe } from 'vitest';

const serverUrl = process.env['DATABASE_URL_TEST'] ?? 'postgres://postgres@127.0.0.1:5432/test';
const isRequired = process.env['BRIMKEEPER_REQUIRE_POSTGRES'] === '1';

export interface TestDatabase {
  readonly url: string;
  run(statement: string): Promise<readonly unknown[]>;
}

/** Whether the server answers, asked once as the file is collected. */
async function reasonNotReachable(): Promise<string | null> {
  const client = postgres(serverUrl, { max: 1, connect_timeout: 5, onnotice: () => undefined });
  try {
    await client`select 1`;
    return null;
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    return message === '' ? String(code) : message;
  } finally {
    await client.end({ timeout: 1 });
  }
}

/**
 * Tests on a PostgreSQL database of their own, which is removed afterwards. Where no server answers
 * they are skipped, the title saying why; with BRIMKEEPER_REQUIRE_POSTGRES=1 that is a failure.
 */
export async function describeOnPostgres(
  title: string,
  tests: (database: () => TestDatabase) => void,
): Promise<void> {
  const reason = await reasonNotReachable();
  if (reason !== null) {
    const message = `no PostgreSQL server at DATABASE_URL_TEST or 127.0.0.1:5432 (${reason})`;
    if (isRequired) throw new Error(message);
    describe.skip(`${title}: skipped, ${message}`, () => {
      tests(() => {
        throw new Error(message);
      });
    });
    return;
  }
  describe(title, () => {
    const name = `brimkeeper_test_${randomBytes(6).toString('hex')}`;
    const url = new URL(serverUrl);
    url.pathname = `/${name}`;
    const client = postgres(url.href, { max: 1, onnotice: () => undefined });
    beforeAll(() => onServer(`create database ${name}`));
    afterAll(async () => {
      await client.end({ timeout: 5 });
      await onServer(`drop database ${name} with (force)`);
    });
    tests(() => ({ url: url.href, run: (statement) => client.unsafe(statement) }));
  });
}

async function onServer(statement: string): Promise<void> {
  const client = postgres(serverUrl, { max: 1, onnotice: () => undefined });
  await client.unsafe(statement);
  await client.end({ timeout: 5 });
}
