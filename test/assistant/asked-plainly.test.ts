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
    ...quarryLaneWith().members,
    { handle: 'max', name: 'Max', role: 'grower' as const, language: 'de' as const },
  ],
});

/** A week of the household, up to Monday 10 May 2027. */
const week: readonly (readonly [at: string, from: string, text: string])[] = [
  ['2027-05-02T18:00:00+01:00', 'ines', 'bench full, buckets full, gutters full, jars full'],
  ['2027-05-05T08:10:00+01:00', 'olli', 'topped up 3 l in the jars'],
  ['2027-05-06T08:00:00+01:00', 'tomas', 'topped up 60 l in the bench'],
  ['2027-05-07T17:00:00+01:00', 'tomas', 'picked 1.2 kg from the buckets'],
  ['2027-05-09T18:00:00+01:00', 'tomas', 'topped up 40 l in the bench'],
  ['2027-05-10T08:00:00+01:00', 'olli', 'buckets ec 1.5 ph 5.9'],
];

/** What a question is answered then; nothing may be logged by it, and nothing asked. */
async function answerTo(from: string, question: string): Promise<string> {
  const say = openRehearsal(store, household);
  for (const [at, who, text] of week) await say({ at, from: who, text });
  const lines = await say({ at: '2027-05-10T09:00:00+01:00', from, text: question });
  expect(lines.flatMap(({ logged = [] }) => logged)).toEqual([]);
  expect(lines.filter(({ kind }) => kind === 'question')).toEqual([]);
  return lines.flatMap((line) => (line.to === from ? [line.text] : [])).join('\n');
}

describe('The one thing to do first', () => {
  it.each([
    ['ines', "what's first", /^First: Add 50 mL nutrient A to Bucket row\. [^\n]+\nAfter that: /u],
    ['tomas', 'where do i start', /^First: [^\n]+\nAfter that: [^\n]+ more today\.$/u],
    ['max', 'wo fang ich an', /^Zuerst: Bucket row: 50 ml Dünger A zugeben\. [^\n]+\nDanach: /u],
    // The whole list, where that is asked for.
    ['tomas', 'what do i need to bring', /^To do today:\n1\. [^\n]+\n2\. /u],
    ['tomas', 'what needs doing', /^To do today:\n1\. [^\n]+\n2\. /u],
  ])('%s: %s', async (from, question, expected) => {
    expect(await answerTo(from, question)).toMatch(expected);
  });

  it('is what is out, before all else', async () => {
    const say = openRehearsal(store, household);
    await say({ at: '2027-05-10T08:00:00+01:00', from: 'olli', text: 'pump dead on the gutters' });
    const lines = await say({
      at: '2027-05-10T09:00:00+01:00',
      from: 'olli',
      text: "what's first",
    });
    expect(lines.find(({ kind }) => kind === 'answer')?.text).toMatch(
      /^[^\n]+\(Gutter run\) since [^\n]+ that comes first\.\nThen: /u,
    );
  });
});

describe('Which is lowest, and when one needs water', () => {
  it.each([
    [
      'ines',
      'which is lowest',
      /^Jar shelf is lowest: about [^\n]+ of 24 L \(\d+%\)\. Then [^\n]+$/u,
    ],
    ['ines', 'which one is fullest', /^North bench is fullest: about [^\n]+$/u],
    ['max', 'welches ist am leersten', /^Jar shelf ist am leersten: etwa [^\n]+ Danach [^\n]+$/u],
    // All, where all are asked for.
    ['ines', 'how full are all of them', /^North bench: [^\n]+\nBucket row: [^\n]+\nGutter run: /u],
    ['ines', 'when does the bench need water', /^Top up North bench: on [^\n]+$/u],
    ['max', 'wann braucht die bench wasser', /^Am [^\n]+: North bench nachfüllen\.$/u],
    // The water's temperature is measured, and nothing topped up.
    ['ines', 'when is the bench due', /Check North bench/u],
  ])('%s: %s', async (from, question, expected) => {
    expect(await answerTo(from, question)).toMatch(expected);
  });
});

