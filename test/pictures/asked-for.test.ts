import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal, quarryLaneWith } from '../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const at = (day: number, time = '08:30'): string => `2027-05-${day}T${time}:00+01:00`;

/** Ten days of a household that reports what it does with the gutters. */
async function tenDays() {
  const members = quarryLaneWith().members.map((member) =>
    member.handle === 'tomas' ? { ...member, language: 'de' as const } : member,
  );
  const talk = openRehearsal(store, quarryLaneWith({ members }));
  for (let day = 10; day < 20; day += 3) {
    await talk(
      { at: at(day), from: 'ines', text: 'topped up the gutters 12 l' },
      { at: at(day, '08:40'), from: 'ines', text: 'gutters ph 5.9 ec 1.4' },
    );
  }
  return talk;
}

describe('a picture', () => {
  it.each([
    ['ines', 'show me the gutters', /\[Picture: Water in Gutter run since 10 May/u],
    ['ines', 'a picture of the gutters please', /\[Picture: Water in Gutter run since 10 May/u],
    ['ines', 'graph of the ph of the gutters', /\[Picture: Gutter run since 10 May: 4 readings/u],
    ['tomas', 'Bild von gutter run', /\[Bild: Wasser in Gutter run seit dem 10\. Mai/u],
    ['tomas', 'zeig mir den pH von gutter run', /\[Bild: Gutter run seit dem 10\. Mai/u],
  ])(
    'asked for by %s with "%s" is told in words where none can be shown',
    async (from, text, alt) => {
      const talk = await tenDays();
      const said = (await talk({ at: at(20), from, text })).at(-1);
      expect(said).toMatchObject({ kind: 'answer', to: from });
      expect(said!.text).toMatch(alt);
    },
  );

  it('is offered under a reason, and comes when its button is pressed', async () => {
    const talk = await tenDays();
    const why = (await talk({ at: at(26), from: 'ines', text: 'why the gutters' })).at(-1);
    const offered = why!.buttons!.flat().find(({ label }) => label.startsWith('Picture: Water'));
    const sent = (await talk({ at: at(26, '08:31'), from: 'ines', press: offered!.press })).at(-1);
    expect(sent).toMatchObject({ kind: 'answer' });
    expect(sent!.text).toMatch(/4 top-ups.*Without a top-up .* expected in 7 days/u);
    expect(sent!.buttons!.flat()[0]!.label).toBe('Picture: pH, EC, Gutter run');
  });

  it('is not offered of what nobody has told anything about', async () => {
    const talk = await tenDays();
    const shown = (await talk({ at: at(20), from: 'ines', text: 'show me the jars' })).at(-1);
    expect(shown!.text).not.toContain('Picture');
    expect(shown!.buttons).toBeUndefined();
    const none = (await talk({ at: at(20), from: 'ines', text: 'graph of the ph of the jars' })).at(
      -1,
    );
    expect(none!.text).toBe('Nothing has been logged for that yet.');
  });

  it('is offered for each where it is not said of which', async () => {
    const talk = await tenDays();
    await talk({ at: at(20), from: 'ines', text: 'bench full' });
    const shown = (
      await talk({ at: at(20, '09:00'), from: 'ines', text: 'show me everything' })
    ).at(-1);
    const labels = shown!.buttons?.flat().map(({ label }) => label);
    expect(labels).toEqual(['Picture: Water, North bench', 'Picture: Water, Gutter run']);
  });
});
