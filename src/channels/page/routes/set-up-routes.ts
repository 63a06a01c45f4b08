import { type Context, Hono } from 'hono';
import { parseGreenhouseText } from '../../../greenhouse/file/parse-greenhouse-text.ts';
import { writeGreenhouseFile } from '../../../greenhouse/file/write-greenhouse-file.ts';
import { channel } from '../page-options.ts';
import { attachingIdOf, photoIdOf, readPhotoForm } from '../photo-form.ts';
import { phrasesOf } from '../phrases/phrases-of.ts';
import { speakerOf } from '../speaker.ts';
import { type SetUpOutcome, setUpPage } from '../views/set-up-page.ts';
import { greenhouseOf, type Rooms } from './visit.ts';

/** The greenhouse file, out and in, and photos for its systems. */
export function setUpRoutes(rooms: Rooms): Hono {
  const routes = new Hono();
  routes.get('/greenhouse.json', async (c) => {
    const file = writeGreenhouseFile(await greenhouseOf(rooms));
    c.header('Content-Disposition', 'attachment; filename="greenhouse.json"');
    return c.body(`${JSON.stringify(file, null, 2)}\n`, 200, {
      'Content-Type': 'application/json; charset=utf-8',
    });
  });
  routes.get('/set-up', (c) => showSetUp(c, rooms, null));
  routes.post('/set-up', async (c) => showSetUp(c, rooms, await importFile(c, rooms)));
  routes.post('/set-up/photos', async (c) => showSetUp(c, rooms, await attachPhoto(c, rooms)));
  return routes;
}

async function importFile(c: Context, rooms: Rooms): Promise<SetUpOutcome> {
  const { language, role } = speakerOf(c, await greenhouseOf(rooms));
  const phrases = phrasesOf[language];
  if (role !== 'grower') return { kind: 'refused', because: phrases.growersOnly };
  const { file, text: pasted } = await c.req.parseBody();
  const text = file instanceof File && file.size > 0 ? await file.text() : pasted;
  if (typeof text !== 'string' || text.trim() === '') {
    return { kind: 'refused', because: phrases.nothingChosen };
  }
  const read = parseGreenhouseText(text);
  if (!read.ok) return { kind: 'faults', faults: read.faults, text };
  const faults = await rooms.options.replaceGreenhouse(read.greenhouse);
  if (faults.length > 0) return { kind: 'faults', faults, text };
  rooms.watchers.wakeAll();
  return { kind: 'replaced', notices: read.notices };
}

async function attachPhoto(c: Context, rooms: Rooms): Promise<SetUpOutcome> {
  const { options, road } = rooms;
  const { store, greenhouseId, nowMs } = options;
  const greenhouse = await greenhouseOf(rooms);
  const { handle, language, role } = speakerOf(c, greenhouse);
  const phrases = phrasesOf[language];
  if (role !== 'grower') return { kind: 'refused', because: phrases.growersOnly };
  const form = await readPhotoForm(await c.req.parseBody(), greenhouse.systems, phrases);
  if (!form.ok) return { kind: 'photo-refused', ...form };
  const { system, note, bytes } = form;
  const photo = { channel, id: photoIdOf(bytes) };
  // First of all, so that no message ever shows a photo that is not here.
  await store.photos.keep(greenhouseId, photo, bytes);
  await road.takeIn(attachingIdOf(greenhouseId, handle, form), {
    kind: 'message',
    from: handle,
    chat: null,
    text: note,
    writtenAtMs: nowMs(),
    replyTo: null,
    photo,
    photoOf: system.id,
  });
  return { kind: 'photo-kept', system: system.name };
}

async function showSetUp(
  c: Context,
  rooms: Rooms,
  outcome: SetUpOutcome | null,
): Promise<Response> {
  const greenhouse = await greenhouseOf(rooms);
  const { language } = speakerOf(c, greenhouse);
  const phrases = phrasesOf[language];
  const page = { greenhouse, phrases, language, assets: rooms.assets, outcome };
  const isTaken = outcome === null || outcome.kind === 'replaced' || outcome.kind === 'photo-kept';
  return c.html(setUpPage(page), isTaken ? 200 : 422);
}