describe('Why one drinks so much or so little', () => {
  it.each([
    [
      'ines',
      'why is the bench drinking so much',
      /^North bench drinks about \d+ L a day; 100 L topped up in the last 7 days\. .+ look for a leak|Look for a leak/su,
    ],
    ['ines', 'why do the jars hardly drink', /^Jar shelf drinks about .+ look at the roots/su],
    ['max', 'wieso säuft die bench so', /^North bench: Verbrauch etwa .+ Tagen 100 l nachgefüllt/u],
    ['max', 'warum trinken die jars so wenig', /^Jar shelf: .+ nach den Wurzeln sehen/u],
    // Of work, and not of water.
    ['ines', 'why do i have to calibrate the stick', /^Calibrate the stick on [^\n]+$/u],
    ['ines', 'why is the bench due', /Check pH and EC of North bench/u],
  ])('%s: %s', async (from, question, expected) => {
    expect(await answerTo(from, question)).toMatch(expected);
  });

  it('says what does not fit, where something does not', async () => {
    const say = openRehearsal(store, household);
    await say({ at: '2027-05-09T18:00:00+01:00', from: 'ines', text: 'bench full' });
    await say({ at: '2027-05-10T08:00:00+01:00', from: 'ines', text: 'bench level 300 l' });
    const lines = await say({
      at: '2027-05-10T09:00:00+01:00',
      from: 'ines',
      text: 'why is the bench so thirsty',
    });
    expect(lines.find(({ kind }) => kind === 'answer')?.text).toMatch(
      /North bench has lost about 29\d L since yesterday/u,
    );
  });
});

describe('How a week went', () => {
  it.each([
    ['ines', 'how did last week go'],
    ['ines', 'give me a summary of last week'],
  ])('%s: %s', async (from, question) => {
    expect((await answerTo(from, question)).split('\n')).toEqual([
      'From 3 May to yesterday something was logged on 4 of 7 days: Tomas 3, Olli 1.',
      'Topped up: North bench 100 L, Jar shelf 3 L.',
      'Not measured: North bench, Bucket row, Gutter run and Jar shelf.'.replace(' and', ','),
      'Picked: Bucket row 1.2 kg.',
      'Due then and still open: tie up the tomatoes (North bench) (since Wednesday).',
    ]);
  });

  it('in German, and of the last days', async () => {
    const said = await answerTo('max', 'wie war die woche');
    expect(said).toContain('an 5 von 7 Tagen etwas eingetragen: Tomas 3, Olli 2.');
    expect(said).toContain('pH oder EC gemessen: Bucket row 1-mal.');
  });

  it('is no question of the week to come', async () => {
    expect(await answerTo('ines', 'whats next week like')).not.toContain('was logged');
  });
});

