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

/** What the bot says last to each message of a talk on the morning of 8 May 2027. */
async function answers(from: string, ...texts: readonly string[]): Promise<readonly string[]> {
  const talk = openRehearsal(store, household);
  const said: string[] = [];
  for (const [i, text] of texts.entries()) {
    const lines = await talk({
      at: `2027-05-08T09:${String(i).padStart(2, '0')}:00+01:00`,
      from,
      text,
    });
    said.push(lines.findLast((line) => line.to === from && line.kind !== 'round')?.text ?? '');
  }
  return said;
}

describe('The chore spoken of last', () => {
  it('is meant where another rhythm is told: shown, added, or done', async () => {
    const [, shown, , moved, , , done] = await answers(
      'ines',
      'new chore: wipe the fan every 7 days',
      'make that every 4 days',
      'yes',
      'every 3 weeks is enough',
      'no',
      'tied up the tomatoes',
      'make it every 6 days',
    );
    expect(shown).toContain('“wipe the fan” every 4 days');
    expect(moved).toContain('“wipe the fan” every 21 days instead of every 4 days');
    expect(done).toContain('“tie up the tomatoes” every 6 days');
  });

  it('is changed by a yes as thumbs type it, in both languages', async () => {
    for (const yes of ['ya', 'yea', 'ye', 'yh', 'yess']) {
      const [, done] = await answers('ines', 'new chore: wipe the fan every 7 days', yes);
      expect(done, yes).toMatch(/^Done: /);
    }
    for (const ja of ['jaa', 'joa', 'jep', 'jup', 'jau']) {
      const [, done] = await answers('max', 'neue Aufgabe: Filter reinigen alle 7 Tage', ja);
      expect(done, ja).toMatch(/^Erledigt: /);
    }
  });

  it('is meant in German', async () => {
    const [, shown, , moved, , dropped] = await answers(
      'max',
      'neue Aufgabe: Filter reinigen alle 7 Tage',
      'lieber alle 4 Tage',
      'ja',
      'mach das alle 2 Wochen',
      'ja',
      'keine Filterreinigung mehr',
    );
    expect(shown).toContain('„Filter reinigen“ alle 4 Tage');
    expect(moved).toContain('„Filter reinigen“ alle 14 Tage statt alle 4 Tage');
    expect(dropped).toContain('Filter reinigen');
  });

  it('is none where none was spoken of: nothing new is called “make that”', async () => {
    const [said] = await answers('ines', 'make that every 4 days');
    expect(said).not.toContain('every 4 days');
  });
});

describe('A chore', () => {
  it.each([
    ['no more tomato tying', 'No more “tie up the tomatoes”'],
    ['forget about the tomatoes', 'No more “tie up the tomatoes”'],
    ['every 10 days is enough for tying up tomatoes', '“tie up the tomatoes” every 10 days'],
    ['can we do tying up twice a week', '“tie up the tomatoes” every 3 days'],
    ['add a chore clean filters every week', '“clean filters” every 7 days'],
    ['new chore: trim the roots every 2 weeks on the gutters', 'every 14 days, for Gutter run'],
    ['add a chore for the jars: swap the pots every week', 'every 7 days, for Jar shelf'],
    ['new chore: descale the pump', '“descale the pump” every 7 days'],
    ['what chores are there', '“tie up the tomatoes” (North bench) every 5 days'],
    ['when did we last tie up the tomatoes', 'last done on 30 April'],
  ])('is spoken of as a family does: “%s”', async (text, expected) => {
    const [said] = await answers('ines', text);
    expect(said).toContain(expected);
  });

  it('is no system that is called so', async () => {
    const [said] = await answers('ines', 'drop the jars');
    expect(said).toContain('Jar shelf');
  });
});

describe('The set-up in words', () => {
  it.each([
    ['ines', 'ec for the gutters 1.2-1.8', 'EC wanted in Gutter run'],
    ['ines', 'we now have 8 cucumbers in the buckets', 'Plants of Bucket row: 6 → 8'],
    ['ines', 'used up the ph up', '0 mL of pH up left'],
    ['ines', 'whats in stock', 'Nutrient A'],
    ['max', 'pH der buckets soll 5,6 bis 6,0 sein', 'Bucket row'],
    ['max', 'untere Marke vom bench 200', 'North bench'],
    ['max', 'welche waren am besten', 'Zu vergleichen'],
    ['max', 'welche Aufgaben gibt es', 'tie up the tomatoes'],
  ])('%s says “%s”', async (from, text, expected) => {
    const [said] = await answers(from, text);
    expect(said).toContain(expected);
  });
});

describe('One more system', () => {
  it('is set up from half sentences, and what is not known is explained or suggested', async () => {
    const said = await answers(
      'ines',
      'add another system',
      'dont know',
      'its a raft thing, in the corner',
      'the corner',
      'about 80 litres',
      '30 cm deep i think',
      'yes',
      '12 lettuces',
    );
    expect(said[0]).not.toContain('first');
    expect(said[1]).toContain('stands still in jars');
    expect(said[2]).toContain('What do you call it?');
    expect(said.at(-1)).toContain('New system the corner: 80 L to the brim, 30 cm deep');
  });

  it('is set up in German', async () => {
    const said = await answers(
      'max',
      'noch ein System',
      'so ein Floß, steht hinten',
      'Ecke',
      'etwa 80 Liter',
    );
    expect(said.at(-1)).toContain('Wie tief ist das Wasser in Ecke');
  });

  it('leaves reports in between what they are', async () => {
    const said = await answers('ines', 'add a system', 'jars 5 cm down');
    expect(said[1]).toContain('Logged for Jar shelf');
  });
});

describe('Who comes only in the evening', () => {
  it.each([
    ['tomas', 'not before 8 tonight', 'You take the round tonight'],
    ['max', 'nicht vor 8 heute Abend', 'heute Abend'],
  ])('%s says “%s”', async (from, text, expected) => {
    const [said] = await answers(from, text);
    expect(said).toContain(expected);
  });
});

describe('What somebody else topped up', () => {
  it.each([
    ['ines', ['someone else already topped up the buckets']],
    ['ines', ['topped up the buckets', 'someone else did']],
    ['ines', ['topped up the buckets', 'that was priya']],
    ['max', ['die buckets hat schon jemand anders aufgefüllt']],
    ['max', ['buckets aufgefüllt', 'war ich nicht']],
  ] as const)('is asked after by how full it is now, by %s: %s', async (from, texts) => {
    const said = await answers(from, ...texts, '14 cm');
    expect(said.at(-2)).toMatch(/Bucket row/u);
    expect(said.at(-1)).toMatch(/50[.,]4/u);
  });

  it('is logged with its amount once that is said to be so', async () => {
    const said = await answers('ines', 'somebody topped up the buckets with 5 l', 'yes');
    expect(said[0]).toContain('5 L');
    expect(said[1]).toContain('topped up 5 L');
  });
});
