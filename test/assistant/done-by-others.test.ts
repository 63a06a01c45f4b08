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
  members: quarryLaneWith().members.map((member) =>
    member.handle === 'priya' ? { ...member, language: 'de' as const } : member,
  ),
});

/** What a message logs on a morning when all four systems ask for something, and what kinds of answer it gets. */
async function told(from: string, text: string) {
  const talk = openRehearsal(store, household);
  await talk({ at: '2027-05-03T18:00:00+01:00', from: 'ines', text: 'bench is at 480 l' });
  const out = await talk({ at: '2027-05-04T08:20:00+01:00', from, text });
  const logged = out.flatMap((line) => line.logged ?? []);
  const systems = logged.flatMap(({ system, quantity }) =>
    quantity === 'duty-done' && typeof system === 'string' ? [system] : [],
  );
  return {
    systems: [...new Set(systems)].toSorted(),
    count: logged.length,
    kinds: out.map(({ kind }) => kind),
  };
}

describe('The work of a system that somebody else did', () => {
  it.each([
    ['tomas', 'olli did the buckets', ['Bucket row']],
    ['tomas', 'olli has done the buckets', ['Bucket row']],
    ['tomas', 'he did the jars', ['Jar shelf']],
    ['tomas', "she's done the buckets", ['Bucket row']],
    ['tomas', 'olli already did the jars', ['Jar shelf']],
    ['tomas', 'olli did the buckets and the jars', ['Bucket row', 'Jar shelf']],
    ['tomas', 'someone else did the jars', ['Jar shelf']],
    ['priya', 'Olli hat die buckets gemacht', ['Bucket row']],
    ['priya', 'Olli hat die jars schon erledigt', ['Jar shelf']],
    ['priya', 'die buckets hat Olli gemacht', ['Bucket row']],
    ['priya', 'er hat die jars gemacht', ['Jar shelf']],
    ['priya', 'Olli hat buckets und jars gemacht', ['Bucket row', 'Jar shelf']],
    ['priya', 'jemand anders hat die jars gemacht', ['Jar shelf']],
  ])('is done: %s says “%s”', async (from, text, systems) => {
    expect((await told(from, text)).systems).toEqual(systems);
  });

  it.each([
    ['tomas', 'has olli done the buckets'],
    ['tomas', 'did olli do the buckets?'],
    ['tomas', 'olli did not do the buckets'],
    ['tomas', 'olli will have done the buckets'],
    ['tomas', 'olli did the buckets yesterday'],
    ['tomas', 'did the buckets yesterday'],
    ['tomas', 'olli did the bench lids'],
    ['tomas', 'olli was done at 8'],
    ['tomas', 'if olli did the buckets'],
    ['tomas', 'did the jars with 3 l'],
    ['priya', 'hat Olli die buckets gemacht'],
    ['priya', 'Olli hat die buckets nicht gemacht'],
    ['priya', 'Olli hat gestern die jars gemacht'],
    ['priya', 'Olli hat die jars sauber gemacht'],
  ])('is not told, and nothing is logged: %s says “%s”', async (from, text) => {
    expect((await told(from, text)).count).toBe(0);
  });
});

describe('One chore asked of somebody for a day', () => {
  it.each([
    ['ines', 'can Olli do the filters on Friday', '“Olli goes on Friday”'],
    ['ines', 'can olli tie up the tomatoes on friday', '“Olli goes on Friday”'],
    ['ines', 'could tomas clean the filters tomorrow?', '“Tomas goes on Wednesday”'],
    ['ines', 'olli can do the filters on friday', '“Olli goes on Friday”'],
    ['priya', 'kann Olli am Freitag die Filter machen', '„Olli geht am Freitag“'],
    ['priya', 'könnte Olli morgen die Filter putzen?', '„Olli geht am Mittwoch“'],
  ])('is told how it goes instead: %s says “%s”', async (from, text, hint) => {
    const talk = openRehearsal(store, household);
    const out = await talk({ at: '2027-05-04T08:20:00+01:00', from, text });
    expect(
      out
        .filter(({ kind }) => kind === 'answer')
        .map((line) => line.text)
        .join(),
    ).toContain(hint);
    expect(out.flatMap((line) => line.logged ?? [])).toEqual([]);
  });

  it('leaves a system’s work and a whole day as they were handed over', async () => {
    for (const [text, answer] of [
      ['can olli do the bench on friday', 'Olli takes North bench on Friday.'],
      ['can olli come on friday', 'Olli goes on Friday.'],
    ] as const) {
      const talk = openRehearsal(store, household);
      const out = await talk({ at: '2027-05-04T08:20:00+01:00', from: 'ines', text });
      expect(out.map((line) => line.text ?? '').join('\n')).toContain(answer);
    }
  });
});
