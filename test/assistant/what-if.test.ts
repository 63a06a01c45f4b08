import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal, quarryLaneWith, type Talk } from '../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

async function allFull(talk: Talk): Promise<void> {
  for (const system of ['bench', 'dwc', 'nft', 'jars']) {
    await talk({ at: '2027-06-01T07:30:00+01:00', from: 'ines', text: `${system} full` });
  }
}

const asked = (text: string) => ({ at: '2027-06-01T08:00:00+01:00', from: 'ines', text });

describe('A question of what would be', () => {
  it.each([
    ['what if I go on Friday instead?', /^If the next trip is on Friday: nothing should run low/],
    ['What if nobody goes till Sunday', /^If the next trip is on Sunday: .* weeks/],
    ['what happens if nobody goes for 12 days', /could run low before that \(a chance of about/],
    ['can I wait until Saturday?', /^If the next trip is on Saturday/],
    ["what if it's 35 degrees", /^If it reaches 35 °C for 5 days: North bench \d+ L a day instead/],
    ['what if it gets hot', /^If it gets hot for 5 days/],
    ['what if it turns cold?', /^If it gets cold for 5 days/],
    ['what if I halve the floods', /North bench would flood every 8 h.*this is a bound/],
    ['what if I fill everything today', /^If everything is filled today: that takes about/],
  ])('is answered with figures: “%s”', async (text, expected) => {
    const talk = openRehearsal(store);
    await allFull(talk);
    const out = await talk(asked(text));
    expect(out).toHaveLength(1);
    expect(out[0]).toMatchObject({ kind: 'answer' });
    expect(out[0]!.text).toMatch(expected);
  });

  it.each([
    ['Was wenn ich erst am Freitag gehe?', /^Wenn erst am Freitag jemand geht/],
    ['Was, wenn bis Sonntag niemand geht?', /^Wenn erst am Sonntag jemand geht/],
    ['was ist, wenn es 35 Grad wird', /^Wenn es 5 Tage lang 35 °C hat/],
    ['was wenn es heiß wird', /^Wenn es 5 Tage lang heiß wird/],
    ['Was wenn ich die Flutungen halbiere?', /alle 8 h geflutet.*keine Messung/],
    ['was wäre, wenn ich heute alles auffülle', /^Wenn heute alles aufgefüllt wird/],
  ])('is answered in German: “%s”', async (text, expected) => {
    const { members } = quarryLaneWith();
    const german = members.map((member) => ({ ...member, language: 'de' as const }));
    const talk = openRehearsal(store, quarryLaneWith({ members: german }));
    await allFull(talk);
    expect((await talk(asked(text)))[0]!.text).toMatch(expected);
  });

  it('settles and changes nothing', async () => {
    const talk = openRehearsal(store);
    await allFull(talk);
    const outlook = { at: '2027-06-01T08:00:00+01:00', outlook: true };
    const before = await talk(outlook);
    await talk(asked('what if it gets hot'), asked('what if nobody goes till Sunday'));
    expect(await talk(outlook)).toEqual(before);
  });

  it('is not reckoned while nobody has said how full anything is', async () => {
    const talk = openRehearsal(store);
    const [answer] = await talk(asked('what if nobody goes till Sunday'));
    expect(answer!.text).toMatch(/^Nobody has said yet how full anything is/);
  });
});
