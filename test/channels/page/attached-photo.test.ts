import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../../src/assistant/ports/store.ts';
import { languages } from '../../../src/greenhouse/member.ts';
import { openTestStore } from '../../storage/open-test-store.ts';
import { type PageUnderTest, pageUnderTest, quarryLane, said } from './page-under-test.ts';
import { jpegBytes, pngBytes, webpBytes } from './photo-bytes.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const host = 'localhost:4180';
const [bench, row] = quarryLane().systems;

interface Filled {
  readonly id?: string;
  readonly system?: string;
  readonly note?: string;
  readonly bytes?: Uint8Array;
  readonly name?: string;
  readonly as?: string;
}

/** Sends the form as a browser does; the name and the stated type of the file are the visitor's. */
async function attach(under: PageUnderTest, filled: Filled = {}): Promise<Response> {
  const { id = 'form-0001', system = bench!.id, note = '', bytes = jpegBytes(), as } = filled;
  const { name = 'tap.jpg' } = filled;
  const body = new FormData();
  body.set('id', id);
  body.set('system', system);
  body.set('note', note);
  body.set('photo', new File([Uint8Array.from(bytes)], name, { type: 'image/jpeg' }));
  return under.page.app.request('/set-up/photos', {
    method: 'POST',
    headers: { Host: host, Origin: `http://${host}`, ...(as ? { Cookie: `speaker=${as}` } : {}) },
    body,
  });
}

async function logged({ desk, greenhouseId }: PageUnderTest) {
  return (await desk.standing(greenhouseId)).logbook.all;
}

function imagesIn(html: string): readonly string[] {
  return [...html.matchAll(/<img class="picture" src="(\/photos\/[^"]+)"/g)].map(([, src]) => src!);
}

