import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../../src/assistant/ports/store.ts';
import type { News } from '../../../src/channels/page/news.ts';
import { openTestStore } from '../../storage/open-test-store.ts';
import { type PageUnderTest, pageUnderTest, quarryLane, said } from './page-under-test.ts';

let store: Store;
const open: PageUnderTest[] = [];
beforeAll(async () => {
  store = await openTestStore();
});
afterEach(async () => {
  await Promise.all(open.splice(0).map(({ page }) => page.close()));
});
afterAll(() => store.close());

async function livePage(): Promise<PageUnderTest> {
  const under = await pageUnderTest(store);
  open.push(under);
  return under;
}

interface LiveEvent {
  readonly id: string;
  readonly news: News;
}

/** The events of a page held open, one at a time. */
async function* eventsOf(under: PageUnderTest, path: string, headers: Record<string, string> = {}) {
  const answer = await under.get(path, headers);
  expect(answer.headers.get('Content-Type')).toContain('text/event-stream');
  let text = '';
  for await (const chunk of answer.body!.pipeThrough(new TextDecoderStream())) {
    text += chunk;
    const blocks = text.split('\n\n');
    text = blocks.pop() ?? '';
    for (const block of blocks) {
      const event = /^event: news\ndata: (.*)\nid: (.*)$/.exec(block);
      if (event) yield { id: event[2]!, news: JSON.parse(event[1]!) as News } satisfies LiveEvent;
    }
  }
}

async function nextOf(events: AsyncGenerator<LiveEvent, void>): Promise<LiveEvent> {
  const next = await events.next();
  if (next.done) throw new Error('the stream ended, expected another event');
  return next.value;
}

describe('an open page', () => {
  it('gets the duties at once and each message as it comes, once', async () => {
    const under = await livePage();
    const events = eventsOf(under, '/events?as=ines');
    const first = await nextOf(events);
    expect(first.news.items).toEqual([]);
    expect(first.news.duties).toContain('duties-title');

    await under.post('/messages', said('north bench ph 6.1'));
    const second = await nextOf(events);
    expect(second.news.items.map(({ key }) => key.split('-')[0])).toEqual(['in', 'out']);

    await under.post('/messages', said('north bench ec 2.2'));
    const third = await nextOf(events);
    expect(third.news.items).toHaveLength(2);
    expect(third.news.items[0]?.html).toContain('north bench ec 2.2');
    await events.return(undefined);
  });

  it('misses nothing while its line is down', async () => {
    const under = await livePage();
    const before = eventsOf(under, '/events?as=ines');
    await nextOf(before);
    await under.post('/messages', said('north bench ph 6.1'));
    const { id } = await nextOf(before);
    await before.return(undefined);

    await under.post('/messages', said('bucket row ph 5.7'));
    await under.post('/messages', said('jar shelf ph 6.0'));
    const after = eventsOf(under, '/events?as=ines&after=0.0', { 'Last-Event-ID': id });
    const { news } = await nextOf(after);
    const messages = news.items.filter(({ key }) => key.startsWith('in-'));
    expect(messages.map(({ html }) => /class="text">(.*?)</.exec(html)?.[1])).toEqual([
      'bucket row ph 5.7',
      'jar shelf ph 6.0',
    ]);
    await after.return(undefined);
  });

  it('learns of a strike-out that happened while its line was down', async () => {
    const under = await livePage();
    await under.post('/messages', said('north bench ph 6.1'));
    const before = eventsOf(under, '/events?as=ines');
    const { id, news } = await nextOf(before);
    await before.return(undefined);
    const token = /value="([\d.]+)"/.exec(news.items.at(-1)!.html)?.[1] ?? '';
    await under.post('/presses', { as: 'ines', token });

    const after = eventsOf(under, `/events?as=ines&after=${id}`);
    const again = await nextOf(after);
    expect(again.news.items[0]?.html).toContain('is-receipt is-struck');
    await after.return(undefined);
  });

  it('is sent the morning round when it is due, and nobody else is', async () => {
    const under = await livePage();
    const ines = eventsOf(under, '/events?as=ines');
    const tomas = eventsOf(under, '/events?as=tomas');
    await nextOf(ines);
    await nextOf(tomas);
    await under.desk.sendDue(under.greenhouseId, under.clock.nowMs);
    await under.page.deliver();
    const round = await nextOf(ines);
    expect(round.news.items[0]?.html).toContain('Morning round');
    await under.post('/messages', said('hello', { as: 'tomas' }));
    const news = await nextOf(tomas);
    expect(news.news.items.every(({ html }) => !html.includes('Morning round'))).toBe(true);
    await ines.return(undefined);
    await tomas.return(undefined);
  });

  it('ends when the page closes', async () => {
    const under = await livePage();
    const events = eventsOf(under, '/events?as=ines');
    await nextOf(events);
    await under.page.close();
    expect((await events.next()).done).toBe(true);
  });
});

describe('what was stored and not handled', () => {
  it('is handled once when the page starts', async () => {
    const under = await livePage();
    const { store: inbox, greenhouseId, clock } = under;
    await inbox.receive({
      greenhouse: greenhouseId,
      channel: 'page',
      platformId: `left-${greenhouseId}`,
      receivedAtMs: clock.nowMs,
      writtenAtMs: clock.nowMs,
      chat: 'ines',
      body: {
        kind: 'message',
        from: 'ines',
        chat: null,
        text: 'north bench ph 6.1',
        writtenAtMs: clock.nowMs,
        replyTo: null,
      },
    });
    await under.page.listen();
    await under.page.deliver();
    const { logbook } = await under.desk.standing(greenhouseId);
    expect(logbook.all.map(({ value }) => value)).toEqual([6.1]);
    expect(under.reported).toEqual([]);
  });

  it('is tried again after a failure, without being sent again', async () => {
    let isDown = true;
    const { desk } = await pageUnderTest(store);
    const flaky = {
      standing: desk.standing.bind(desk),
      handle: (...args: Parameters<typeof desk.handle>) =>
        isDown ? Promise.reject(new Error('the database is away')) : desk.handle(...args),
    };
    const under = await pageUnderTest(store, quarryLane(), { desk: flaky });
    open.push(under);
    const answer = await under.post('/messages', said('north bench ph 6.1'));
    expect(answer.status).toBe(500);
    expect(await answer.text()).toContain('sending it again does no harm');
    isDown = false;
    await under.page.deliver();
    expect((await under.desk.standing(under.greenhouseId)).logbook.all).toHaveLength(0);
    under.clock.nowMs += 60_000;
    await under.page.deliver();
    const { logbook } = await desk.standing(under.greenhouseId);
    expect(logbook.all.map(({ value }) => value)).toEqual([6.1]);
  });
});
