import { fileURLToPath } from 'node:url';

export const migrationsFolder = fileURLToPath(new URL('../../drizzle', import.meta.url));

/** Shared with the bot itself, and by all test files: an empty database is made once. */
export const cacheFolder = fileURLToPath(
  new URL('../../node_modules/.cache/brimkeeper', import.meta.url),
);
