import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../../src/assistant/ports/store.ts';
import { openTestStore } from '../../storage/open-test-store.ts';
import { openRehearsal } from './open-rehearsal.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const at = (time: string): string => `2027-05-04T${time}:00+01:00`;

describe('An outage that a helper reports', () => {
  it('is told to the grower at once, and only once', async () => {
    const talk = openRehearsal(store);
    const out = await talk({ at: at('09:00'), from: 'tomas', text: 'air pump dead on the dwc' });
    expect(out.filter(({ kind, to }) => kind === 'alert' && to === 'ines')).toHaveLength(1);
    const after = await talk({ at: at('09:01') });
    expect(after.filter(({ kind }) => kind === 'alert')).toEqual([]);
  });

  it('brings a reminder before each system runs out, each at its time, in order', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('09:00'), from: 'tomas', text: 'power out' });
    const later = await talk({ at: at('23:00') });
    const alerts = later.filter(({ kind }) => kind === 'alert');
    expect(alerts.length).toBeGreaterThan(2);
    const times = alerts.map((alert) => Date.parse(alert.at!));
    expect(times).toEqual(times.toSorted((one, other) => one - other));
    expect(times[0]).toBeGreaterThan(Date.parse(at('09:00')));
    expect(times[0]).toBeLessThan(Date.parse(at('23:00')));
  });

  it('brings none any more once it is over', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('09:00'), from: 'tomas', text: 'power out' });
    await talk({ at: at('09:10'), from: 'tomas', text: 'power back' });
    const later = await talk({ at: at('23:00') });
    expect(later.filter(({ kind }) => kind === 'alert')).toEqual([]);
  });
});
