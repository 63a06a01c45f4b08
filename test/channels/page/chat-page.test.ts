import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../../src/assistant/ports/store.ts';
import type { News } from '../../../src/channels/page/news.ts';
import { openTestStore } from '../../storage/open-test-store.ts';
import { pictureSize } from '../../telegram-emulator/methods/picture-size.ts';
import { type PageUnderTest, pageUnderTest, quarryLane, said } from './page-under-test.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const json = { Accept: 'application/json' };

async function logged(under: PageUnderTest) {
  const { logbook } = await under.desk.standing(under.greenhouseId);
  return logbook.all.map(({ quantity, value, struck }) => ({
    quantity,
    value,
    struck: struck !== null,
  }));
}

async function newsOf(answer: Response): Promise<News> {
  return (await answer.json()) as News;
}

describe('the chat page', () => {
  it('shows a first visitor what to type, in names of this greenhouse', async () => {
    const { get } = await pageUnderTest(store);
    const html = await (await get('/')).text();
    expect(html).toContain('Write what you measured or did');
    expect(html).toMatch(/<details id="what-to-type"[^>]* open/);
    expect(html).toContain('North bench pH 6.1');
    expect(html).toContain('Bucket row');
  });

  it('logs a plain form once, however often it is sent, and shows message and receipt', async () => {
    const under = await pageUnderTest(store);
    const form = said('north bench ph 6.1');
    const first = await under.post('/messages', form);
    expect(first.status).toBe(303);
    expect(first.headers.get('Location')).toBe('/#latest');
    await under.post('/messages', form);
    expect(await logged(under)).toEqual([{ quantity: 'ph', value: 6.1, struck: false }]);
    const html = await (await under.get('/')).text();
    expect(html.match(/north bench ph 6\.1/g)).toHaveLength(1);
    expect(html).toMatch(/class="message is-receipt"/);
    expect(html).toContain('>08:20</time>');
  });

  it('shows a picture beside its words, and draws it when it is asked for', async () => {
    const under = await pageUnderTest(store);
    await under.post('/messages', said('topped up the gutters 12 l'));
    await under.post('/messages', said('show me the gutters'));
    const html = await (await under.get('/')).text();
    const [, path, alt] = /<img class="picture" src="([^"]+)" alt="([^"]+)"/u.exec(html) ?? [];
    expect(alt).toContain('Picture: Water in Gutter run since today, with 1 top-up');
    const picture = await under.get(path!.replaceAll('&amp;', '&'));
    expect(picture.status).toBe(200);
    expect(picture.headers.get('Content-Type')).toBe('image/png');
    expect(pictureSize(new Uint8Array(await picture.arrayBuffer()))?.widthPx).toBeGreaterThan(1000);
    // A message without a picture, and one that there is not.
    expect((await under.get('/pictures/1.png')).status).toBe(404);
    expect((await under.get('/pictures/99.png')).status).toBe(404);
  });

  it('takes another text under an old form as another message: browsers bring old forms back', async () => {
    const under = await pageUnderTest(store);
    await under.post('/messages', said('north bench ph 6.1', { id: 'old-form-1' }));
    await under.post('/messages', said('north bench ph 6.3', { id: 'old-form-1' }));
    expect((await logged(under)).map(({ value }) => value)).toEqual([6.1, 6.3]);
  });

  it('gives the script what is new, replies and duties, with the answer', async () => {
    const under = await pageUnderTest(store);
    const before = await (await under.get('/')).text();
    const cursor = /data-cursor="([\d.]+)"/.exec(before)?.[1] ?? '';
    const answer = await under.post(
      '/messages',
      { ...said('north bench ph 6.1 ec 2.2'), after: cursor },
      json,
    );
    const news = await newsOf(answer);
    expect(news.items.map(({ key }) => key.split('-')[0])).toEqual(['in', 'out']);
    expect(news.duties).toContain('duties-title');
    expect(news.cursor).not.toBe(cursor);
  });

  it('strikes a receipt out by its button, once, and shows it struck', async () => {
    const under = await pageUnderTest(store);
    await under.post('/messages', said('north bench ph 6.1'));
    const html = await (await under.get('/')).text();
    const token = /name="token" value="([\d.]+)"/.exec(html)?.[1] ?? '';
    await under.post('/presses', { as: 'ines', token });
    await under.post('/presses', { as: 'ines', token });
    expect(await logged(under)).toEqual([{ quantity: 'ph', value: 6.1, struck: true }]);
    const after = await (await under.get('/')).text();
    expect(after).toContain('Struck out');
    expect(after.match(/class="message is-correction/g)).toHaveLength(1);
    expect(after).not.toContain('name="token"');
  });

  it('shows a receipt struck that was undone by a word', async () => {
    const under = await pageUnderTest(store);
    const first = await newsOf(await under.post('/messages', said('north bench ph 6.1'), json));
    const undone = await newsOf(
      await under.post('/messages', { ...said('undo'), after: first.cursor }, json),
    );
    expect(undone.items.map(({ html }) => html.includes('is-receipt is-struck'))).toContain(true);
  });

  it('marks the answer that was chosen and takes the other buttons away', async () => {
    const under = await pageUnderTest(store);
    const asked = await newsOf(await under.post('/messages', said('ph 5.8'), json));
    const buttons = [...asked.items.at(-1)!.html.matchAll(/value="([\d.]+)">([^<]+)</g)];
    const bucketRow = buttons.find(([, , label]) => label === 'Bucket row')!;
    const pressed = await newsOf(
      await under.post('/presses', { as: 'ines', token: bucketRow[1]!, after: asked.cursor }, json),
    );
    expect(pressed.items[0]?.html).toContain('✓ Bucket row');
    expect(pressed.items[0]?.html).not.toContain('<button');
    expect(await logged(under)).toEqual([{ quantity: 'ph', value: 5.8, struck: false }]);
  });

  it('ticks off a round in its place, each duty for itself, and tells the receipt quietly', async () => {
    const under = await pageUnderTest(store);
    await under.desk.sendDue(under.greenhouseId, under.clock.nowMs);
    const html = await (await under.get('/')).text();
    const tokensOf = (page: string) =>
      [...page.matchAll(/name="token" value="([\d.]+)"/g)].map(([, token]) => token!);
    const [first, , third] = tokensOf(html);
    const ticked = await newsOf(await under.post('/presses', { as: 'ines', token: first! }, json));
    const [round, receipt, ...others] = ticked.items;
    expect(others).toEqual([]);
    expect(round?.html).toContain('is-round');
    expect(round?.html).not.toContain(`value="${third!}"`);
    expect(tokensOf(round?.html ?? '').length).toBe(tokensOf(html).length - 1);
    expect(receipt?.isQuiet).toBe(true);
    expect(receipt?.html).not.toContain('<button');
    const after = await (await under.get('/')).text();
    expect(after.match(/class="message is-round/g)).toHaveLength(1);
  });

  it('keeps each member’s chat apart and remembers who speaks on this device', async () => {
    const under = await pageUnderTest(store);
    await under.post('/messages', said('north bench ph 6.1', { as: 'tomas' }));
    const chosen = await under.post('/speaker', { as: 'tomas' });
    const cookie = chosen.headers.get('Set-Cookie') ?? '';
    expect(cookie).toMatch(/SameSite=Strict/);
    const asInes = await (await under.get('/')).text();
    const asTomas = await (await under.get('/', { Cookie: cookie.split(';')[0]! })).text();
    expect(asInes).not.toContain('north bench ph 6.1');
    expect(asTomas).toContain('north bench ph 6.1');
    expect(asTomas).toMatch(/<option value="tomas" selected/);
  });

  it('speaks the member’s language', async () => {
    const greenhouse = quarryLane();
    const [ines, ...others] = greenhouse.members;
    const members = [{ ...ines!, language: 'de' as const }, ...others];
    const { get } = await pageUnderTest(store, { ...greenhouse, members });
    const html = await (await get('/')).text();
    expect(html).toContain('<html lang="de">');
    expect(html).toContain('Heute zu tun');
  });

  it('writes whatever was typed as text, never as markup', async () => {
    const under = await pageUnderTest(store);
    const text = '<img src=x onerror="alert(1)">&amp;\'"</textarea><script>';
    const { items } = await newsOf(await under.post('/messages', said(text), json));
    const pages = [items[0]!.html, await (await under.get('/')).text()];
    pages.push(await (await under.get(`/?say=${encodeURIComponent(text)}`)).text());
    for (const html of pages) {
      expect(html).toContain('&lt;img src=x onerror=&quot;alert(1)&quot;&gt;&amp;amp;');
      expect(html).not.toContain('<img');
      expect(html).not.toContain('<script>');
    }
  });

  it('keeps a message that is too long in the field and says what is wrong', async () => {
    const under = await pageUnderTest(store);
    const answer = await under.post('/messages', said('y'.repeat(5000)));
    expect(answer.status).toBe(422);
    const html = await answer.text();
    expect(html).toContain('The message has 5000 characters; at most 4096 fit.');
    expect(html).toContain('y'.repeat(4096));
    expect(await logged(under)).toEqual([]);
  });

  it('logs what waited on the device at the time it was written', async () => {
    const under = await pageUnderTest(store);
    await under.post('/messages', { ...said('north bench ph 6.1'), heldMs: '3600000' });
    const { logbook } = await under.desk.standing(under.greenhouseId);
    expect(logbook.all[0]?.atMs).toBe(under.clock.nowMs - 3_600_000);
  });

  it('shows more of the past when asked', async () => {
    const under = await pageUnderTest(store);
    for (let i = 0; i < 4; i += 1) await under.post('/messages', said(`hello number ${i}`));
    const few = await (await under.get('/?most=3')).text();
    expect(few).not.toContain('hello number 1');
    expect(few).toContain('href="/?most=12"');
    expect(await (await under.get('/?most=12')).text()).toContain('hello number 0');
  });

  it('goes on when an old message is about a system that left the set-up', async () => {
    const under = await pageUnderTest(store);
    await under.post('/messages', said('what needs doing'));
    const { systems, chores, ...rest } = quarryLane();
    const kept = systems.filter(({ name }) => name === 'North bench');
    await under.desk.replaceSetUp(
      under.greenhouseId,
      { ...rest, systems: kept, chores: chores.slice(0, 0) },
      under.clock.nowMs,
    );
    const answer = await under.get('/');
    expect(answer.status).toBe(200);
    expect(await answer.text()).toContain(
      'This was about something that is no longer part of the set-up.',
    );
  });
});

describe('what comes from elsewhere', () => {
  it('is not accepted from another site', async () => {
    const under = await pageUnderTest(store);
    const answer = await under.post('/messages', said('north bench ph 6.1'), {
      Origin: 'https://elsewhere.example',
    });
    expect(answer.status).toBe(403);
    expect(await logged(under)).toEqual([]);
  });

  it('is not answered under a public name that was not set', async () => {
    const { get } = await pageUnderTest(store);
    expect((await get('/', { Host: 'elsewhere.example' })).status).toBe(421);
    expect((await get('/greenhouse.json', { Host: 'elsewhere.example' })).status).toBe(421);
  });

  it('is refused where it is too large, in a sentence', async () => {
    const { post } = await pageUnderTest(store);
    const answer = await post('/messages', said('z'.repeat(70_000)));
    expect(answer.status).toBe(413);
    expect(await answer.text()).toContain('That is too large; at most 64 KB fit.');
  });

  it('cannot speak for somebody who is no member', async () => {
    const { post } = await pageUnderTest(store);
    const answer = await post('/messages', said('hello', { as: 'mallory' }), json);
    expect(answer.status).toBe(422);
    expect(await answer.json()).toEqual({
      error: 'Nobody here is called “mallory”. Choose who is speaking and try again.',
    });
  });

  it('finds a clear page where there is none', async () => {
    const { get } = await pageUnderTest(store);
    const answer = await get('/nowhere');
    expect(answer.status).toBe(404);
    expect(await answer.text()).toContain('There is no page at this address.');
  });
});

describe('every answer', () => {
  it('forbids scripts, styles and frames from elsewhere', async () => {
    const { get } = await pageUnderTest(store);
    for (const path of ['/', '/set-up', '/nowhere', '/livez', '/assets/page.js']) {
      const { headers } = await get(path);
      expect(headers.get('Content-Security-Policy')).toMatch(
        /^default-src 'none'; script-src 'self';/,
      );
      expect(headers.get('Content-Security-Policy')).not.toContain('unsafe');
      expect(headers.get('X-Content-Type-Options')).toBe('nosniff');
    }
  });

  it('tells a watcher whether it lives and whether the database answers', async () => {
    const well = await pageUnderTest(store);
    expect((await well.get('/livez')).status).toBe(200);
    expect((await well.get('/readyz')).status).toBe(200);
    const ill = await pageUnderTest(store, quarryLane(), {
      isReady: () => Promise.reject(new Error('gone')),
    });
    expect((await ill.get('/livez')).status).toBe(200);
    expect((await ill.get('/readyz')).status).toBe(503);
  });
});
