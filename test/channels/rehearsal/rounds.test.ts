import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../../src/assistant/ports/store.ts';
import type { LocalTime } from '../../../src/greenhouse/local-time.ts';
import { openTestStore } from '../../storage/open-test-store.ts';
import { openRehearsal, quarryLaneWith } from './open-rehearsal.ts';
import type { OutLine } from './rehearse-child.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const rounds = (lines: readonly OutLine[]): readonly OutLine[] =>
  lines.filter(({ kind }) => kind === 'round');
const morningAt = (morning: string) => quarryLaneWith({ morning: morning as LocalTime });

describe('The morning round', () => {
  it('goes to the grower once every local day at the morning, each at its own time', async () => {
    const talk = openRehearsal(store);
    const out = await talk(
      { at: '2027-05-04T08:00:00+01:00' },
      { at: '2027-05-07T08:00:00+01:00' },
    );
    expect(rounds(out).map(({ at, to }) => [at, to])).toEqual([
      ['2027-05-05T07:00:00+01:00', 'ines'],
      ['2027-05-06T07:00:00+01:00', 'ines'],
      ['2027-05-07T07:00:00+01:00', 'ines'],
    ]);
  });

  it('goes out at the first instant after a gap, where the clock skips its time', async () => {
    const talk = openRehearsal(store, morningAt('01:30'));
    const out = await talk({ at: '2027-03-27T12:00:00Z' }, { at: '2027-03-28T12:00:00+01:00' });
    expect(rounds(out).map(({ at }) => at)).toEqual(['2027-03-28T02:00:00+01:00']);
  });

  it('goes out once where the clock shows its time twice', async () => {
    const talk = openRehearsal(store, morningAt('01:30'));
    const out = await talk({ at: '2027-10-30T12:00:00+01:00' }, { at: '2027-10-31T12:00:00Z' });
    expect(rounds(out).map(({ at }) => at)).toEqual(['2027-10-31T01:30:00+01:00']);
  });

  it('is one line when nothing is due', async () => {
    const { systems, ...bare } = quarryLaneWith({ chores: [] });
    const talk = openRehearsal(store, { ...bare, systems: systems.slice(0, 1) });
    const out = await talk(
      { at: '2027-05-04T08:00:00+01:00', from: 'ines', text: 'changed the bench, 600 l' },
      { at: '2027-05-04T08:01:00+01:00', from: 'ines', text: 'bench ph 6.1 ec 2.4' },
      { at: '2027-05-05T06:59:00+01:00', from: 'ines', text: 'bench ph 6.1 ec 2.4' },
      { at: '2027-05-05T07:00:00+01:00' },
    );
    const [round] = rounds(out);
    expect(round?.due).toEqual([]);
    expect(round?.text?.split('\n')).toHaveLength(1);
  });

  it('does not send anybody again to a top-up that one of several reports left out', async () => {
    const greenhouse = quarryLaneWith();
    const talk = openRehearsal(store, {
      ...greenhouse,
      systems: greenhouse.systems.slice(1, 3),
      chores: [],
    });
    const topUps = (lines: readonly OutLine[]) =>
      rounds(lines)[0]!
        .due!.filter(({ duty }) => duty === 'top-up')
        .map(({ system }) => system);
    const low = { at: '2027-05-04T06:00:00+01:00', from: 'ines', text: 'buckets level 74 l' };
    const lowToo = { at: '2027-05-04T06:01:00+01:00', from: 'ines', text: 'gutters level 42 l' };
    const before = await talk(low, lowToo, { at: '2027-05-04T07:00:00+01:00' });
    expect(topUps(before)).toEqual(expect.arrayContaining(['Bucket row', 'Gutter run']));
    const after = await talk(
      { at: '2027-05-04T09:00:00+01:00', from: 'tomas', text: 'topped up the buckets 34 l' },
      { at: '2027-05-05T07:00:00+01:00' },
    );
    expect(topUps(after)).toEqual([]);
  });

  it('asks no more for a calibration that was made and whose figures nobody kept', async () => {
    const greenhouse = quarryLaneWith();
    const [pen] = greenhouse.probes;
    const talk = openRehearsal(store, { ...greenhouse, probes: [{ ...pen!, calibratedOn: null }] });
    const calibrations = (lines: readonly OutLine[]) =>
      rounds(lines)[0]!.due!.filter(({ duty }) => duty === 'calibration');
    const before = await talk(
      { at: '2027-05-04T06:00:00+01:00' },
      { at: '2027-05-04T07:00:00+01:00' },
    );
    expect(calibrations(before)).toHaveLength(1);
    const [question] = await talk({
      at: '2027-05-04T09:00:00+01:00',
      from: 'ines',
      text: 'calibrated the pen',
    });
    const done = question!.buttons!.flat().find(({ label }) => label.includes('no figures'))!;
    const after = await talk(
      { at: '2027-05-04T09:01:00+01:00', from: 'ines', press: done.press },
      { at: '2027-05-05T07:00:00+01:00' },
    );
    expect(after.find(({ kind }) => kind === 'receipt')!.logged).toMatchObject([
      { quantity: 'duty-done', value: 1 },
    ]);
    expect(calibrations(after)).toEqual([]);
  });

  it('bundles what can wait with what cannot, and says why for each', async () => {
    const talk = openRehearsal(store);
    const out = await talk(
      { at: '2027-05-04T06:00:00+01:00', from: 'ines', text: 'bench level 590 l' },
      { at: '2027-05-04T06:01:00+01:00', from: 'ines', text: 'dwc level 74 l' },
      { at: '2027-05-04T06:02:00+01:00', from: 'ines', text: 'gutters level 90 l' },
      { at: '2027-05-04T06:03:00+01:00', from: 'ines', text: 'jars level 20 l' },
      { at: '2027-05-04T07:00:00+01:00' },
    );
    const due = rounds(out)[0]?.due ?? [];
    const topUp = (system: string) =>
      due.find((duty) => duty['duty'] === 'top-up' && duty['system'] === system);
    expect(topUp('Bucket row')).toMatchObject({ dueOn: '2027-05-04' });
    // 34 L of room, and a little more to be sure of the brim.
    expect(topUp('Bucket row')?.['litres']).toBeGreaterThanOrEqual(34);
    expect(topUp('Bucket row')?.['litres']).toBeLessThan(40);
    expect(topUp('Gutter run')).toMatchObject({ alongside: true });
    expect(due.every(({ why }) => typeof why === 'string' && why.length > 10)).toBe(true);
  });
});
