import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../../src/assistant/ports/store.ts';
import { openTestStore } from '../../storage/open-test-store.ts';
import { openRehearsal } from './open-rehearsal.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const at = (time: string): string => `2027-05-04T${time}:00+01:00`;

describe('While a question is open', () => {
  it.each([
    ['topped up the bench', 'ph 6.1', { quantity: 'ph', value: 6.1 }],
    ['topped up the bench', 'level 400 l', { quantity: 'level', value: 400 }],
    ['topped up the bench', '4 cans', { quantity: 'top-up', value: 40 }],
    ['bench level 60', '60 cm', { quantity: 'level', value: 450 }],
    ['bench level 60', '400 l', { quantity: 'level', value: 400 }],
    ['ph 5.8', 'dwc full', { quantity: 'level', value: 108 }],
    ['ph 5.8', 'dwc', { quantity: 'ph', value: 5.8 }],
    ['dwc ph 54', 'ec 1.7', { quantity: 'ec', value: 1.7 }],
    ['dwc ph 54', '5.4 l added', { quantity: 'top-up', value: 5.4 }],
    ['dwc ph 54', 'its 5.4', { quantity: 'ph', value: 5.4 }],
  ])('about "%s", "%s" is taken for what it says', async (asked, said, entry) => {
    const talk = openRehearsal(store);
    const [question] = await talk({ at: at('08:00'), from: 'ines', text: asked });
    expect(question).toMatchObject({ kind: 'question' });
    const [receipt] = await talk({ at: at('08:01'), from: 'ines', text: said });
    expect(receipt!.logged).toHaveLength(1);
    expect(receipt).toMatchObject({ kind: 'receipt', logged: [entry] });
  });

  it('a value for another system is no answer', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('08:00'), from: 'ines', text: 'dwc ph 54' });
    const out = await talk({ at: at('08:01'), from: 'ines', text: 'jars 5.4' });
    expect(out.map(({ kind }) => kind)).toEqual(['question']);
  });

  it('and another, a value on the button of one answers that one', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('08:00'), from: 'ines', text: 'dwc ph 54, nft ph 61' });
    const [receipt] = await talk({ at: at('08:01'), from: 'ines', text: '5.4' });
    expect(receipt).toMatchObject({ logged: [{ system: 'Bucket row', value: 5.4 }] });
  });
});
