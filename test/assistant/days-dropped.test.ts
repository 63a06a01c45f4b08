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

/** A talk on 8 July 2027, a Thursday. */
function talking() {
  const talk = openRehearsal(store, quarryLaneWith());
  return (clock: string, from: string, text: string) =>
    talk({ at: `2027-07-08T${clock}:00+01:00`, from, text });
}

const alertsTo = (lines: readonly OutLine[], to: string): readonly string[] =>
  lines.filter((line) => line.to === to && line.kind === 'alert').map(({ text }) => text ?? '');

describe('A helper who gives up all days that are theirs', () => {
  it.each(['i cant do my days anymore', 'count me out', "i don't want to do this anymore"])(
    'is told of to the grower: “%s”',
    async (text) => {
      const say = talking();
      await say('18:00', 'ines', 'tomas does mondays and thursdays');
      const lines = await say('18:05', 'tomas', text);
      expect(alertsTo(lines, 'ines')).toHaveLength(1);
      expect(alertsTo(lines, 'ines')[0]).toMatch(/^Tomas goes on none of the 12 days/);
      expect(alertsTo(lines, 'olli')).toEqual([]);
    },
  );

  it('is not told of where it is one day, or the grower’s own word', async () => {
    const say = talking();
    await say('18:00', 'ines', 'tomas does mondays and thursdays');
    expect(alertsTo(await say('18:05', 'tomas', 'i cant on monday'), 'ines')).toEqual([]);
    expect(alertsTo(await say('18:10', 'ines', 'tomas cant do his days'), 'ines')).toEqual([]);
  });
});
