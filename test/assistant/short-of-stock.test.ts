import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal, quarryLaneWith } from '../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const bottles = (mL: number) =>
  quarryLaneWith().stock.map((item) => ({
    ...item,
    ...(item.product === 'nutrient-a' ? { mL } : {}),
  }));

async function whyOfBench(mL: number): Promise<string> {
  const say = openRehearsal(store, quarryLaneWith({ stock: bottles(mL) }));
  const from = 'ines';
  const out = await say(
    { at: '2027-05-08T08:00:00+01:00', from, text: 'bench 160 l in it' },
    { at: '2027-05-08T08:01:00+01:00', from, text: 'bench ec 2.1' },
    { at: '2027-05-08T08:02:00+01:00', from, text: 'what needs doing for the bench' },
  );
  return out.map(({ text }) => text).join('\n');
}

it('A top-up that asks for more than there is in stock says so', async () => {
  const short = 'There is not that much left in stock.';
  expect(await whyOfBench(4200)).not.toContain(short);
  expect(await whyOfBench(20)).toContain(short);
});
