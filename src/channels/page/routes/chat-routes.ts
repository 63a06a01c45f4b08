import { type Context, Hono } from 'hono';
import { beforeAll, readCursor } from '../cursor.ts';
import { messageIdOf, mostCharacters, pressIdOf, readMessageForm } from '../message-form.ts';
import { newsSince } from '../news.ts';
import { phrasesOf } from '../phrases/phrases-of.ts';
import { rememberSpeaker, speakerOf } from '../speaker.ts';
import { firstMost, readTalk } from '../talk.ts';
import { chatPage } from '../views/chat-page.ts';
import { answerError, greenhouseOf, isFromScript, type Rooms } from './visit.ts';

const mostShown = 3200;

/** The chat as a page, and the two forms in it. */
export function chatRoutes(rooms: Rooms): Hono {
  const routes = new Hono();
  routes.get('/', async (c) => {
    const speaker = speakerOf(c, await greenhouseOf(rooms));
    return showChat(c, rooms, speaker.handle, { say: c.req.query('say') ?? '', error: null });
  });
  routes.post('/speaker', async (c) => {
    const { as } = await c.req.parseBody();
    const member = await memberNamed(rooms, as);
    if (!member) return answerNotAMember(c, rooms, as);
    rememberSpeaker(c, member.handle);
    return c.redirect('/', 303);
  });
  routes.post('/messages', (c) => takeMessage(c, rooms));
  routes.post('/presses', (c) => takePress(c, rooms));
  return routes;
}

async function showChat(
  c: Context,
  rooms: Rooms,
  handle: string,
  { say, error }: { readonly say: string; readonly error: string | null },
): Promise<Response> {
  const most = readMost(c.req.query('most'));
  const talk = await readTalk(rooms.options, handle, most);
  if (!talk) return answerNotAMember(c, rooms, handle);
  const isMore = talk.isCut && most < mostShown;
  const page = {
    talk,
    assets: rooms.assets,
    say: say.slice(0, mostCharacters),
    error,
    earlierHref: isMore ? `/?most=${Math.min(most * 4, mostShown)}` : null,
  };
  return c.html(chatPage(page), error === null ? 200 : 422);
}

function readMost(text: string | undefined): number {
  const most = Number(text ?? firstMost);
  return Number.isInteger(most) && most >= 1 && most <= mostShown ? most : firstMost;
}

async function takeMessage(c: Context, rooms: Rooms): Promise<Response> {
  const { options, road } = rooms;
  const body = await c.req.parseBody();
  const member = await memberNamed(rooms, body['as']);
  if (!member) return answerNotAMember(c, rooms, body['as']);
  const form = readMessageForm(body, phrasesOf[member.language]);
  if (!form.ok) {
    if (isFromScript(c)) return c.json({ error: form.because }, 422);
    return showChat(c, rooms, member.handle, { say: form.text, error: form.because });
  }
  await road.takeIn(messageIdOf(options.greenhouseId, form), {
    kind: 'message',
    from: member.handle,
    chat: null,
    text: form.text,
    writtenAtMs: options.nowMs() - form.heldMs,
    replyTo: null,
  });
  return answerTaken(c, rooms, member.handle, body['after']);
}

async function takePress(c: Context, rooms: Rooms): Promise<Response> {
  const { options, road } = rooms;
  const { as, token, after } = await c.req.parseBody();
  const member = await memberNamed(rooms, as);
  if (!member) return answerNotAMember(c, rooms, as);
  if (typeof token !== 'string' || !/^[\d.]{3,20}$/.test(token)) {
    return answerError(c, rooms, 422, (phrases) => phrases.notReadable);
  }
  const { handle } = member;
  const press = { kind: 'press', from: handle, chat: null, token } as const;
  await road.takeIn(pressIdOf(options.greenhouseId, handle, token), press);
  return answerTaken(c, rooms, handle, after);
}

/** The script gets what is new, in case its stream is held up on the way; a plain form goes back to the chat. */
async function answerTaken(
  c: Context,
  rooms: Rooms,
  handle: string,
  after: unknown,
): Promise<Response> {
  if (!isFromScript(c)) return c.redirect('/#latest', 303);
  const talk = await readTalk(rooms.options, handle, firstMost);
  if (!talk) return answerNotAMember(c, rooms, handle);
  const cursor = readCursor(typeof after === 'string' ? after : null) ?? beforeAll;
  return c.json(await newsSince(cursor, talk));
}

async function memberNamed(rooms: Rooms, handle: unknown) {
  const { members } = await greenhouseOf(rooms);
  return members.find((member) => member.handle === handle) ?? null;
}

function answerNotAMember(c: Context, rooms: Rooms, handle: unknown): Promise<Response> {
  const named = typeof handle === 'string' ? handle.slice(0, 100) : '';
  return answerError(c, rooms, 422, (phrases) => phrases.notAMember(named));
}
