import { InlineKeyboard } from 'grammy';
import { expect } from 'vitest';
import { refusal, test } from './emulated.ts';

const TOO_OLD = refusal(
  400,
  'Bad Request: query is too old and response timeout expired or query ID is invalid',
);

test('a pressed button reaches the bot and its answer reaches the member', async ({
  emulator,
  api,
}) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  await api.sendMessage(asha.id, 'Filled?', {
    reply_markup: new InlineKeyboard().text('Done', 'd:1'),
  });
  const answer = asha.press(asha.chat.last!, 'Done');
  const query = (await api.getUpdates()).at(-1)?.callback_query;
  expect(query).toMatchObject({ data: 'd:1', from: { id: asha.id }, message: { text: 'Filled?' } });
  await api.answerCallbackQuery(query!.id, { text: 'Thank you', show_alert: true });
  expect(await answer).toEqual({ kind: 'answered', text: 'Thank you', alert: true });
  await expect(api.answerCallbackQuery(query!.id)).rejects.toMatchObject(TOO_OLD);
});

test('an answer that comes too late is refused and the member sees none', async ({
  emulator,
  api,
}) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  await api.sendMessage(asha.id, 'Filled?', {
    reply_markup: new InlineKeyboard().text('Done', 'd'),
  });
  const answer = asha.press(asha.chat.last!, 'Done');
  const query = (await api.getUpdates()).at(-1)!.callback_query!;
  emulator.world.clock.advance(60_000);
  await expect(api.answerCallbackQuery(query.id)).rejects.toMatchObject(TOO_OLD);
  expect(await answer).toEqual({ kind: 'unanswered' });
});

test('without any answer the member is let go after a while', async ({ emulator, api }) => {
  emulator.pace.callbackLifetimeS = 0.05;
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  await api.sendMessage(asha.id, 'Filled?', {
    reply_markup: new InlineKeyboard().text('Done', 'd'),
  });
  expect(await asha.press(asha.chat.last!, 'Done')).toEqual({ kind: 'unanswered' });
});

test('an answer holds 200 characters', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  await api.sendMessage(asha.id, 'Filled?', {
    reply_markup: new InlineKeyboard().text('Done', 'd'),
  });
  const answer = asha.press(asha.chat.last!, 'Done');
  const query = (await api.getUpdates()).at(-1)!.callback_query!;
  await expect(api.answerCallbackQuery(query.id, { text: 'x'.repeat(201) })).rejects.toMatchObject(
    refusal(400, 'Bad Request: MESSAGE_TOO_LONG'),
  );
  await api.answerCallbackQuery(query.id, { text: 'x'.repeat(200) });
  expect(await answer).toMatchObject({ kind: 'answered' });
});

test('a button that has gone since can still be pressed by who has it on the screen', async ({
  emulator,
  api,
}) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  const sent = await api.sendMessage(asha.id, 'Filled?', {
    reply_markup: new InlineKeyboard().text('Done', 'd'),
  });
  const before = asha.chat.last!;
  await api.editMessageText(asha.id, sent.message_id, 'Filled.');
  expect(() => asha.press(asha.chat.last!, 'Done')).toThrow('No button "Done"');
  void asha.press(before, 'Done');
  expect((await api.getUpdates()).at(-1)?.callback_query?.message).toMatchObject({
    text: 'Filled.',
  });
  await api.deleteMessage(asha.id, sent.message_id);
  void asha.press(before, 'Done');
  expect((await api.getUpdates()).at(-1)?.callback_query?.message?.date).toBe(0);
});
