import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../../src/assistant/ports/store.ts';
import { parseGreenhouseText } from '../../../src/greenhouse/file/parse-greenhouse-text.ts';
import { writeGreenhouseFile } from '../../../src/greenhouse/file/write-greenhouse-file.ts';
import { openTestStore } from '../../storage/open-test-store.ts';
import { pageUnderTest, quarryLane, said } from './page-under-test.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

function fileOf(change: (file: ReturnType<typeof writeGreenhouseFile>) => object): string {
  return JSON.stringify(change(writeGreenhouseFile(quarryLane())));
}

describe('the greenhouse file on the page', () => {
  it('goes out as a download that reads back as the same greenhouse', async () => {
    const { get } = await pageUnderTest(store);
    const answer = await get('/greenhouse.json');
    expect(answer.headers.get('Content-Disposition')).toBe(
      'attachment; filename="greenhouse.json"',
    );
    expect(parseGreenhouseText(await answer.text())).toEqual({
      ok: true,
      greenhouse: quarryLane(),
      notices: [],
    });
  });

  it('comes in as pasted text and is in use at once, with the logbook kept', async () => {
    const under = await pageUnderTest(store);
    await under.post('/messages', said('north bench ph 6.1'));
    const text = fileOf((file) => ({
      ...file,
      greenhouse: { ...file.greenhouse, name: 'Old Mill' },
    }));
    const answer = await under.post('/set-up', { text });
    expect(answer.status).toBe(200);
    expect(await answer.text()).toContain('The set-up of Old Mill is in use now.');
    const { greenhouse, logbook } = await under.desk.standing(under.greenhouseId);
    expect(greenhouse.name).toBe('Old Mill');
    expect(logbook.all.map(({ value }) => value)).toEqual([6.1]);
    expect(await (await under.get('/')).text()).toContain('north bench ph 6.1');
  });

  it('comes in as an uploaded file', async () => {
    const under = await pageUnderTest(store);
    const text = fileOf((file) => ({
      ...file,
      greenhouse: { ...file.greenhouse, name: 'Old Mill' },
    }));
    const body = new FormData();
    body.set('file', new File([text], 'greenhouse.json', { type: 'application/json' }));
    body.set('text', '');
    const host = 'localhost:4180';
    const answer = await under.page.app.request('/set-up', {
      method: 'POST',
      headers: { Host: host, Origin: `http://${host}` },
      body,
    });
    expect(answer.status).toBe(200);
    expect((await under.desk.standing(under.greenhouseId)).greenhouse.name).toBe('Old Mill');
  });

  it('is told every fault with its place, changes nothing and is given back to be put right', async () => {
    const under = await pageUnderTest(store);
    const text = fileOf((file) => ({
      ...file,
      greenhouse: { ...file.greenhouse, morning: '<b>7</b>' },
      systems: file.systems.map((system) => ({ ...system, brimL: -1 })),
    }));
    const answer = await under.post('/set-up', { text });
    expect(answer.status).toBe(422);
    const html = await answer.text();
    expect(html).toContain('Nothing was changed: the file has 5 faults.');
    expect(html).toContain('greenhouse.morning');
    expect(html).toContain('systems[3].brimL');
    expect(html).not.toContain('<b>7</b>');
    expect(html).toContain('&quot;brimL&quot;:-1');
    expect((await under.desk.standing(under.greenhouseId)).greenhouse).toEqual(quarryLane());
  });

  it('is told where the text is no JSON', async () => {
    const { post } = await pageUnderTest(store);
    const html = await (await post('/set-up', { text: '{"format": 1,' })).text();
    expect(html).toContain('line 1, column');
  });

  it('cannot leave out a system that has entries', async () => {
    const under = await pageUnderTest(store);
    await under.post('/messages', said('north bench ph 6.1'));
    const text = fileOf((file) => ({ ...file, systems: file.systems.slice(1), chores: [] }));
    const answer = await under.post('/set-up', { text });
    expect(answer.status).toBe(422);
    expect(await answer.text()).toContain('North bench');
    expect((await under.desk.standing(under.greenhouseId)).greenhouse.systems).toHaveLength(4);
  });

  it('is not taken from a helper, nor without a file', async () => {
    const { post } = await pageUnderTest(store);
    const text = fileOf((file) => file);
    const asHelper = await post('/set-up', { text }, { Cookie: 'speaker=tomas' });
    expect(asHelper.status).toBe(422);
    expect(await asHelper.text()).toContain('Only a grower changes the set-up.');
    expect(await (await post('/set-up', { text: ' ' })).text()).toContain('Choose a file or paste');
  });
});
