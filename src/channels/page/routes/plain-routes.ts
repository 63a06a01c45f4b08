import { Hono } from 'hono';
import { assetNames } from '../assets.ts';
import type { Rooms } from './visit.ts';

const keptForS = 365 * 24 * 3600;

/** The page's own files, and what a watcher of the process asks for. */
export function plainRoutes({ assets, options }: Rooms): Hono {
  const routes = new Hono();
  routes.get('/livez', (c) => c.text('ok'));
  routes.get('/readyz', async (c) => {
    const isReady = await options.isReady().catch((error: unknown) => {
      options.report(error, 'asking whether the database answers');
      return false;
    });
    return isReady ? c.text('ok') : c.text('not ready', 503);
  });
  for (const name of assetNames) {
    const { body, mediaType } = assets[name];
    routes.get(`/assets/${name}`, (c) =>
      c.body(body, 200, {
        'Content-Type': mediaType,
        'Cache-Control': `public, max-age=${keptForS}, immutable`,
      }),
    );
  }
  return routes;
}
