import { expect } from 'vitest';
import { test as base } from '../../telegram-emulator/emulated.ts';
import { type Mode, RunningBot } from './running-bot.ts';

const test = base.extend<{ readonly start: (mode: Mode) => Promise<RunningBot> }>({
  start: async ({ emulator }, use) => {
    const bots: RunningBot[] = [];
    await use(async (mode) => {
      const bot = new RunningBot({ emulator, mode, startsFromNothing: true });
      bots.push(bot);
      await bot.start();
      return bot;
    });
    for (const bot of bots) await bot.dispose();
  },
});

for (const mode of ['polling', 'webhook'] as const) {
  test(`from the first start to the first receipt, by ${mode}`, async ({ emulator, start }) => {
    const bot = await start(mode);
    const ines = emulator.world.user({ name: 'Ines' });
    ines.start();
    expect((await ines.chat.next()).text).toContain('one household only');
    ines.dm(await bot.claimCode());
    expect((await ines.chat.next()).text).toContain('Quarry Lane');
    const reading = ines.dm('buckets ph 5.9 ec 1.7');
    const receipt = await ines.chat.next();
    expect(receipt.text).toContain('5.9');
    expect(receipt.replyTo).toBe(reading.id);
    expect(receipt.buttons.flat()).toHaveLength(1);
    expect(await bot.stop()).toBeLessThan(10_000);
    expect(bot.output).not.toContain(emulator.token.split(':')[1]);
  });
}
