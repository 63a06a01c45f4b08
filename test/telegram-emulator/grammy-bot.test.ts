import { serve } from '@hono/node-server';
import { Bot, InlineKeyboard, webhookCallback } from 'grammy';
import { Hono } from 'hono';
import { expect } from 'vitest';
import { test } from './emulated.ts';
import type { Emulator } from './emulator.ts';

/** A small bot that answers texts, ticks off a duty and deep links. */
const smallBot = (emulator: Emulator): Bot => {
  const bot = new Bot(emulator.token, { client: { apiRoot: emulator.url } });
  bot.command('start', (context) => context.reply(`Welcome with ${context.match}`));
  bot.on('message:text', (context) =>
    context.reply('Filled?', { reply_markup: new InlineKeyboard().text('Done', 'done') }),
  );
  bot.callbackQuery('done', async (context) => {
    await context.editMessageText('Filled.');
    await context.answerCallbackQuery('Thank you');
  });
  return bot;
};

const tellStory = async (emulator: Emulator): Promise<void> => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start('code-1');
  expect((await asha.chat.next()).text).toBe('Welcome with code-1');
  asha.dm('what is due?');
  const question = await asha.chat.next();
  expect(question.buttons).toEqual([['Done']]);
  expect(await asha.press(question, 'Done')).toMatchObject({ kind: 'answered', text: 'Thank you' });
  expect(await asha.chat.next()).toMatchObject({ id: question.id, text: 'Filled.', buttons: [] });
  await emulator.drained();
};

test('a bot that polls serves a member', async ({ emulator }) => {
  const bot = smallBot(emulator);
  const running = bot.start();
  await tellStory(emulator);
  await bot.stop();
  await running;
});

test('a bot behind a webhook serves a member', async ({ emulator, api }) => {
  const app = new Hono();
  const secretToken = 'hush';
  app.post('/hook', webhookCallback(smallBot(emulator), 'hono', { secretToken }));
  const server = await new Promise<ReturnType<typeof serve>>((resolve) => {
    const starting = serve({ fetch: app.fetch, hostname: '127.0.0.1', port: 0 }, ({ port }) => {
      void api
        .setWebhook(`http://127.0.0.1:${port}/hook`, { secret_token: secretToken })
        .then(() => {
          resolve(starting);
        });
    });
  });
  await tellStory(emulator);
  server.close();
});
