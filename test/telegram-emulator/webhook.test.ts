import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Update } from 'grammy/types';
import { expect } from 'vitest';
import { retryDelayS } from './delivery/retry-delay.ts';
import { test as base, refusal } from './emulated.ts';

type Received = { readonly update: Update; readonly secret: unknown };
type Hook = {
  readonly url: string;
  readonly received: Received[];
  /** Answers for the requests to come; 200 when there are none left. */
  readonly answers: ((response: ServerResponse) => void)[];
};

const test = base.extend<{ readonly hook: Hook }>({
  // Vitest reads from the pattern which fixtures this one needs: none.
  hook: async ({}, use) => {
    const received: Received[] = [];
    const answers: Hook['answers'] = [];
    const server: Server = createServer((request, response) => {
      void read(request).then((body) => {
        received.push({
          update: JSON.parse(body) as Update,
          secret: request.headers['x-telegram-bot-api-secret-token'],
        });
        (answers.shift() ?? ok)(response);
      });
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    const { port } = server.address() as AddressInfo;
    await use({ url: `http://127.0.0.1:${port}/hook`, received, answers });
    server.closeAllConnections();
    server.close();
  },
});

const read = async (request: IncomingMessage): Promise<string> => {
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks).toString();
};
const ok = (response: ServerResponse): void => {
  response.end();
};
const failing = (response: ServerResponse): void => {
  response.writeHead(500, 'Internal Server Error').end();
};
const dropped = (response: ServerResponse): void => {
  response.destroy();
};
const texts = (hook: Hook): readonly (string | undefined)[] =>
  hook.received.map(({ update }) => update.message?.text);

test('updates come to the webhook with its secret, waiting ones first', async ({
  emulator,
  api,
  hook,
}) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.dm('before');
  await api.setWebhook(hook.url, { secret_token: 'open-sesame_1' });
  asha.dm('after');
  await emulator.drained();
  expect(texts(hook)).toEqual(['before', 'after']);
  expect(hook.received.map(({ secret }) => secret)).toEqual(['open-sesame_1', 'open-sesame_1']);
});

test('a failed update comes again and again, and those behind it in the chat wait', async ({
  emulator,
  api,
  hook,
}) => {
  const asha = emulator.world.user({ name: 'Asha' });
  const bo = emulator.world.user({ name: 'Bo' });
  const held: ServerResponse[] = [];
  hook.answers.push(failing, dropped, failing, (response) => held.push(response));
  asha.dm('one');
  asha.dm('two');
  await api.setWebhook(hook.url);
  await expect.poll(() => held.length).toBe(1);
  expect(await api.getWebhookInfo()).toMatchObject({ url: hook.url, pending_update_count: 2 });
  ok(held[0]!);
  bo.dm('not held up');
  await emulator.drained();
  expect(texts(hook).filter((text) => text !== 'not held up')).toEqual([
    'one',
    'one',
    'one',
    'one',
    'two',
  ]);
  const ids = new Set(hook.received.slice(0, 3).map(({ update }) => update.update_id));
  expect(ids.size).toBe(1);
  expect((await api.getWebhookInfo()).last_error_message).toBe(
    'Wrong response from the webhook: 500 Internal Server Error',
  );
});

test('the delays between tries double up to a minute', () => {
  expect([1, 2, 3, 4, 5, 6, 7, 8].map(retryDelayS)).toEqual([0, 2, 4, 8, 16, 32, 60, 60]);
});

test('an update that came through ends the growing of delays in its chat', async ({
  emulator,
  api,
  hook,
}) => {
  emulator.pace.webhookRetryFactor = 1e6;
  const asha = emulator.world.user({ name: 'Asha' });
  hook.answers.push(failing, ok, failing, ok);
  asha.dm('one');
  asha.dm('two');
  await api.setWebhook(hook.url);
  await emulator.drained();
  expect(texts(hook)).toEqual(['one', 'one', 'two', 'two']);
});

test('an update whose answer got lost comes a second time', async ({ emulator, api, hook }) => {
  emulator.webhook.loseNextAnswers(1);
  await api.setWebhook(hook.url);
  emulator.world.user({ name: 'Asha' }).dm('one');
  await emulator.drained();
  expect(texts(hook)).toEqual(['one', 'one']);
  expect(hook.received[0]?.update.update_id).toBe(hook.received[1]?.update.update_id);
});

test('a webhook that takes too long counts as failed', async ({ emulator, api, hook }) => {
  emulator.pace.webhookTimeoutMs = 100;
  hook.answers.push(() => undefined);
  await api.setWebhook(hook.url);
  emulator.world.user({ name: 'Asha' }).dm('one');
  await emulator.drained();
  expect(texts(hook)).toEqual(['one', 'one']);
  expect((await api.getWebhookInfo()).last_error_message).toBe('Read timeout expired');
});

test('a webhook may answer with a method to call', async ({ emulator, api, hook }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  hook.answers.push((response) => {
    response.end(
      JSON.stringify({ method: 'sendMessage', chat_id: asha.id, text: 'straight back' }),
    );
  });
  await api.setWebhook(hook.url);
  asha.dm('one');
  expect((await asha.chat.next()).text).toBe('straight back');
});

test('taking the webhook away stops it, dropping what waits if told to', async ({
  emulator,
  api,
  hook,
}) => {
  await api.setWebhook(hook.url);
  await api.deleteWebhook();
  const asha = emulator.world.user({ name: 'Asha' });
  asha.dm('one');
  expect((await api.getUpdates())[0]?.message?.text).toBe('one');
  await api.deleteWebhook({ drop_pending_updates: true });
  expect(await api.getUpdates()).toEqual([]);
  expect(hook.received).toEqual([]);
  expect(await api.getWebhookInfo()).toEqual({
    url: '',
    has_custom_certificate: false,
    pending_update_count: 0,
  });
});

test('bad secrets and addresses are refused', async ({ api, hook }) => {
  await expect(api.setWebhook(hook.url, { secret_token: 'no spaces' })).rejects.toMatchObject(
    refusal(400, 'Bad Request: secret token contains unallowed characters'),
  );
  await expect(api.setWebhook(hook.url, { secret_token: 'x'.repeat(257) })).rejects.toMatchObject(
    refusal(400, 'Bad Request: secret token is too long'),
  );
  await expect(api.setWebhook('ftp://example.org')).rejects.toMatchObject(
    refusal(400, 'Bad Request: bad webhook: An HTTPS URL must be provided for webhook'),
  );
});
