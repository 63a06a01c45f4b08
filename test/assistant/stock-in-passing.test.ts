import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal } from '../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const say = (text: string) =>
  openRehearsal(store)({ at: '2027-05-04T08:20:00+01:00', from: 'ines', text });

describe('Two products bought, or left, in one message', () => {
  it.each([
    ['bought 5 l A and 5 l B', ['5 L of nutrient A bought', '5 L of nutrient B bought']],
    ['we bought 5 l of A and B', ['5 L of nutrient A bought', '5 L of nutrient B bought']],
    ['bought 5 l each of A and B', ['5 L of nutrient A bought', '5 L of nutrient B bought']],
    ['haben 5 l A und 3 l B gekauft', ['5 L of nutrient A bought', '3 L of nutrient B bought']],
    ['2 l A left and 1.5 l B left', ['2 L of nutrient A left', '1.5 L of nutrient B left']],
  ])('are each asked about: “%s”', async (text, begins) => {
    const out = await say(text);
    expect(out.map(({ kind }) => kind)).toEqual(['question', 'question']);
    expect(out.map((line, i) => line.text?.startsWith(begins[i]!))).toEqual([true, true]);
  });
});

describe('A purchase beside a report', () => {
  it.each([
    'bought 5 l of A and topped up the bench with 2 cans',
    'topped up the bench with 2 cans, bought 5 l of A',
  ])('is asked about, and the report is logged: “%s”', async (text) => {
    const out = await say(text);
    expect(out.flatMap(({ logged }) => logged ?? [])).toMatchObject([
      { system: 'North bench', quantity: 'top-up', value: 20 },
    ]);
    expect(out.at(-1)?.text).toMatch(/^5 L of nutrient A bought/);
  });
});

describe('What is left of a product', () => {
  it.each([
    'how much nutrient a left',
    'do we have any nutrient A left',
    'is there any nutrient a left',
  ])('is told by “%s”', async (text) => {
    expect((await say(text))[0]?.text).toMatch(/^Nutrient A: 4\.2 L left/);
  });
});

describe('A message of thousands of purchases', () => {
  it('is no wish, and is answered by a question', async () => {
    const out = await say('bought 5 l of A, '.repeat(6000));
    expect(out.map(({ kind }) => kind)).toEqual(['question']);
    expect(out.flatMap(({ logged }) => logged ?? [])).toEqual([]);
  });
});
