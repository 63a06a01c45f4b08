import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal, type Talk } from '../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const at = (day: number, clock: string): string =>
  `2027-06-${String(day).padStart(2, '0')}T${clock}:00+01:00`;

/** The tubs told every evening, a litre or two apart from day to day, from 1 June on. */
const losses = [2.6, 2.1, 2.8, 2.4, 3.1, 2.3, 2.9, 2.5];

async function quietWeek(talk: Talk, clock = '18:00') {
  let litres = 108;
  const out = [...(await talk({ at: at(1, '07:30'), from: 'ines', text: 'dwc 108 l' }))];
  for (const [day, loss] of losses.entries()) {
    litres -= loss;
    const text = `dwc level ${litres.toFixed(1)} l`;
    out.push(...(await talk({ at: at(day + 2, clock), from: 'tomas', text })));
  }
  return { litres, out };
}

/** What was said unasked and is no reminder of undone work. */
const surprisesIn = (lines: Awaited<ReturnType<Talk>>) =>
  lines.filter(({ kind, text }) => kind === 'alert' && !text!.startsWith('Still open'));

describe('Water that goes where it should not', () => {
  it('is told once, to the grower, with what was expected and what to look at', async () => {
    const talk = openRehearsal(store);
    const { litres, out } = await quietWeek(talk);
    expect(surprisesIn(out)).toEqual([]);
    const text = `dwc level ${(litres - 24).toFixed(1)} l`;
    const told = surprisesIn(
      await talk({ at: at(10, '18:00'), from: 'tomas', text }, { at: at(11, '12:00') }),
    );
    expect(told).toHaveLength(1);
    expect(told[0]).toMatchObject({ to: 'ines', at: at(10, '18:00') });
    expect(told[0]!.text).toMatch(/^Bucket row has lost about 24 L since yesterday/);
    expect(told[0]!.text).toMatch(/leak: the tubs/);
    expect(surprisesIn(await talk({ at: at(14, '12:00') }))).toEqual([]);
  });

  it('waits for the morning where nothing is near its low mark', async () => {
    const talk = openRehearsal(store);
    const { litres } = await quietWeek(talk, '23:00');
    await talk({
      at: at(10, '23:00'),
      from: 'tomas',
      text: `dwc level ${(litres - 12).toFixed(1)} l`,
    });
    const told = surprisesIn(await talk({ at: at(11, '12:00') }));
    expect(told.map((line) => line.at)).toEqual([at(11, '07:00')]);
  });

  it('is not told of a slip that was put right', async () => {
    const talk = openRehearsal(store);
    const { litres } = await quietWeek(talk, '23:00');
    await talk({
      at: at(10, '23:00'),
      from: 'tomas',
      text: `dwc level ${(litres - 12).toFixed(1)} l`,
    });
    await talk({ at: at(10, '23:02'), from: 'tomas', text: 'undo' });
    expect(surprisesIn(await talk({ at: at(11, '12:00') }))).toEqual([]);
  });

  it('is not told of a level and a top-up of the same visit, told in the wrong order', async () => {
    const talk = openRehearsal(store);
    const told = await talk(
      { at: at(10, '18:00'), from: 'tomas', text: 'dwc level 108 l' },
      { at: at(10, '18:10'), from: 'ines', text: 'topped up the dwc 12 l' },
      { at: at(11, '12:00') },
    );
    expect(surprisesIn(told)).toEqual([]);
  });

  it('is told the other way round where hardly any is used', async () => {
    const talk = openRehearsal(store);
    const { litres } = await quietWeek(talk);
    const out = [];
    for (let day = 10; day < 18; day += 1) {
      const text = `dwc level ${(litres - 0.2 * (day - 9)).toFixed(1)} l`;
      out.push(...(await talk({ at: at(day, '18:00'), from: 'tomas', text })));
    }
    const told = surprisesIn(out);
    expect(told).toHaveLength(1);
    expect(told[0]!.text).toMatch(/roots/);
  });
});

describe('A figure that does not do what it should', () => {
  it('is told where a sensor stands still, once', async () => {
    const talk = openRehearsal(store);
    const out = [];
    for (let day = 1; day < 9; day += 1) {
      for (const [i, clock] of ['03:00', '09:00', '15:00', '21:00'].entries()) {
        const value = day < 4 ? 20 + 0.3 * i + 0.1 * day : 20.7;
        const sensor = { system: 'Gutter run', quantity: 'water-temperature', value, unit: '°C' };
        out.push(...(await talk({ at: at(day, clock), sensor })));
      }
    }
    const told = surprisesIn(out);
    expect(told).toHaveLength(1);
    expect(told[0]!.text).toMatch(/sensor of Gutter run has shown 20.7 °C since/);
  });

  it.each([
    [
      'one by one',
      ['nft ph 5.83', 'buckets ph 5.83', 'bench ph 5.83'],
      /in a row at Gutter run since/,
    ],
    ['at once', ['nft ph 5.83, buckets ph 5.83, bench ph 5.83'], /in a row at .+, .+ and .+ since/],
  ])('is told once of a hand meter, wherever it was read, %s', async (_how, texts, expected) => {
    const talk = openRehearsal(store);
    const out = [];
    for (let day = 1; day < 12; day += 1) {
      for (const text of texts) {
        out.push(...(await talk({ at: at(day, '18:00'), from: 'tomas', text })));
      }
    }
    const told = surprisesIn(out);
    expect(told).toHaveLength(1);
    expect(told[0]!.text).toMatch(expected);
  });

  it('is told where pH runs off by itself, once', async () => {
    const talk = openRehearsal(store);
    const out = [];
    const values = [6, 6.1, 6, 5.9, 6, 6, 5.9, 6, 5.7, 5.4, 5.1, 4.9, 4.7];
    for (const [day, value] of values.entries()) {
      const text = `nft ph ${String(value)}`;
      out.push(...(await talk({ at: at(day + 1, '18:00'), from: 'tomas', text })));
    }
    const told = surprisesIn(out).filter(({ text }) => text!.startsWith('The pH'));
    expect(told).toHaveLength(1);
    expect(told[0]!.text).toMatch(/fallen from 6.0 to 5.4/);
  });

  it('is not told where readings wander as they do', async () => {
    const talk = openRehearsal(store);
    const out = [];
    const values = [6, 6.1, 6.1, 6.2, 6.1, 6, 6, 5.9, 6, 6, 6, 5.9, 5.8, 5.9];
    for (const [day, value] of values.entries()) {
      const text = `nft ph ${String(value)} ec ${(1.3 + 0.02 * (day % 3)).toFixed(2)}`;
      out.push(...(await talk({ at: at(day + 1, '18:00'), from: 'ines', text })));
    }
    expect(surprisesIn(out)).toEqual([]);
  });
});
