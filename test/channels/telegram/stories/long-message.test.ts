import { afterEach, expect, it, vi } from 'vitest';
import type { OutgoingNo } from '../../../../src/assistant/outgoing.ts';
import type { Reply } from '../../../../src/assistant/replies/reply.ts';
import { writesOf } from '../../../../src/assistant/writes.ts';
import { hang } from '../../../telegram-emulator/state/fault.ts';
import { settledHousehold } from '../household.ts';
import type { Mode } from '../running-bot.ts';
import { ChildHouse } from './child-house.ts';

// A program is started, stopped and started again; a loaded machine takes its time.
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

const closing: (() => Promise<unknown>)[] = [];
afterEach(async () => {
  for (const close of closing.splice(0)) await close();
});

const words = Array.from({ length: 3000 }, (_, n) => `word${n}`);

/** A message longer than the platform takes at once. */
function longReply(): Reply {
  const told = { kind: 'refused' as const, words: 'x' };
  const alert = { kind: 'not-delivered' as const, to: words.join(' '), because: told };
  return { kind: 'alert', alert };
}

it.each<Mode>(['polling', 'webhook'])(
  'a long message goes on after a kill where it was, one part in doubt at most again, by %s',
  async (mode) => {
    const house = await ChildHouse.open(mode);
    closing.push(() => house.close());
    const { emulator, bot } = house;
    const ines = emulator.world.user({ name: 'Ines' });
    await house.inStore(async (store) => {
      const atMs = Date.now();
      const placed = [{ person: ines, role: 'grower' as const }];
      const id = await settledHousehold(store, placed, { createdAtMs: atMs - 60_000 });
      const outgoing = {
        no: 1 as OutgoingNo,
        atMs,
        channel: 'telegram',
        to: 'ines',
        inReplyTo: null,
        reply: longReply(),
        buttons: [],
      };
      await store.transact(id, null, () =>
        Promise.resolve({ writes: writesOf(atMs, { outgoing: [outgoing] }), result: null }),
      );
    });
    const parts = () => ines.chat.fromBot.filter(({ text }) => /word\d/u.test(text));
    const hanging = emulator.faults.arm(hang(), { method: 'sendMessage', skip: 3 });
    await bot.start();
    await expect.poll(() => hanging.hits, { timeout: 30_000 }).toBe(1);
    expect(parts()).toHaveLength(3);
    await bot.kill();
    await bot.start();
    await ines.chat.shows(({ text }) => text.includes('word2999'), 45_000);
    expect(parts().length).toBeGreaterThan(5);
    const said = parts().flatMap(({ text }) => text.match(/word\d+/gu) ?? []);
    expect(said).toEqual(words);
  },
);
