import { autoRetry } from '@grammyjs/auto-retry';
import { HttpError } from 'grammy';
import { expect } from 'vitest';
import { refusal, test } from './emulated.ts';
import {
  badGateway,
  dropAfter,
  dropBefore,
  flooded,
  hang,
  refused,
  serverError,
  slow,
} from './state/fault.ts';

test('429 and 500 strike the next calls and are then over', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  emulator.faults.arm(flooded(7));
  emulator.faults.arm(serverError(), { times: 2 });
  await expect(api.sendMessage(asha.id, 'x')).rejects.toMatchObject({
    error_code: 429,
    description: 'Too Many Requests: retry after 7',
    parameters: { retry_after: 7 },
  });
  for (let time = 0; time < 2; time += 1) {
    await expect(api.sendMessage(asha.id, 'x')).rejects.toMatchObject(
      refusal(500, 'Internal Server Error'),
    );
  }
  await api.sendMessage(asha.id, 'through');
  expect(asha.chat.fromBot.map((message) => message.text)).toEqual(['through']);
});

test('a client that retries gets through', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  api.config.use(autoRetry({ maxRetryAttempts: 3, maxDelaySeconds: 30, rethrowHttpErrors: true }));
  emulator.faults.arm(flooded(1));
  await api.sendMessage(asha.id, 'x');
  expect(emulator.calls.of('sendMessage').map((call) => call.outcome?.kind)).toEqual([
    'refused',
    'ok',
  ]);
});

test('a connection dropped before leaves nothing, one dropped after leaves the message', async ({
  emulator,
  api,
}) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  emulator.faults.arm(dropBefore());
  await expect(api.sendMessage(asha.id, 'before')).rejects.toThrow(HttpError);
  expect(asha.chat.fromBot).toEqual([]);
  emulator.faults.arm(dropAfter());
  await expect(api.sendMessage(asha.id, 'after')).rejects.toThrow(HttpError);
  expect(asha.chat.fromBot.map((message) => message.text)).toEqual(['after']);
  expect(emulator.calls.of('sendMessage').map((call) => call.outcome)).toEqual([
    { kind: 'dropped', accepted: false },
    { kind: 'dropped', accepted: true },
  ]);
});

test('an answer that is no JSON comes as a proxy’s page', async ({ emulator, api }) => {
  emulator.faults.arm(badGateway());
  await expect(api.getMe()).rejects.toThrow(HttpError);
});

test('a hanging call ends when the caller gives up', async ({ emulator }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  emulator.faults.arm(hang());
  const leaving = new AbortController();
  const address = `${emulator.url}/bot${emulator.token}/sendMessage?chat_id=${asha.id}&text=x`;
  const left = expect(fetch(address, { signal: leaving.signal })).rejects.toThrow();
  await expect.poll(() => emulator.calls.of('sendMessage').length).toBe(1);
  leaving.abort();
  await left;
  await emulator.calls.until((call) => call.outcome?.kind === 'dropped');
  expect(asha.chat.fromBot).toEqual([]);
});

test('a slow call is overtaken by the next one', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  emulator.faults.arm(slow(2000));
  const first = api.sendMessage(asha.id, 'slow');
  await expect.poll(() => emulator.calls.of('sendMessage').length).toBe(1);
  await Promise.all([first, api.sendMessage(asha.id, 'quick')]);
  expect(asha.chat.fromBot.map((message) => message.text)).toEqual(['quick', 'slow']);
});

test('faults can be aimed by method, count and content, and lifted', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  const bo = emulator.world.user({ name: 'Bo' });
  asha.start();
  bo.start();
  const always = emulator.faults.arm(refused(403, 'Forbidden: bot was blocked by the user'), {
    method: ['sendMessage', 'sendPhoto'],
    times: Number.POSITIVE_INFINITY,
    where: (payload) => payload['chat_id'] === bo.id,
  });
  const third = emulator.faults.arm(serverError(502, 'Bad Gateway'), {
    method: 'sendMessage',
    skip: 2,
  });
  await api.getMe();
  await api.sendMessage(asha.id, '1');
  await expect(api.sendMessage(bo.id, 'x')).rejects.toMatchObject({ error_code: 403 });
  await api.sendMessage(asha.id, '2');
  await expect(api.sendMessage(asha.id, '3')).rejects.toMatchObject({ error_code: 502 });
  await expect(api.sendMessage(bo.id, 'x')).rejects.toMatchObject({ error_code: 403 });
  expect([always.hits, third.hits]).toEqual([2, 1]);
  always.lift();
  await api.sendMessage(bo.id, 'x');
});

test('a lost answer to getUpdates brings the same updates again', async ({ emulator, api }) => {
  emulator.world.user({ name: 'Asha' }).dm('once');
  emulator.faults.arm(dropAfter(), { method: 'getUpdates' });
  await expect(api.getUpdates()).rejects.toThrow(HttpError);
  expect((await api.getUpdates())[0]?.message?.text).toBe('once');
});
