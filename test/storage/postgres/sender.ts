import { openPostgres } from '../../../src/storage/postgres/open-postgres.ts';
import { migrationsFolder } from '../folders.ts';

// A process that sends what a channel has pending until nothing is left, and says what it took.
const [url, channel, nowMs] = process.argv.slice(2);
const store = await openPostgres({ url: url!, migrationsFolder });
const taken: string[] = [];
let isIdle = 0;
while (isIdle < 5) {
  const pending = await store.pending(channel!, Number(nowMs), 3);
  isIdle = pending.length === 0 ? isIdle + 1 : 0;
  for (const { greenhouse, outgoing } of pending) {
    taken.push(`${outgoing.to}/${outgoing.no}`);
    await new Promise((resolve) => setTimeout(resolve, 1));
    await store.settle(greenhouse, outgoing.no, {
      kind: 'sent',
      platformId: null,
      atMs: Number(nowMs),
    });
  }
  if (pending.length === 0) await new Promise((resolve) => setTimeout(resolve, 20));
}
console.log(JSON.stringify(taken));
await store.close();
