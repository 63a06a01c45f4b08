import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal } from '../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

/** The systems whose duties a message closes, on a morning when all four ask for something. */
async function closedBy(text: string): Promise<readonly string[]> {
  const talk = openRehearsal(store);
  await talk({ at: '2027-05-03T18:00:00+01:00', from: 'ines', text: 'bench is at 480 l' });
  const out = await talk({ at: '2027-05-04T08:20:00+01:00', from: 'tomas', text });
  const logged = out.flatMap((line) => (line.kind === 'receipt' ? (line.logged ?? []) : []));
  const done = logged.filter(({ quantity }) => quantity === 'duty-done');
  const systems = done.flatMap(({ system }) => (typeof system === 'string' ? [system] : []));
  return [...new Set(systems)].toSorted();
}

const all = ['Bucket row', 'Gutter run', 'Jar shelf', 'North bench'];
const allButBench = ['Bucket row', 'Gutter run', 'Jar shelf'];

describe('What was done, beside what is still to come', () => {
  it.each([
    ['all done', all],
    ['all done, bench tonight', allButBench],
    ['all done but I will do the bench later', allButBench],
    ['all done except the bench which i do tonight', allButBench],
    ['jars and row done, bench tomorrow', ['Bucket row', 'Jar shelf']],
    ['jars, row and gutters done', allButBench],
    ['bench done, jars i will do tomorrow', ['North bench']],
  ])('%s', async (text, systems) => {
    expect(await closedBy(text)).toEqual(systems);
  });
});
