import { expect } from 'vitest';
import { test as base } from '../../telegram-emulator/emulated.ts';
import {
  badGateway,
  dropAfter,
  dropBefore,
  serverError,
} from '../../telegram-emulator/state/fault.ts';
import { type Mode, RunningBot } from './running-bot.ts';

const test = base.extend<{ readonly botFor: (mode: Mode) => RunningBot }>({
  botFor: async ({ emulator }, use) => {
    const bots: RunningBot[] = [];
    await use((mode) => {
      const bot = new RunningBot({ emulator, mode, env: { LOG_LEVEL: 'debug' } });
      bots.push(bot);
      return bot;
    });
    for (const bot of bots) await bot.dispose();
  },
});

test('the token is in no log, whatever breaks, and the bot gets through', async ({
  emulator,
  botFor,
}) => {
  const bot = botFor('polling');
  emulator.faults.arm(dropBefore(), { method: 'getMe' });
  emulator.faults.arm(serverError(), { method: 'getMe' });
  await bot.start();
  const ines = emulator.world.user({ name: 'Ines' });
  emulator.faults.arm(dropAfter(), { method: 'getUpdates' });
  emulator.faults.arm(badGateway(), { method: 'getUpdates' });
  emulator.faults.arm(dropBefore(), { method: 'sendMessage' });
  emulator.faults.arm(badGateway(), { method: 'sendMessage' });
  ines.dm(await bot.claimCode());
  await ines.chat.next((message) => message.text.includes('Welcome'), 30_000);
  await bot.stop();
  expect(bot.output).toContain('Telegram could not be asked');
  const [, secret] = emulator.token.split(':');
  expect(bot.output).not.toContain(secret);
});

test('a wrong token is told in plain words, and the page goes on', async ({ emulator }) => {
  const wrong = { ...emulator, token: '7000000001:AAwrong_token_of_nobody' };
  const bot = new RunningBot({ emulator: wrong, waitsFor: /check TELEGRAM_TOKEN/u });
  await bot.start();
  expect(bot.output).toContain('is at http://');
  expect(bot.output).not.toContain('AAwrong_token_of_nobody');
  await bot.dispose();
});

test('a second bot with the same token is explained', async ({ botFor }) => {
  const first = botFor('polling');
  const second = botFor('polling');
  await first.start();
  await second.start();
  await expect
    .poll(() => `${first.output}${second.output}`)
    .toContain('Another process asks for the updates of this bot');
});

test('it stops within ten seconds while the platform hangs', async ({ emulator, botFor }) => {
  const bot = botFor('polling');
  await bot.start();
  emulator.pace.answerLatencyMs = 60_000;
  emulator.world.user({ name: 'Ines' }).start();
  await new Promise((resolve) => setTimeout(resolve, 500));
  expect(await bot.stop()).toBeLessThan(10_000);
});
