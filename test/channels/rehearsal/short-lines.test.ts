import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../../src/assistant/ports/store.ts';
import { openTestStore } from '../../storage/open-test-store.ts';
import { openRehearsal } from './open-rehearsal.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const at = (day: number, clock: string): string => `2027-05-${day}T${clock}:00+01:00`;

describe('A reservoir change on a phone', () => {
  it('is told in the round by what and how much with its care in short, and in steps when asked', async () => {
    const talk = openRehearsal(store);
    await talk({ at: `2027-05-04T07:30:00+01:00` });
    const round = (await talk({ at: at(26, '07:30') })).findLast(({ kind }) => kind === 'round');
    const lines = round!.text!.split('\n');
    const change = lines.find((line) => line.includes('Change the solution of Bucket row'))!;
    expect(change).toMatch(/about 108 L: \d+ mL nutrient A and \d+ mL nutrient B/);
    expect(change).toMatch(/Careful: unplug before hands go in; A and B never together undiluted/);
    for (const line of lines) expect(line.length, line).toBeLessThan(330);
    const asked = /“(how do I change .*)”/.exec(round!.text!)![1]!;
    const [how] = await talk({ at: at(26, '08:00'), from: 'ines', text: asked });
    expect(how!.text).toMatch(/\n1\. Unplug pumps and heaters\.\n2\. Empty it\./);
    expect(how!.text).toMatch(
      /Careful: Unplug mains devices before your hands go into the water\./,
    );
  });
});
