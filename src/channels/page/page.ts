import { Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { loadAssets } from './assets.ts';
import { isAllowedHost } from './guards/allowed-host.ts';
import { responseHeaders } from './guards/response-headers.ts';
import { isSameOrigin } from './guards/same-origin.ts';
import type { PageOptions } from './page-options.ts';
import { mostPhotoMb } from './photo-form.ts';
import { Road } from './road.ts';
import { chatRoutes } from './routes/chat-routes.ts';
import { liveRoutes } from './routes/live-routes.ts';
import { pictureRoutes } from './routes/picture-routes.ts';
import { plainRoutes } from './routes/plain-routes.ts';
import { setUpRoutes } from './routes/set-up-routes.ts';
import { answerError, type Rooms } from './routes/visit.ts';
import { type Serving, serveApp } from './serving.ts';
import { Watchers } from './watchers.ts';

/** A page in the browser: the chat with the bot, and today's duties beside it. */
export interface Page {
  /** For tests and for mounting elsewhere; `listen` serves it. */
  readonly app: Hono;
  /**
   * Handles what was left unhandled, then listens.
   *
   * @throws Error where the address cannot be had.
   */
  listen(): Promise<{ readonly port: number }>;
  /** Sends what waits in the outbox for the page; call it whenever something may wait there. */
  deliver(): Promise<void>;
  /** Shows open pages what was handled by another channel. */
  refresh(): void;
  /** Ends open pages and stops listening; what is being handled is finished. */
  close(): Promise<void>;
}

const longestFormBytes = 64 * 1024;
const longestFileBytes = 1024 * 1024;
/** The photo and the rest of its form. */
const longestPhotoBytes = mostPhotoMb * 1024 * 1024 + longestFormBytes;

/** What is sent to them is stored before it is handled. */
const sendingPaths = ['/messages', '/presses', '/set-up/photos'];

/** @throws Error where a file of the page is missing from the assets folder. */
export async function createPage(options: PageOptions): Promise<Page> {
  const watchers = new Watchers();
  const road = new Road(options, watchers);
  const rooms: Rooms = { options, assets: await loadAssets(options.assetsFolder), road, watchers };
  const app = appOf(rooms);
  let serving: Serving | null = null;
  return {
    app,
    async listen() {
      await road.recover();
      serving = await serveApp(app, options.address);
      return { port: serving.port };
    },
    deliver: () => road.deliver(),
    refresh: () => {
      watchers.wakeAll();
    },
    async close() {
      watchers.stopAll();
      const ending = serving;
      serving = null;
      await ending?.close();
    },
  };
}

function appOf(rooms: Rooms): Hono {
  const { hostNames, report } = rooms.options;
  const app = new Hono();
  app.use(responseHeaders);
  app.route('/', plainRoutes(rooms));
  app.use(async (c, next) => {
    const host = c.req.header('Host');
    if (!isAllowedHost(host, hostNames)) {
      return c.text(
        `This page is not set up to be visited as "${host ?? ''}"; its host names are configured where it is started.`,
        421,
      );
    }
    if (c.req.method !== 'GET' && c.req.method !== 'HEAD') {
      const origin = c.req.header('Origin');
      const fetchSite = c.req.header('Sec-Fetch-Site');
      if (!isSameOrigin({ host, origin, fetchSite })) {
        return answerError(c, rooms, 403, (phrases) => phrases.fromElsewhere);
      }
    }
    return next();
  });
  for (const path of ['/speaker', '/messages', '/presses']) {
    app.use(path, limitOf(longestFormBytes, '64 KB', rooms));
  }
  app.use('/set-up', limitOf(longestFileBytes, '1 MB', rooms));
  app.use('/set-up/photos', limitOf(longestPhotoBytes, `${mostPhotoMb} MB`, rooms));
  app.route('/', chatRoutes(rooms));
  app.route('/', liveRoutes(rooms));
  app.route('/', pictureRoutes(rooms));
  app.route('/', setUpRoutes(rooms));
  app.notFound((c) => answerError(c, rooms, 404, (phrases) => phrases.notFound));
  app.onError((error, c) => {
    report(error, `answering ${c.req.method} ${c.req.path}`);
    const isSending = sendingPaths.includes(c.req.path);
    return answerError(c, rooms, 500, ({ notHandledYet, broken }) =>
      isSending ? notHandledYet : broken,
    );
  });
  return app;
}

function limitOf(maxSize: number, said: string, rooms: Rooms) {
  const onError = (c: Parameters<typeof answerError>[0]) =>
    answerError(c, rooms, 413, (phrases) => phrases.tooLarge(said));
  return bodyLimit({ maxSize, onError });
}
