import { readFileSync } from 'node:fs';
import { Desk } from '../../../src/assistant/desk.ts';
import type { GreenhouseId, Store } from '../../../src/assistant/ports/store.ts';
import { createPage, type Page } from '../../../src/channels/page/page.ts';
import type { PageOptions } from '../../../src/channels/page/page-options.ts';
import { parseGreenhouseText } from '../../../src/greenhouse/file/parse-greenhouse-text.ts';
import type { Greenhouse } from '../../../src/greenhouse/greenhouse.ts';
import { drawPicture } from '../../../src/pictures/draw-picture.ts';
import { wordings } from '../../../src/wording/wordings.ts';

export const morning = Date.parse('2027-05-04T08:20:00+01:00');

export function quarryLane(): Greenhouse {
  const read = parseGreenhouseText(readFileSync('greenhouses/quarry-lane.json', 'utf8'));
  if (!read.ok) throw new Error(`the demo greenhouse has faults: ${JSON.stringify(read.faults)}`);
  return read.greenhouse;
}

/** A page in a greenhouse of its own, on a clock that the test sets. */
export interface PageUnderTest {
  readonly page: Page;
  readonly store: Store;
  readonly desk: Desk;
  readonly greenhouseId: GreenhouseId;
  readonly clock: { nowMs: number };
  readonly reported: string[];
  readonly get: (path: string, headers?: Record<string, string>) => Promise<Response>;
  readonly post: (
    path: string,
    fields: Record<string, string>,
    headers?: Record<string, string>,
  ) => Promise<Response>;
}

const host = 'localhost:4180';

export async function pageUnderTest(
  store: Store,
  greenhouse: Greenhouse = quarryLane(),
  changed: Partial<PageOptions> = {},
): Promise<PageUnderTest> {
  const clock = { nowMs: morning };
  const greenhouseId = await store.createGreenhouse(greenhouse, morning - 24 * 3_600_000);
  const desk = new Desk({ store, channelOf: () => 'page', canEdit: () => true });
  const reported: string[] = [];
  const page = await createPage({
    store,
    desk,
    greenhouseId,
    wordings,
    drawPicture,
    nowMs: () => clock.nowMs,
    report: (error, doing) => {
      reported.push(`${doing}: ${String(error)}`);
    },
    isReady: () => Promise.resolve(true),
    replaceGreenhouse: (replacing) => desk.replaceSetUp(greenhouseId, replacing, clock.nowMs),
    assetsFolder: 'src/channels/page/assets',
    address: { host: '127.0.0.1', port: 0 },
    hostNames: [],
    ...changed,
  });
  const get: PageUnderTest['get'] = async (path, headers = {}) =>
    page.app.request(path, { headers: { Host: host, ...headers } });
  const post: PageUnderTest['post'] = async (path, fields, headers = {}) =>
    page.app.request(path, {
      method: 'POST',
      headers: { Host: host, Origin: `http://${host}`, ...headers },
      body: new URLSearchParams(fields),
    });
  return { page, store, desk, greenhouseId, clock, reported, get, post };
}

/** What a form of the page sends with a message. */
export function said(
  text: string,
  { as = 'ines', id = `id-${text.length}-${text.slice(0, 8)}` } = {},
) {
  return { as, id: id.replaceAll(/[^\w-]/g, '_').padEnd(8, '0'), text };
}
