import { createServer, type RequestListener, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { Api, HttpError, InputFile } from 'grammy';
import { afterEach, expect, test } from 'vitest';
import { plainFetch } from '../../../src/channels/telegram/plain-fetch.ts';
import { failureOf } from '../../../src/channels/telegram/sending/failure.ts';

let server: Server | null = null;

afterEach(() => {
  server?.closeAllConnections();
  server?.close();
  server = null;
});

async function apiOf(answer: RequestListener): Promise<Api> {
  const started = createServer(answer);
  server = started;
  await new Promise<void>((resolve) => started.listen(0, '127.0.0.1', resolve));
  const { port } = started.address() as AddressInfo;
  return new Api('1:x', { apiRoot: `http://127.0.0.1:${port}`, fetch: plainFetch });
}

async function failureIn(act: Promise<unknown>) {
  const error: unknown = await act.then(
    () => null,
    (reason: unknown) => reason,
  );
  return failureOf(error);
}

test('a call goes out as JSON and its answer comes back, in whatever pieces', async () => {
  let got = '';
  const api = await apiOf((request, response) => {
    request.setEncoding('utf8').on('data', (chunk: string) => {
      got += chunk;
    });
    request.once('end', () => {
      const answer = Buffer.from('{"ok":true,"result":{"first_name":"Zoë"}}');
      response.write(answer.subarray(0, answer.indexOf('ë') + 1));
      setImmediate(() => response.end(answer.subarray(answer.indexOf('ë') + 1)));
    });
  });
  expect(await api.getChat('7')).toEqual({ first_name: 'Zoë' });
  expect(JSON.parse(got)).toEqual({ chat_id: '7' });
});

test('a file goes out as a form', async () => {
  let got = '';
  const api = await apiOf((request, response) => {
    expect(request.headers['content-type']).toMatch(/^multipart\/form-data; boundary=/u);
    request.setEncoding('latin1').on('data', (chunk: string) => {
      got += chunk;
    });
    request.once('end', () => response.end('{"ok":true,"result":{"message_id":5}}'));
  });
  await api.sendPhoto(7, new InputFile(Buffer.from('the bytes'), 'picture.png'));
  expect(got).toContain('the bytes');
});

test('a refusal is the platform’s, a page that of a gateway, and a broken answer is in doubt', async () => {
  const answers: RequestListener[] = [
    (_, response) => {
      response.writeHead(400).end('{"ok":false,"error_code":400,"description":"no"}');
    },
    (_, response) => {
      response.writeHead(502).end('<html>Bad Gateway</html>');
    },
    (_, response) => {
      response.writeHead(200, { 'content-length': '100' });
      response.write('{"ok"', () => response.destroy());
    },
  ];
  const api = await apiOf((request, response) => {
    answers.shift()!(request, response);
  });
  const failures = [];
  for (let n = 0; n < 3; n += 1) failures.push(await failureIn(api.sendMessage(7, 'hello')));
  expect(failures.map((failure) => failure?.kind)).toEqual(['refused', 'unwell', 'lost']);
});

test('a call given up leaves at once, and counts as in doubt', async () => {
  let hear: () => void = () => undefined;
  const asked = new Promise<void>((resolve) => {
    hear = resolve;
  });
  const api = await apiOf(() => {
    hear();
  });
  const giveUp = new AbortController();
  const failure = failureIn(api.getMe(giveUp.signal as never));
  await asked;
  giveUp.abort();
  expect(await failure).toEqual({ kind: 'lost', because: 'AbortError' });
  await expect(api.getMe(giveUp.signal as never)).rejects.toBeInstanceOf(HttpError);
});
