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

describe('Work told as done before any round', () => {
  it('is asked about once, and then closes what the list shows', async () => {
    const talk = openRehearsal(store);
    const at = (clock: string): string => `2027-05-04T${clock}:00+01:00`;
    const say = (clock: string, text: string) => talk({ at: at(clock), from: 'tomas', text });
    expect(await say('20:10', 'what needs doing')).toMatchObject([{ kind: 'answer' }]);
    expect(await say('20:12', 'did the jars')).toMatchObject([{ kind: 'question' }]);
    const [receipt] = await say('20:13', 'the jars');
    expect(receipt).toMatchObject({ kind: 'receipt' });
    expect(receipt!.logged).toMatchObject([{ system: 'Jar shelf', quantity: 'duty-done' }]);
  });
});
