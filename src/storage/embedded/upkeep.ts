import type { PGlite } from '@electric-sql/pglite';

/** Some hundred handlings: a few days of a household's, and less than 10 MB of write-ahead log. */
const handlingsBetween = 500;

/**
 * A server cleans up and writes checkpoints by itself; PGlite's single process has no such helpers,
 * and its write-ahead log and dead rows would grow for ever.
 */
export function upkeepOf(client: PGlite): () => Promise<void> {
  let handlings = 0;
  return async () => {
    handlings += 1;
    if (handlings < handlingsBetween) return;
    handlings = 0;
    try {
      await client.exec('vacuum analyze');
      await client.exec('checkpoint');
    } catch {
      // The handling before is written and must not look failed. If the disk is at fault, the next
      // write says so.
    }
  };
}
