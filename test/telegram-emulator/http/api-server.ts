import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { createAdaptorServer, type HttpBindings } from '@hono/node-server';
import { RESPONSE_ALREADY_SENT } from '@hono/node-server/utils/response';
import { type Context, Hono } from 'hono';
import type { Platform } from '../state/platform.ts';
import { Refusal } from '../wire/refusal.ts';
import { carryOut, refusalAnswer, type WireAnswer } from './carry-out.ts';
import { readRequest } from './read-request.ts';

type Bindings = { Bindings: HttpBindings };

/** The documented addresses: `/bot<token>/<method>` and `/file/bot<token>/<file_path>`. */
const METHOD_PATH = /^\/bot([^/]+)\/([A-Za-z]+)$/;
const FILE_PATH = /^\/file\/bot([^/]+)\/(.+)$/;

/** A listening server; `stop` cuts what is still connected. */
export type ApiServer = { readonly url: string; readonly stop: () => Promise<void> };

/** Serves the platform on the loopback address; port 0 takes any free one. */
export const serveApi = async (platform: Platform, port: number): Promise<ApiServer> => {
  const app = new Hono<Bindings>();
  app.all('*', async (context) => {
    const method = METHOD_PATH.exec(context.req.path);
    if (method !== null) return send(context, await answerMethod(platform, context, method));
    const file = FILE_PATH.exec(context.req.path);
    if (file !== null) return answerFile(platform, context, file);
    return send(context, refusalAnswer(new Refusal(404, 'Not Found')));
  });
  const server = createAdaptorServer({ fetch: app.fetch }) as Server;
  await new Promise<void>((resolve) => server.listen(port, '127.0.0.1', resolve));
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    stop: () =>
      new Promise((resolve) => {
        server.close(() => {
          resolve();
        });
        server.closeAllConnections();
      }),
  };
};

const answerMethod = async (
  platform: Platform,
  context: Context<Bindings>,
  [, token, name = '']: RegExpExecArray,
): Promise<WireAnswer> => {
  if (token !== platform.bot.token) return refusalAnswer(new Refusal(401, 'Unauthorized'));
  const parameters = await readRequest(context.req.raw);
  if (parameters instanceof Refusal) return refusalAnswer(parameters);
  const gone = new AbortController();
  context.env.outgoing.once('close', () => {
    if (!context.env.outgoing.writableFinished) gone.abort();
  });
  return carryOut(platform, name, parameters, gone.signal);
};

const answerFile = (
  platform: Platform,
  context: Context<Bindings>,
  [, token, path = '']: RegExpExecArray,
): Response => {
  const file = token === platform.bot.token ? platform.files.byPath(path) : undefined;
  if (file === undefined) return send(context, refusalAnswer(new Refusal(404, 'Not Found')));
  return new Response(Buffer.from(file.bytes), {
    headers: { 'content-type': 'application/octet-stream' },
  });
};

const send = (context: Context<Bindings>, answer: WireAnswer): Response => {
  if (answer.kind === 'cut') {
    context.env.incoming.socket.destroy();
    return RESPONSE_ALREADY_SENT;
  }
  const json = answer.kind === 'json';
  return new Response(json ? JSON.stringify(answer.body) : answer.body, {
    status: answer.status,
    headers: { 'content-type': json ? 'application/json' : 'text/html' },
  });
};
