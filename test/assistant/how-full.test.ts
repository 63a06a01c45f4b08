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

  it('is not guessed where nobody has said', async () => {
    const say = talking();
    expect(await say(1, 'ines', 'how full are the jars')).toBe(
      'Jar shelf: nobody has said yet how full it is.',
    );
  });
});
