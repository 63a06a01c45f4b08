import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal } from '../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

describe('A nudge about many duties', () => {
  it('has buttons for those that it names, and no more', async () => {
    const talk = openRehearsal(store);
    await talk({
      at: '2027-07-08T18:00:00+01:00',
      from: 'ines',
      text: 'away from friday to sunday, Tomas steps in',
    });
    const said = await talk({ at: '2027-07-09T22:00:00+01:00' });
    const nudges = said.filter(({ kind, to }) => kind === 'alert' && to === 'tomas');
    const nudge = nudges.find(({ text }) => text?.startsWith('Still open today'));
    expect(nudge?.text).toMatch(/ \d+ more /);
    expect(nudge?.buttons).toHaveLength(3);
    for (const row of nudge?.buttons ?? []) expect(row).toHaveLength(2);
  });
});
