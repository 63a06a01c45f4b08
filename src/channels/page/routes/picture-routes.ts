import { type Context, Hono } from 'hono';
import type { OutgoingNo } from '../../../assistant/outgoing.ts';
import { photoIn } from '../../../assistant/photo-in.ts';
import { pictureIn } from '../../../assistant/replies/picture.ts';
import { readerOf } from '../../../wording/reader-of.ts';
import { channel } from '../page-options.ts';
import { answerError, greenhouseOf, type Rooms } from './visit.ts';

/** What a message shows never changes, but the words in it follow the set-up. */
const keptForS = 3600;

/** The pictures in the chat, drawn when a page asks for them, and the photos that members attached. */
export function pictureRoutes(rooms: Rooms): Hono {
  const routes = new Hono();
  routes.get('/pictures/:file{[0-9]{1,12}\\.png}', async (c) => {
    const { store, greenhouseId, drawPicture } = rooms.options;
    const no = Number.parseInt(c.req.param('file'), 10) as OutgoingNo;
    const outgoing = await store.read(greenhouseId, (ledger) => ledger.outgoing(no));
    const picture = outgoing && pictureIn(outgoing.reply);
    if (!picture) return answerError(c, rooms, 404, (phrases) => phrases.notFound);
    const greenhouse = await greenhouseOf(rooms);
    const as = c.req.query('as') ?? '';
    const member = greenhouse.members.find(({ handle }) => handle === as);
    const reader = readerOf(as, greenhouse, outgoing.atMs);
    const png = await drawPicture(picture, member?.language ?? 'en', reader);
    return c.body(new Uint8Array(png), 200, {
      'Content-Type': 'image/png',
      'Cache-Control': `private, max-age=${keptForS}`,
    });
  });
  routes.get('/photos/:no{[0-9]{1,12}}', async (c) => {
    const { store, greenhouseId } = rooms.options;
    const no = Number(c.req.param('no')) as OutgoingNo;
    const outgoing = await store.read(greenhouseId, (ledger) => ledger.outgoing(no));
    const photo = outgoing && photoIn(outgoing.reply);
    const bytes = photo && (await store.photos.bytes(greenhouseId, photo));
    if (!bytes) return answerError(c, rooms, 404, (phrases) => phrases.notFound);
    return showPhoto(c, bytes);
  });
  // One that was attached here is known by the mark of its bytes.
  routes.get('/photos/:id{[0-9a-f]{64}}', async (c) => {
    const { store, greenhouseId } = rooms.options;
    const bytes = await store.photos.bytes(greenhouseId, { channel, id: c.req.param('id') });
    if (!bytes) return answerError(c, rooms, 404, (phrases) => phrases.notFound);
    return showPhoto(c, bytes);
  });
  return routes;
}

function showPhoto(c: Context, bytes: Uint8Array): Response {
  return c.body(new Uint8Array(bytes), 200, {
    // Named an image of whatever kind, it is shown as one and never as anything else.
    'Content-Type': 'image/jpeg',
    'Cache-Control': `private, max-age=${keptForS}`,
  });
}
