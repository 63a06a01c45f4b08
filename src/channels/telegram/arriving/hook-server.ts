import { type ServerType, serve } from '@hono/node-server';
import type { Hono } from 'hono';

export interface HookServer {
  /**
   * Takes no more requests and ends when those under way are answered; what is still open when the
   * patience is over is cut off, and the platform brings it again.
   */
  close(patience: AbortSignal): Promise<void>;
}

/** The platform keeps connections for its next request: they are let go as soon as they are idle. */
const lookForIdleMs = 50;

/** @throws Error where the address cannot be had. */
export async function serveHook(app: Hono, hostname: string, port: number): Promise<HookServer> {
  const server = await new Promise<ServerType>((resolve, reject) => {
    const starting = serve({ fetch: app.fetch, hostname, port });
    starting.once('error', reject);
    starting.once('listening', () => {
      resolve(starting);
    });
  });
  return { close: (patience) => closed(server, patience) };
}

function closed(server: ServerType, patience: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    const letGo = setInterval(() => {
      if (!('closeIdleConnections' in server)) return;
      if (patience.aborted) server.closeAllConnections();
      else server.closeIdleConnections();
    }, lookForIdleMs);
    server.close(() => {
      clearInterval(letGo);
      resolve();
    });
  });
}
