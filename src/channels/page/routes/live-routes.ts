import { Hono } from 'hono';
import { type SSEStreamingApi, streamSSE } from 'hono/streaming';
import { beforeAll, type Cursor, readCursor } from '../cursor.ts';
import { type News, newsSince, unseen } from '../news.ts';
import { firstMost, readTalk } from '../talk.ts';
import type { Watcher } from '../watchers.ts';
import type { Rooms } from './visit.ts';

/** A page that is open looks anew this often, in case another process handled something; it also shows a broken line. */
const lookAgainMs = 20_000;
const reconnectAfterMs = 2_000;
/** Each open page holds a connection. */
const mostOpenPages = 200;

/** What happens while a page is open, as server-sent events; each carries the page's new cursor as its id. */
export function liveRoutes(rooms: Rooms): Hono {
  const routes = new Hono();
  routes.get('/events', (c) => {
    const { watchers } = rooms;
    if (watchers.count >= mostOpenPages) return c.text('too many open pages', 503);
    const handle = c.req.query('as') ?? '';
    const after = c.req.header('Last-Event-ID') ?? c.req.query('after');
    const cursor = readCursor(after) ?? beforeAll;
    // Proxies that gather an answer before passing it on are asked not to.
    c.header('X-Accel-Buffering', 'no');
    return streamSSE(c, async (stream) => {
      const watcher = watchers.add();
      stream.onAbort(() => {
        watchers.remove(watcher);
      });
      try {
        await tellNews(rooms, { stream, watcher, handle, cursor });
      } catch (error) {
        rooms.options.report(error, 'telling an open page the news');
      } finally {
        watchers.remove(watcher);
      }
    });
  });
  return routes;
}

interface OpenPage {
  readonly stream: SSEStreamingApi;
  readonly watcher: Watcher;
  readonly handle: string;
  readonly cursor: Cursor;
}

async function tellNews(rooms: Rooms, page: OpenPage): Promise<void> {
  const { stream, watcher, handle, cursor } = page;
  // Sent at once, so that the page knows it is connected.
  await stream.write(`retry: ${reconnectAfterMs}\n\n`);
  let shown: News | null = null;
  while (!watcher.isStopped) {
    const talk = await readTalk(rooms.options, handle, firstMost);
    if (!talk) return;
    const news = await newsSince(cursor, talk);
    const toTell = unseen(news, shown);
    if (toTell) {
      await stream.writeSSE({ event: 'news', id: news.cursor, data: JSON.stringify(toTell) });
    } else {
      await stream.write(': still here\n\n');
    }
    shown = news;
    await watcher.next(lookAgainMs);
  }
}
