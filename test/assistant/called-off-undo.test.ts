import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal, quarryLaneWith } from '../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const household = quarryLaneWith({
  members: quarryLaneWith().members.map((member) =>
    member.handle === 'priya' ? { ...member, language: 'de' as const } : member,
  ),
});

/** A talk on 4 May that goes on by a minute with each message, or by more where it is said. */
function talking() {
  const talk = openRehearsal(store, household);
  let minute = 0;
  return (from: string, text: string, minutes = 1) => {
    minute += minutes;
    const at = `2027-05-04T08:${String(minute).padStart(2, '0')}:00+01:00`;
    return talk({ at, from, text });
  };
}

describe('“No wait” after an undo', () => {
  it.each([
    ['tomas', 'sorry, 6.2 not 6.0', 'undo', 'no wait'],
    ['tomas', 'sorry, 6.2 not 6.0', 'undo', 'undo the undo'],
    ['priya', 'sorry, 6,2 nicht 6,0', 'rückgängig', 'doch'],
  ])(
    'of a correction by %s corrects again and counts nothing twice: “%s”, “%s”, “%s”',
    async (from, corrected, undo, back) => {
      const say = talking();
      await say(from, 'jars ph 6.0');
      await say(from, corrected);
      const [undone] = await say(from, undo);
      expect(undone).toMatchObject({ struck: [{ value: 6.2 }], logged: [{ value: 6 }] });
      const [again, ...more] = await say(from, back);
      expect(again).toMatchObject({
        kind: 'correction',
        struck: [{ value: 6 }],
        logged: [{ quantity: 'ph', value: 6.2 }],
      });
      expect(more).toEqual([]);
    },
  );

  it('of a settlement settles it again, and undo takes that back', async () => {
    const say = talking();
    await say('tomas', 'jars ph 6.0');
    await say('tomas', "I'll do the jars tonight");
    await say('tomas', 'undo');
    const [again] = await say('tomas', 'no wait');
    expect(again?.text).toMatch(/^You take Jar shelf tonight\./);
    const [undone] = await say('tomas', 'undo');
    expect(undone?.text).toBe('Taken back: You take Jar shelf tonight.');
  });

  it('is no word about an undo of some time ago, nor where nothing was undone', async () => {
    const say = talking();
    await say('tomas', 'jars ph 6.0');
    expect((await say('tomas', 'no wait'))[0]).toMatchObject({ kind: 'answer' });
    await say('tomas', 'undo');
    expect((await say('tomas', 'no wait', 20))[0]).toMatchObject({ kind: 'answer' });
    expect((await say('tomas', 'undo the undo'))[0]).toMatchObject({
      kind: 'receipt',
      logged: [{ value: 6 }],
    });
  });
});

describe('“Doch nicht”', () => {
  it('takes back what was told last where nothing was undone, and after an undo the undo', async () => {
    const say = talking();
    await say('priya', 'jars 3 l nachgefüllt');
    const [struck] = await say('priya', 'doch nicht');
    expect(struck).toMatchObject({ kind: 'correction', struck: [{ value: 3 }] });
    const [back] = await say('priya', 'doch nicht');
    expect(back).toMatchObject({ logged: [{ quantity: 'top-up', value: 3 }] });
  });
});
