import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal, quarryLaneWith } from '../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const german = { handle: 'max', name: 'Max', role: 'helper' as const, language: 'de' as const };
const household = quarryLaneWith({ members: [...quarryLaneWith().members, german] });

function talking() {
  const talk = openRehearsal(store, household);
  return async (day: number, from: string, text: string) => {
    const said = await talk({ at: `2027-07-0${day}T08:00:00+01:00`, from, text });
    return said.find(({ to, kind }) => to === from && kind === 'answer')?.text;
  };
}

describe('How full something is', () => {
  it('is answered as of now, with how sure that is, the last level and what was added since', async () => {
    const say = talking();
    await say(1, 'ines', 'bench level 500 l');
    expect(await say(1, 'ines', 'how full is the bench')).toMatch(
      /^North bench: about 500 L of 600 L by now \(most likely \d+ to \d+ L\)\. Last told: level 500 L, today at 08:00; no top-up since\.$/,
    );
    await say(2, 'ines', 'topped up the bench 20 l');
    await say(3, 'ines', 'topped up the bench 10 l');
    expect(await say(3, 'ines', 'how full is the bench')).toContain(
      'topped up 30 L since in 2 goes, the last today.',
    );
    expect(await say(3, 'max', 'wie voll ist die bench')).toMatch(
      /^North bench: inzwischen etwa \d+ l von 600 l \(höchstwahrscheinlich \d+ bis \d+ l\)\. Zuletzt gesagt: .*; seitdem 30 l in 2 Malen nachgefüllt, zuletzt heute\.$/,
    );
  });

  it('grows less sure with the days', async () => {
    const say = talking();
    await say(1, 'ines', 'bench level 500 l');
    const width = (text: string | undefined): number => {
      const [, least, most] = /likely (\d+) to (\d+)/.exec(text ?? '') ?? [];
      return Number(most) - Number(least);
    };
    const fresh = width(await say(1, 'ines', 'how full is the bench'));
    expect(width(await say(7, 'ines', 'how full is the bench'))).toBeGreaterThan(2 * fresh);
  });

  it('is a level just read off and what was added to it', async () => {
    const say = talking();
    for (const day of [1, 3, 5]) await say(day, 'ines', 'topped up the row 8 l to the brim');
    await say(9, 'ines', 'row level 92 l');
    await say(9, 'ines', 'topped up the row with 5 l');
    const told = await say(9, 'ines', 'how full is the row');
    expect(told).toMatch(/^Bucket row: about 9[678] L/);
    expect(told).toContain('topped up 5 L since, today');
  });

  it('is the same in words and in the picture, right after a top-up that can mean two things', async () => {
    const say = talking();
    await say(1, 'ines', 'bench level 500 l');
    await say(4, 'ines', 'topped up the bench 40 l');
    const [, words] =
      /about (\d+) L/.exec((await say(4, 'ines', 'how full is the bench')) ?? '') ?? [];
    const shown = await say(4, 'ines', 'show me the bench');
    expect(shown).toMatch(new RegExp(`North bench: about ${words} L left`));
    expect(await say(4, 'ines', 'picture of the water in the bench')).toContain(
      `About ${words} L left of 600 L`,
    );
  });

  it('is answered of those that are named, and of no others', async () => {
    const say = talking();
    await say(1, 'ines', 'bench level 500 l, row level 100 l, jars level 20 l');
    const names = (text: string | undefined) =>
      (text ?? '').split('\n').map((line) => line.slice(0, line.indexOf(':')));
    expect(names(await say(1, 'ines', 'how full are the jars and the row'))).toEqual([
      'Bucket row',
      'Jar shelf',
    ]);
    expect(names(await say(1, 'max', 'wie voll sind bench und row'))).toEqual([
      'North bench',
      'Bucket row',
    ]);
    expect(names(await say(1, 'ines', 'how long will the bench and the row last'))).toEqual([
      'North bench',
      'Bucket row',
    ]);
    expect(names(await say(1, 'ines', 'how full is everything'))).toHaveLength(4);
  });

  it('is not guessed where nobody has said', async () => {
    const say = talking();
    expect(await say(1, 'ines', 'how full are the jars')).toBe(
      'Jar shelf: nobody has said yet how full it is.',
    );
  });
});
