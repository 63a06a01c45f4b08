import { afterEach, expect, it } from 'vitest';
import type { Store } from '../../../src/assistant/ports/store.ts';
import { openPostgres } from '../../../src/storage/postgres/open-postgres.ts';
import { migrationsFolder } from '../../storage/folders.ts';
import { describeOnPostgres } from '../../storage/postgres/test-server.ts';
import { type Emulator, startEmulator } from '../../telegram-emulator/emulator.ts';
import type { Member } from '../../telegram-emulator/members/member.ts';
import type { MessageView } from '../../telegram-emulator/members/message-view.ts';
import { settledHousehold } from './household.ts';
import { type Mode, RunningBot } from './running-bot.ts';

const memberCount = 20;
const readingsEach = 10;
const readingCount = memberCount * readingsEach;
/** Three take a minute for the two modes, ten take three. */
const kills = process.env['BRIMKEEPER_TEN_KILLS'] === '1' ? 10 : 3;
/** After so many receipts comes the first kill, and the last; the others lie evenly between them. */
const [firstKill, lastKill] = [5, 176];

const closing: (() => Promise<unknown>)[] = [];
afterEach(async () => {
  for (const close of closing.splice(0).toReversed()) await close();
});

/** Faster than the platform lets anyone be, so that the test is about kills and not about waiting. */
const noPace = {
  TELEGRAM_SENDS_PER_SECOND: '10000',
  TELEGRAM_SENDS_PER_SECOND_IN_CHAT: '10000',
};

function sayReadings(people: readonly Member[], round: number): readonly MessageView[] {
  return Array.from({ length: readingCount }, (_, position) => {
    const person = people[position % people.length]!;
    return person.dm(`buckets ph 5.${(position + round) % 10}`);
  });
}

function receiptsOf(people: readonly Member[], said: readonly MessageView[]): Map<number, number> {
  const ids = new Set(said.map(({ id }) => id));
  const counts = new Map<number, number>();
  for (const person of people) {
    for (const { replyTo } of person.chat.fromBot) {
      if (replyTo !== undefined && ids.has(replyTo)) {
        counts.set(replyTo, (counts.get(replyTo) ?? 0) + 1);
      }
    }
  }
  return counts;
}

async function entriesByMessage(store: Store, id: Parameters<Store['read']>[0]) {
  const { entries } = await store.read(id, (ledger) => ledger.changesSince(-1));
  const counts = new Map<string, number>();
  for (const { source } of entries) {
    counts.set(source.messageId, (counts.get(source.messageId) ?? 0) + 1);
  }
  return counts;
}

function killAfterSends(emulator: Emulator, bot: RunningBot, sends: number): Promise<void> {
  const goal = emulator.calls.of('sendMessage').length + sends;
  return emulator.calls
    .until(() => emulator.calls.of('sendMessage').length >= goal, 60_000)
    .then(() => bot.kill());
}

await describeOnPostgres('a bot killed in the middle of 200 updates', (database) => {
  it.each<Mode>(['polling', 'webhook'])(
    `${kills} times logs each reading once and sends every receipt, one in doubt at most again, by %s`,
    async (mode) => {
      const emulator = await startEmulator();
      closing.push(() => emulator.stop());
      const store = await openPostgres({ url: database().url, migrationsFolder });
      closing.push(() => store.close());
      const people = Array.from({ length: memberCount }, (_, position) =>
        emulator.world.user({ name: `Person ${mode} ${position}` }),
      );
      const placed = people.map((person, position) => ({
        person,
        role: position === 0 ? ('grower' as const) : ('helper' as const),
      }));
      const id = await settledHousehold(store, placed, { createdAtMs: Date.now() - 60_000 });
      const bot = new RunningBot({ emulator, mode, databaseUrl: database().url, env: noPace });
      closing.push(() => bot.dispose());
      for (let round = 0; round < kills; round += 1) {
        const said = sayReadings(people, round);
        await bot.start();
        await killAfterSends(
          emulator,
          bot,
          firstKill + Math.round(((lastKill - firstKill) * round) / (kills - 1)),
        );
        await bot.start();
        await expect
          .poll(() => receiptsOf(people, said).size, { timeout: 90_000, interval: 200 })
          .toBe(readingCount);
        await bot.stop();
        const receipts = [...receiptsOf(people, said).values()];
        expect(receipts.filter((count) => count > 2)).toEqual([]);
        expect(receipts.filter((count) => count === 2).length).toBeLessThanOrEqual(1);
      }
      const logged = await entriesByMessage(store, id);
      expect(logged.size).toBe(kills * readingCount);
      expect([...logged.values()].filter((count) => count !== 1)).toEqual([]);
    },
    1_200_000,
  );
});
