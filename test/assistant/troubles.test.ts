import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal } from '../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const at = (clock: string): string => `2027-05-04T${clock}:00+01:00`;

describe('Something wrong that a helper tells of', () => {
  it('is answered with what to do first, and logged and passed on to the grower when it is kept', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('07:30') });
    const asked = await talk({ at: at('08:20'), from: 'tomas', text: 'bench leaking' });
    expect(asked[0]).toMatchObject({ kind: 'question', to: 'tomas' });
    expect(asked[0]!.text).toMatch(/touch no plug or cable that is wet/);
    expect(asked[0]!.text).toMatch(/keep it as a note, and tell Ines\?$/);
    const kept = await talk({ at: at('08:21'), from: 'tomas', text: 'yes' });
    expect(kept.flatMap(({ logged }) => logged ?? [])).toMatchObject([
      { system: 'North bench', quantity: 'note', note: 'bench leaking' },
    ]);
    const told = kept.filter(({ to, kind }) => to === 'ines' && kind === 'alert');
    expect(told).toHaveLength(1);
    expect(told[0]!.text).toMatch(/^Tomas writes about North bench: “bench leaking”\./);
    const later = await talk({ at: at('09:30') });
    expect(later.filter(({ text }) => text?.includes('leaking'))).toEqual([]);
  });

  it('is asked of the grower without a word of telling anybody', async () => {
    const talk = openRehearsal(store);
    await talk({ at: at('07:30') });
    const [asked] = await talk({ at: at('08:20'), from: 'ines', text: 'leaves yellow' });
    expect(asked!.text).toMatch(/Shall I keep it as a note\?$/);
  });
});
