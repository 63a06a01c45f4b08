import type { AddressInfo } from 'node:net';
import { type ServerType, serve } from '@hono/node-server';
import type { Hono } from 'hono';

export interface Serving {
  readonly port: number;
  /** Takes no more visitors; what is being answered is answered, for a few seconds at most. */
  close(): Promise<void>;
}

/** Browsers keep connections for their next request: they are let go as soon as they are idle. */
const lookForIdleMs = 50;
const longestAnswerMs = 5_000;

/** @throws Error where the address cannot be had. */
export async function serveApp(
  app: Hono,
  { host, port }: { readonly host: string; readonly port: number },
): Promise<Serving> {
  const server = await new Promise<ServerType>((resolve, reject) => {
    const starting = serve({ fetch: app.fetch, hostname: host, port });
    starting.once('error', reject);
    starting.once('listening', () => {
      resolve(starting);
    });
  });
  return {
    port: (server.address() as AddressInfo).port,
    close: () => closed(server),
  };
}

function closed(server: ServerType): Promise<void> {
  return new Promise((resolve, reject) => {
    const startedAtMs = performance.now();
    const letGo = setInterval(() => {
      if (!('closeIdleConnections' in server)) return;
      if (performance.now() - startedAtMs > longestAnswerMs) server.closeAllConnections();
      else server.closeIdleConnections();
    }, lookForIdleMs);
    server.close((error) => {
      clearInterval(letGo);
      if (error) reject(error);
      else resolve();
    });
  });
}
