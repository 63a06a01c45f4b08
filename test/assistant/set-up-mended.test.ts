import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal, quarryLaneWith } from '../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const household = quarryLaneWith({
  members: [
    { handle: 'ines', name: 'Ines', role: 'grower', language: 'en' },
    { handle: 'max', name: 'Max', role: 'grower', language: 'de' },
  ],
});

/** Gives the answer to the last of these. */
async function afterAllOf(from: string, texts: readonly string[]): Promise<string> {
  const talk = openRehearsal(store, household);
  const at = '2027-03-01T10:00:00Z';
  let last = '';
  for (const text of texts) {
    last = (await talk({ at, from, text })).map((line) => line.text ?? '').join('\n');
  }
  return last;
}

const english = ['set up my greenhouse', 'Yard', 'I don’t know', 'at seven', 'just a ph meter'];
const german = ['neues Gewächshaus einrichten', 'Hof', 'ich weiß nicht', 'um sieben', 'keine'];

describe('The guided set-up of somebody who changes their mind', () => {
  it.each([
    ['ines', [...english, 'tubs', 'Tub', '20', 'wait, it’s 200 not 20'], 'ok', 'I suggest 135 L'],
    ['ines', [...english, 'tubs', 'Tub', '20 l', 'oops, I meant 200 l'], 'ok', 'I suggest 135 L'],
    ['max', [...german, 'Eimer', 'Eimer', '20', 'halt, 200 nicht 20'], 'ok', 'Vorschlag: 135 l'],
    ['max', [...german, 'Eimer', 'Eimer', '20', 'ich meinte 200'], 'ok', 'Vorschlag: 135 l'],
  ])('takes a number for the one before: %s', async (from, texts, then, shown) => {
    expect(await afterAllOf(from, [...texts, then])).toContain(shown);
  });

  it.each([
    [
      'ines',
      [...english, 'tubs', 'Tub', '90', 'ok', 'ok', '6 tomatos', 'no wait, 8 tomatoes'],
      '8 ×',
    ],
    ['max', [...german, 'Eimer', 'Tub', '90', 'ok', 'ok', '6 Gurken', 'ach nein, 8 Gurken'], '8 ×'],
  ])('takes other plants for those just told: %s', async (from, texts, shown) => {
    expect(await afterAllOf(from, texts)).toContain(shown);
  });

  it.each([
    ['ines', [...english, 'jars', 'start over'], 'What is it called?'],
    ['max', [...german, 'Gläser', 'von vorn'], 'Wie heißt es?'],
  ])('begins anew where asked to: %s', async (from, texts, asked) => {
    expect(await afterAllOf(from, texts)).toContain(asked);
  });

  it('asks again, and answers nothing else, where the question is not understood', async () => {
    expect(await afterAllOf('ines', [...english, 'what do you mean by that?'])).toContain(
      'How does the first one grow?',
    );
  });
});
