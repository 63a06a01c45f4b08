import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal, quarryLaneWith } from '../channels/rehearsal/open-rehearsal.ts';
import type { OutLine } from '../channels/rehearsal/rehearse-child.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const household = quarryLaneWith({
  members: quarryLaneWith().members.map((member) =>
    member.handle === 'olli' ? { ...member, language: 'de' as const } : member,
  ),
});

/** A talk on one morning; `chat` names a group. */
function talking() {
  const talk = openRehearsal(store, household);
  let minute = 0;
  return (from: string, text: string, chat?: string): Promise<readonly OutLine[]> => {
    minute += 1;
    const at = `2027-07-01T08:${String(minute).padStart(2, '0')}:00+01:00`;
    return talk({ at, from, text, ...(chat === undefined ? {} : { chat }) });
  };
}

type Say = ReturnType<typeof talking>;

async function textOf(say: Say, from: string, text: string, chat?: string): Promise<string> {
  return (await say(from, text, chat)).map((line) => line.text ?? '').join('\n');
}

async function choose(say: Say, from: string, text: string, yes = 'yes'): Promise<string> {
  await say(from, text);
  return textOf(say, from, yes);
}

describe('A member with units of their own', () => {
  it('is written to in them, and a bare number of theirs is meant in them', async () => {
    const say = talking();
    await say('ines', 'bench level 300 l');
    expect(await textOf(say, 'priya', 'show me gallons')).toContain(
      'You are written to in US gallons',
    );
    expect(await textOf(say, 'priya', 'yes')).toContain('Done: you are written to in US gallons');
    expect(await textOf(say, 'priya', 'how full is the bench')).toMatch(
      /about 79 gal of 158.5 gal/,
    );
    const [receipt] = await say('priya', 'topped up the bench with 10');
    expect(receipt?.text).toContain('topped up 10 gal');
    expect(receipt?.logged?.[0]).toMatchObject({ quantity: 'top-up', value: 37.85411784 });
    const [litres] = await say('ines', 'topped up the bench with 10');
    expect(litres?.text).toContain('topped up 10 L');
  });

  it('changes nothing for the others, nor for a group', async () => {
    const say = talking();
    await choose(say, 'priya', 'I use Fahrenheit and gallons');
    await say('priya', 'bench level 100 gal, water temp 70');
    expect(await textOf(say, 'ines', 'how full is the bench')).toContain('about 378 L of 600 L');
    const [receipt] = await say('priya', 'bench topped up 10, water temp 71', 'family');
    expect(receipt?.to).toBe('family');
    expect(receipt?.text).toMatch(/37\.85 L/);
    expect(receipt?.text).toMatch(/21\.7 °C/);
  });

  it('may name the scale of a ppm meter, and go back to what the household uses', async () => {
    const say = talking();
    expect(await textOf(say, 'tomas', 'I use ppm 700')).toContain('ppm (700 for 1 mS/cm)');
    await say('tomas', 'yes');
    const [receipt] = await say('tomas', 'bench ec 1400 ppm');
    expect(receipt?.logged?.[0]).toMatchObject({ quantity: 'ec', value: 2 });
    expect(receipt?.text).toContain('1400 ppm');
    const [plain] = await say('ines', 'bench ec 1000 ppm');
    expect(plain?.logged?.[0]).toMatchObject({ quantity: 'ec', value: 2 });
    await choose(say, 'tomas', 'use the same units as everybody');
    const [back] = await say('tomas', 'bench ec 1000 ppm');
    expect(back?.logged?.[0]).toMatchObject({ quantity: 'ec', value: 2 });
    expect(back?.text).toContain('2.0 mS/cm');
  });

  it('chooses them in German, one at a time or several, and can take it back', async () => {
    const say = talking();
    expect(await textOf(say, 'olli', 'zeig mir Fahrenheit')).toContain('Du bekommst alles in °F');
    await say('olli', 'ja');
    await choose(say, 'olli', 'nimm Gallonen für mich', 'ja');
    const [receipt] = await say('olli', 'bench Wassertemperatur 70, 12 nachgefüllt');
    expect(receipt?.text).toContain('70 °F');
    expect(receipt?.text).toContain('12 gal');
    await say('olli', 'rückgängig');
    await choose(say, 'olli', 'zeig mir Liter', 'ja');
    const [litres] = await say('olli', 'bench 12 nachgefüllt');
    expect(litres?.text).toContain('12 l');
  });

  it('is the grower’s to settle for others, and nobody else’s', async () => {
    const say = talking();
    const [refused] = await say('priya', 'use gallons for tomas');
    expect(refused?.kind).toBe('refusal');
    expect(await choose(say, 'ines', 'tomas prefers gallons')).toContain('Tomas is written to in');
    const [receipt] = await say('tomas', 'topped up the bench with 10');
    expect(receipt?.text).toContain('10 gal');
    const [same] = await say('ines', 'tomas prefers gallons');
    expect(same?.kind).toBe('refusal');
  });
});
