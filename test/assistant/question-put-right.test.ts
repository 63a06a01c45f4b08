import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal } from '../channels/rehearsal/open-rehearsal.ts';
import type { OutLine } from '../channels/rehearsal/rehearse-child.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

/** Says the lines a minute apart as one helper, and gives what the last of them caused. */
function helper() {
  const talk = openRehearsal(store);
  let minute = 0;
  const at = (): string => `2027-05-04T08:${String((minute += 1)).padStart(2, '0')}:00+01:00`;
  return {
    say: async (...texts: readonly string[]): Promise<readonly OutLine[]> => {
      let out: readonly OutLine[] = [];
      for (const text of texts) out = await talk({ at: at(), from: 'tomas', text });
      return out;
    },
    press: (press: string) => talk({ at: at(), from: 'tomas', press }),
  };
}

const loggedBy = (out: readonly OutLine[]) => out.flatMap(({ logged }) => logged ?? []);
const struckBy = (out: readonly OutLine[]) => out.flatMap(({ struck }) => struck ?? []);
const buttonOf = (out: readonly OutLine[], label: string): string =>
  out.flatMap(({ buttons }) => buttons?.flat() ?? []).find((button) => button.label === label)!
    .press;

describe('A question about the wrong system', () => {
  it.each([
    ['sorry that was the buckets', 'Bucket row'],
    ['i meant the gutters', 'Gutter run'],
    ['gutters not bench', 'Gutter run'],
  ])(
    'is asked of the right one after “%s”, and what was logged before it stays',
    async (text, system) => {
      const { say } = helper();
      await say('bench 6.1 2.2', 'put 10 ml in');
      const moved = await say(text);
      expect(struckBy(moved)).toEqual([]);
      expect(loggedBy(await say('ph down'))).toMatchObject([{ system, product: 'ph-down' }]);
    },
  );

  it('moves together with what the same message logged', async () => {
    const { say } = helper();
    await say('bench ec 2.2 and ph 71');
    const moved = await say('sorry that was the buckets');
    expect(loggedBy(moved)).toMatchObject([{ system: 'Bucket row', quantity: 'ec' }]);
    expect(loggedBy(await say('7.1'))).toMatchObject([{ system: 'Bucket row', value: 7.1 }]);
  });

  it('offers nothing that the right one cannot hold', async () => {
    const { say } = helper();
    await say('bench 30 l');
    const [question] = await say('i meant the jars');
    expect(question).toMatchObject({ kind: 'question' });
    expect(question?.text).toContain('0 to 24 L');
  });

  it('asks again where two systems are asked about and the correction may be of either', async () => {
    const { say } = helper();
    await say('bench 12 l, buckets 3 l');
    const out = await say('sorry that was the gutters');
    expect(out.map(({ kind }) => kind)).toEqual(['question']);
  });
});

describe('A question that another one took the place of', () => {
  it.each([
    ['12 l in the buckets', 'sorry, 14', 'Added'],
    ['12 l in the buckets', 'i meant the gutters', 'Added'],
  ])('logs nothing any more by its buttons: “%s”, “%s”', async (first, correction, answer) => {
    const { say, press } = helper();
    const old = buttonOf(await say(first), answer);
    await say(correction);
    expect(loggedBy(await say('added'))).toHaveLength(1);
    expect(loggedBy(await press(old))).toEqual([]);
  });
});

describe('A number of which neither the quantity nor the system was said', () => {
  it.each([
    [['it says 5.9', 'for the bench', 'ph'], { system: 'North bench', quantity: 'ph', value: 5.9 }],
    [['it says 5.9', 'thats the buckets ph'], { system: 'Bucket row', quantity: 'ph', value: 5.9 }],
    [['it shows 1.4', 'ec', 'gutters'], { system: 'Gutter run', quantity: 'ec', value: 1.4 }],
  ])('is logged once both are told: %j', async (texts, entry) => {
    expect(loggedBy(await helper().say(...texts))).toMatchObject([entry]);
  });

  it.each([
    [['it says 5.9', 'bench or buckets']],
    [['it says 5.9', 'for the bench?']],
    [['it says 5.9', 'for the bench', 'no']],
  ])('is not logged before: %j', async (texts) => {
    const { say } = helper();
    for (const text of texts) expect(loggedBy(await say(text))).toEqual([]);
  });
});

describe('Values that differ, of which no system was said', () => {
  it.each([
    [
      ['ec 1.3 and 1.2', 'gutters and jars'],
      ['Gutter run 1.3', 'Jar shelf 1.2'],
    ],
    [['ec 1.3 and 1.2', 'jars', '1.2'], ['Jar shelf 1.2']],
    [['ec 1.3 and 1.2', 'all'], []],
    [['ec 1.3 and 1.2', 'ok all checked'], []],
    [['ec 1.3 and 1.2', 'gutters, jars and bench'], []],
    // One after the other they are of one system.
    [
      ['ph was 5.4, now 6.1', 'buckets'],
      ['Bucket row 5.4', 'Bucket row 6.1'],
    ],
  ])('are each of one system: %j', async (texts, entries) => {
    const out = await helper().say(...texts);
    expect(loggedBy(out).map(({ system, value }) => [system, value].join(' '))).toEqual(entries);
  });

  it('are not all of them by work that is told done', async () => {
    const { say } = helper();
    await say('ph 6.0 ec 1.3');
    expect(loggedBy(await say('all checked')).some(({ quantity }) => quantity === 'ph')).toBe(
      false,
    );
  });
});

describe('Amounts that were asked about one by one', () => {
  const litres = (out: readonly OutLine[]) =>
    loggedBy(out).map(({ system, quantity, value }) => [system, quantity, value].join(' '));

  it.each([
    [
      ['6 cans bench 1 can buckets 1 jug jars', 'added'],
      ['North bench top-up 60', 'Bucket row top-up 10', 'Jar shelf top-up 2'],
    ],
    [
      ['2 cans bench 1 buckets', 'all added'],
      ['North bench top-up 20', 'Bucket row top-up 10'],
    ],
    [
      ['bench 400 l, buckets 80 l', 'in it now'],
      ['North bench level 400', 'Bucket row level 80'],
    ],
    [['bench 400 l, buckets 80 l', 'no'], []],
  ])('are all what one answer says: %j', async (texts, entries) => {
    expect(litres(await helper().say(...texts))).toEqual(entries);
  });
});