describe('a photo attached on the page', () => {
  it('is said to be kept, and comes with the steps of the work there, byte for byte', async () => {
    const under = await pageUnderTest(store);
    const answer = await attach(under, { note: 'the tap is behind the door' });
    expect(answer.status).toBe(200);
    expect(await answer.text()).toContain(`The photo is kept with ${bench!.name}`);
    expect(imagesIn(await (await under.get('/')).text())).toHaveLength(1);
    await under.post('/messages', said('how do I top up the north bench?', { as: 'tomas' }));
    const html = await (await under.get('/', { Cookie: 'speaker=tomas' })).text();
    expect(html).toContain('the tap is behind the door');
    const [shown, ...others] = imagesIn(html);
    expect(others).toEqual([]);
    const image = await under.get(shown!);
    expect(image.headers.get('Content-Type')).toBe('image/jpeg');
    expect(new Uint8Array(await image.arrayBuffer())).toEqual(jpegBytes());
  });

  it('does not come with the steps of another system, nor after it was struck out', async () => {
    const under = await pageUnderTest(store);
    await attach(under);
    await under.post('/messages', said(`how do I top up the ${row!.name}?`, { as: 'tomas' }));
    const tomas = { Cookie: 'speaker=tomas' };
    expect(imagesIn(await (await under.get('/', tomas)).text())).toEqual([]);
    await under.post('/messages', said('undo'));
    expect((await logged(under)).map(({ struck }) => struck !== null)).toEqual([true]);
    await under.post('/messages', said('how do I top up the north bench?', { as: 'tomas' }));
    expect(imagesIn(await (await under.get('/', tomas)).text())).toEqual([]);
  });

  it.each(['pH 5.8 EC 2.1', 'topped up 20 L', 'undo', 'yes', 'what needs doing?'])(
    'takes "%s" for a note, and reads nothing in it',
    async (note) => {
      const under = await pageUnderTest(store);
      await under.post('/messages', said('north bench ph 6.1'));
      await attach(under, { note, system: row!.id });
      const [first, ...rest] = await logged(under);
      expect(first).toMatchObject({ quantity: 'ph', value: 6.1, struck: null });
      expect(rest).toMatchObject([{ quantity: 'note', system: row!.id, note, isAttached: true }]);
    },
  );

  it('is kept once, however often its form is sent', async () => {
    const under = await pageUnderTest(store);
    await attach(under);
    expect((await attach(under)).status).toBe(200);
    expect(await logged(under)).toHaveLength(1);
    await attach(under, { system: row!.id });
    expect((await logged(under)).map(({ system }) => system)).toEqual([bench!.id, row!.id]);
  });

  it.each([
    ['PNG', pngBytes()],
    ['WebP', webpBytes()],
  ])('is known for a %s by its first bytes, whatever its name says', async (_kind, bytes) => {
    const under = await pageUnderTest(store);
    expect((await attach(under, { bytes })).status).toBe(200);
    const [shown] = imagesIn(await (await under.get('/')).text());
    const image = await under.get(shown!);
    expect(image.headers.get('Content-Type')).toMatch(/^image\//);
    expect(new Uint8Array(await image.arrayBuffer())).toEqual(bytes);
  });

  it.each([
    ['a page of text', new TextEncoder().encode('<script>alert(1)</script>')],
    ['another kind of RIFF', new TextEncoder().encode('RIFF\0\0\0\0WAVEfmt ')],
    ['too few bytes to tell', new Uint8Array([0xff, 0xd8])],
  ])('is refused where it is %s, under a picture’s name', async (_what, bytes) => {
    const under = await pageUnderTest(store);
    const answer = await attach(under, { bytes, note: 'the <tap>', system: row!.id });
    expect(answer.status).toBe(422);
    const html = await answer.text();
    expect(html).toContain('That file cannot be shown as a photo.');
    // What was filled in need not be filled in again.
    expect(html).toContain('value="the &lt;tap&gt;"');
    expect(html).toMatch(new RegExp(`value="${row!.id}" selected`));
    expect(await logged(under)).toEqual([]);
  });

  it.each(languages)('says in "%s" what is wrong with the form', async (language) => {
    const lane = quarryLane();
    const members = lane.members.map((member) => ({ ...member, language }));
    const under = await pageUnderTest(store, { ...lane, members });
    const isGerman = language === 'de';
    const refusals: readonly (readonly [Filled, string])[] = [
      [{ bytes: new Uint8Array() }, isGerman ? 'Wähle zuerst ein Foto' : 'Choose a photo first'],
      [{ system: 's99' }, isGerman ? 'gehört nicht mehr' : 'not in the set-up any more'],
      [{ note: 'x'.repeat(801) }, isGerman ? '801 Zeichen' : '801 characters'],
      [{ as: 'tomas' }, isGerman ? 'Die Einrichtung ändert nur' : 'Only a grower changes'],
      [
        { bytes: new Uint8Array([1, 2, 3]) },
        isGerman ? 'nicht als Foto zeigen' : 'cannot be shown',
      ],
    ];
    for (const [filled, sentence] of refusals) {
      const answer = await attach(under, filled);
      expect(answer.status).toBe(422);
      expect(await answer.text()).toContain(sentence);
    }
    const tooLarge = await attach(under, { bytes: jpegBytes(11 * 1024 * 1024) });
    expect(tooLarge.status).toBe(413);
    expect(await tooLarge.text()).toContain(
      isGerman ? 'höchstens 10 MB passen hinein' : 'at most 10 MB fit',
    );
    expect(await logged(under)).toEqual([]);
  });

  it('is taken at the size of a phone’s largest', async () => {
    const under = await pageUnderTest(store);
    const bytes = jpegBytes(10 * 1024 * 1024);
    expect((await attach(under, { bytes })).status).toBe(200);
    const [shown] = imagesIn(await (await under.get('/')).text());
    expect((await (await under.get(shown!)).arrayBuffer()).byteLength).toBe(bytes.length);
  });

  it('is not taken from another site', async () => {
    const under = await pageUnderTest(store);
    const body = new FormData();
    body.set('photo', new File([Uint8Array.from(jpegBytes())], 'tap.jpg'));
    const headers = { Host: host, Origin: 'http://elsewhere.example' };
    const answer = await under.page.app.request('/set-up/photos', {
      method: 'POST',
      headers,
      body,
    });
    expect(answer.status).toBe(403);
  });
});
