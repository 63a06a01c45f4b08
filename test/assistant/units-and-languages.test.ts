import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import type { SpokenUnits } from '../../src/greenhouse/greenhouse.ts';
import { openRehearsal, quarryLaneWith } from '../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const american: SpokenUnits = {
  volume: 'gal',
  temperature: 'F',
  conductivity: 'ppm',
  tdsFactor: 500,
};
const metric: SpokenUnits = quarryLaneWith().units;
const english = { handle: 'ines', name: 'Ines', role: 'grower' as const, language: 'en' as const };
const german = { handle: 'max', name: 'Max', role: 'grower' as const, language: 'de' as const };

function talking(units: SpokenUnits) {
  const talk = openRehearsal(store, quarryLaneWith({ units, members: [english, german] }));
  let minute = 0;
  return async (from: string, text: string): Promise<string> => {
    minute += 1;
    const at = `2027-07-01T08:${String(minute).padStart(2, '0')}:00+01:00`;
    const said = await talk({ at, from, text });
    return said.flatMap((line) => (line.to === from ? [line.text ?? ''] : [])).join('\n');
  };
}

const summary = [
  ['160 gal', '24 in', '40 gal', '20 ×', '1000', '1400 ppm'],
  ['6 gal', '7 in', '1 gal', '12 ×', '500', '800 ppm'],
] as const;

describe('The guided set-up of a household in gallons', () => {
  it('goes from end to end in English, in its units and with words for numbers', async () => {
    const say = talking(american);
    const answers = ['set up a new greenhouse', 'Plum Tree Yard', 'chicago', 'half past seven'];
    for (const text of answers) await say('ines', text);
    for (const text of ['both', 'flood and drain', 'Bench', '160 gallons']) await say('ines', text);
    expect(await say('ines', '2 feet')).toContain('I suggest 40 gal.');
    for (const text of ['40', '20 tomatoes', 'jars', 'Window jars', 'six']) await say('ines', text);
    // A bare depth is in inches, as the suggestion was.
    for (const text of ['seven', 'a gallon', '12 lettuces']) await say('ines', text);
    const shown = await say('ines', 'done');
    expect(shown).toContain('round at 07:30');
    for (const [i, line] of shown.split('\n').slice(1, 3).entries()) {
      for (const figure of summary[i]!) expect(line).toContain(figure);
    }
    expect(await say('ines', 'yes')).toContain('like “Bench 160 gal”');
    expect(await say('max', 'Bench Stand 120 gal, Wasser 68 F')).toContain(
      'Stand 120 gal; Wasser 68 °F',
    );
  });

  it('goes from end to end in German', async () => {
    const say = talking(american);
    const answers = ['neues Gewächshaus einrichten', 'Pflaumenhof', 'Münchn', 'halb acht'];
    for (const text of answers) await say('max', text);
    for (const text of ['beide', 'Ebbe und Flut', 'Wanne', '160 Gallonen']) await say('max', text);
    expect(await say('max', 'zwei Fuß')).toContain('Mein Vorschlag: 40 gal.');
    for (const text of ['vierzig', '20 Tomaten', 'Gläser', 'Fensterglas', 'zwei', 'zurück']) {
      await say('max', text);
    }
    for (const text of ['6 gal', 'sieben Zoll', 'ok', 'zwölf Salate']) await say('max', text);
    const shown = await say('max', 'fertig');
    expect(shown).toContain('Runde um 07:30');
    for (const [i, line] of shown.split('\n').slice(1, 3).entries()) {
      for (const figure of summary[i]!) expect(line).toContain(figure.replace(' in', ' Zoll'));
    }
    expect(await say('max', 'ja')).toContain('etwa „Wanne 160 gal“');
  });
});

describe.each([
  ['litres', metric, 'bench level 120 l, ph 6.1, ec 2.4, buckets topped up 10 l'],
  ['gallons', american, 'bench level 120 gal, ph 6.1, ec 1200 ppm, buckets topped up 10 gal'],
])('Two members of a household in %s who read two languages', (_, units, report) => {
  it.each([
    ['how full is the bench', 'wie voll ist die bench'],
    ['how long will the bench last', 'wie lange reicht die bench'],
    ['what needs doing', 'was ist zu tun'],
    ['what was the last ec of the bench', 'was war der letzte EC der bench'],
  ])('are told the same figures: %s', async (asked, gefragt) => {
    const say = talking(units);
    await say('ines', report);
    const told = await say('ines', asked);
    expect(figuresOf(told).length).toBeGreaterThan(0);
    expect(figuresOf(await say('max', gefragt))).toEqual(figuresOf(told));
  });
});

/** The numbers with a unit in a text, whichever way the language writes and orders them. */
function figuresOf(text: string): readonly string[] {
  const told = text
    .replace(/(\d),(\d)/g, '$1.$2')
    .matchAll(/(\d+(?:\.\d+)?) (l|gal|ppm|mS\/cm|°[CF])(?![a-z])/gi);
  return [...told].map(([, value, unit]) => `${value} ${unit!.toLowerCase()}`).toSorted();
}