describe('How much to come to a strength', () => {
  it.each([
    [
      'ines',
      'how much nutrient for the buckets to get to 2.0',
      /^Bucket row: reckoned to EC 2\.0 mS\/cm, the first part now\.\nAdd \d+ mL nutrient A/u,
    ],
    [
      'ines',
      'how much a and b for the buckets to reach ec 1.8',
      /^Bucket row: reckoned to EC 1\.8/u,
    ],
    ['ines', 'whats it take to get the buckets to 2.1', /^Bucket row: reckoned to EC 2\.1/u],
    ['max', 'wie viel a und b für ec 2,0 in den buckets', /^Bucket row: gerechnet bis EC 2,0/u],
    [
      'max',
      'wie viel dünger damit die buckets auf 2,0 kommen',
      /^Bucket row: gerechnet bis EC 2,0/u,
    ],
    // Where none is named: those in whose range it lies.
    [
      'ines',
      'how much nutrient to get to 2.2',
      /^Bucket row: reckoned to EC 2\.2[^\n]+\n.+North bench: It has not been measured/su,
    ],
    // No further than what is wanted.
    [
      'ines',
      'how much feed to bring the buckets up to 4',
      /^Bucket row: EC 4\.0 mS\/cm is outside the 1\.6 to 2\.2 mS\/cm that is wanted, .+\nAdd \d+ mL nutrient A/u,
    ],
    [
      'ines',
      'how much ph down for the buckets to get to 5.8',
      /^Bucket row: pH 5\.9 is in range, nothing to add\.$/u,
    ],
    // A number of plants is no strength.
    ['ines', 'how much nutrient for 6 plants', /^(?!.*EC 6)/su],
  ])('%s: %s', async (from, question, expected) => {
    expect(await answerTo(from, question)).toMatch(expected);
  });

  it('is never more than the dose for the middle of the range may be, and grows with the target', async () => {
    const part = async (target: string): Promise<number> => {
      const said = await answerTo('ines', `how much nutrient for the buckets to get to ${target}`);
      return Number(/Add (\d+) mL nutrient A/u.exec(said)?.[1]);
    };
    const [low, high, beyond] = [await part('1.7'), await part('2.1'), await part('4')];
    expect(low).toBeLessThan(high);
    // 5 mL per litre of brim in a day, of which a first part is half.
    expect(beyond).toBeLessThanOrEqual(2.5 * 108);
  });
});

describe('Topics that no duty and no reading answers', () => {
  it.each([
    ['olli', 'can i drink the water', /^No\. /u],
    ['olli', 'my kid wants to help, is that ok', /^With an adult beside them/u],
    ['olli', 'does tap water work', /^Tap water mostly holds lime/u],
    ['olli', 'i put too much a in the buckets what now', /^Stop, add nothing more/u],
    ['olli', 'what if i get ph down on my hands', /^On skin or in eyes: rinse at once/u],
    ['olli', 'are you sure', /^I can be wrong\./u],
    ['olli', 'can ines see what i write', /^What you report goes into the logbook/u],
    ['olli', 'what do i do if i typed it wrong', /“undo” takes back/u],
    ['olli', 'what is nft', /^NFT \(nutrient film technique\)/u],
    [
      'olli',
      'whats the difference between the buckets and the jars',
      /^Bucket row: deep water culture.+\nJar shelf: still water/u,
    ],
    ['max', 'kann ich aus der jar trinken', /^Nein\. /u],
    ['max', 'meine tochter will helfen, darf sie das', /^Neben einem Erwachsenen/u],
    ['max', 'geht auch leitungswasser', /^Leitungswasser enthält meist Kalk/u],
    ['max', 'was wenn ich zu viel säure reingekippt hab', /^Aufhören, nichts mehr zugeben/u],
    ['max', 'bist du dir sicher', /^Ich kann mich irren\./u],
    ['max', 'ist das zeug giftig', /Handschuhe/u],
    ['max', 'können wir eine woche wegfahren', /^(?!.*pH 1)/su],
    // What is understood is answered as before.
    ['ines', 'how much tap water do we have', /^(?!Tap water)/u],
    ['ines', 'when do the gutters run dry', /^Gutter run: about/u],
  ])('%s: %s', async (from, question, expected) => {
    expect(await answerTo(from, question)).toMatch(expected);
  });

  it.each([
    ['olli', 'topped up 2 l in the jars with tap water'],
    ['olli', 'my daughter topped up 2 l in the jars'],
  ])('%s tells: %s', async (from, text) => {
    const say = openRehearsal(store, household);
    const lines = await say({ at: '2027-05-10T09:00:00+01:00', from, text });
    expect(lines.flatMap(({ logged = [] }) => logged)).toMatchObject([
      { system: 'Jar shelf', quantity: 'top-up', value: 2 },
    ]);
  });
});
