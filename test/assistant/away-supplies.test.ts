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
const household = quarryLaneWith({
  members: [...quarryLaneWith().members, german],
  stock: [
    { product: 'nutrient-a', mL: 4200 },
    { product: 'nutrient-b', mL: 4200 },
    { product: 'ph-down', mL: 100 },
    { product: 'ph-up', mL: 400 },
  ],
});

/** A household that has used 60 mL of pH down in the first week of July. */
async function talking() {
  const talk = openRehearsal(store, household);
  const at = (day: number, clock: string): string =>
    `2027-07-${String(day).padStart(2, '0')}T${clock}:00+01:00`;
  const say = async (day: number, clock: string, from: string, text: string) => {
    const said = await talk({ at: at(day, clock), from, text });
    return said
      .filter(({ to, kind }) => to === from && kind !== 'round')
      .map((line) => line.text)
      .join('\n');
  };
  for (const day of [1, 3, 5, 7])
    await say(day, '08:00', 'ines', 'added 15 ml ph down to the bench');
  return say;
}

describe('The plan of an absence', () => {
  it('says which bottle runs out meanwhile by the pace of late, though there is enough for now', async () => {
    const say = await talking();
    await say(8, '09:00', 'ines', 'away from friday to the 23rd');
    const plan = await say(8, '09:01', 'ines', 'all in turn');
    expect(plan).toMatch(/Buy pH down: 40 mL left, gone .*; at least \d+ mL is lacking/);
    expect(plan).not.toContain('Buy pH up');
  });

  it('says it when the absence is under way, too, and in the language of whoever asks', async () => {
    const say = await talking();
    await say(8, '09:00', 'ines', 'away from friday to the 23rd, Tomas steps in');
    expect(await say(10, '09:01', 'ines', 'plan')).toContain('Buy pH down: 40 mL left');
    expect(await say(10, '09:02', 'max', 'Plan')).toContain('pH-Minus kaufen: noch 40 ml');
  });

  it('says nothing of bottles that last', async () => {
    const say = await talking();
    await say(8, '09:00', 'ines', 'bought 5 l ph down');
    await say(8, '09:00', 'ines', 'yes');
    await say(8, '09:02', 'ines', 'away from friday to sunday, Tomas steps in');
    expect(await say(8, '09:03', 'ines', 'plan')).not.toContain('Buy');
  });

  it('holds the rain butt against the top-ups it plans', async () => {
    const say = await talking();
    for (const text of ['rain butt 100 l', 'yes', 'butt is full', 'yes']) {
      await say(8, '09:00', 'ines', text);
    }
    await say(8, '09:02', 'ines', 'away from friday to the 23rd, Tomas steps in');
    const short = await say(8, '09:03', 'ines', 'plan');
    expect(short).toMatch(/Rain water: the plan takes about \d+ L, and about 100 L is left\./);
    for (const text of ['rain butt 5000 l', 'yes', 'butt is full', 'yes']) {
      await say(8, '09:04', 'ines', text);
    }
    expect(await say(8, '09:05', 'ines', 'plan')).not.toContain('Rain water');
  });

  it('asks for fresh buffer where a meter is to be calibrated before leaving', async () => {
    const say = await talking();
    await say(8, '09:02', 'ines', 'away from friday to the 23rd, Tomas steps in');
    expect(await say(8, '09:03', 'ines', 'plan')).toContain(
      'Fresh pH 7 and pH 4 buffer for the pen',
    );
  });
});
