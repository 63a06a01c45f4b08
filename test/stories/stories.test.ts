import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Desk } from '../../src/assistant/desk.ts';
import type { Store } from '../../src/assistant/ports/store.ts';
import { Rehearsal, rehearsalChannel } from '../../src/channels/rehearsal/rehearsal.ts';
import { parseGreenhouseText } from '../../src/greenhouse/file/parse-greenhouse-text.ts';
import { wordings } from '../../src/wording/wordings.ts';
import { openTestStore } from '../storage/open-test-store.ts';
import { talkAsRead } from './talk-as-read.ts';

const folder = dirname(fileURLToPath(import.meta.url));
const stories = readdirSync(folder, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

type Line = Readonly<Record<string, unknown>>;

describe('The story of', () => {
  it.each(stories)('%s goes as it was read and found good', async (story) => {
    const own = join(folder, story, 'greenhouse.json');
    const file = existsSync(own)
      ? own
      : join(folder, '..', '..', 'greenhouses', 'quarry-lane.json');
    const read = parseGreenhouseText(readFileSync(file, 'utf8'));
    if (!read.ok) throw new Error(`the greenhouse of ${story} is faulty`);
    const rehearsal = new Rehearsal({
      store,
      desk: new Desk({ store, channelOf: () => rehearsalChannel }),
      openGreenhouse: (firstAtMs) => store.createGreenhouse(read.greenhouse, firstAtMs),
      wordings,
    });
    const talk = readFileSync(join(folder, story, 'talk.jsonl'), 'utf8')
      .split('\n')
      .filter((line) => line.trim() !== '')
      .map((line) => JSON.parse(line) as Line);
    const replies: (readonly Line[])[] = [];
    for (const line of talk) {
      replies.push((await rehearsal.handle(JSON.stringify(line))) as readonly Line[]);
    }
    const asRead = talkAsRead(talk, replies, read.greenhouse.timeZone);
    await expect(asRead).toMatchFileSnapshot(join(folder, story, 'as-read.txt'));
  });
});
