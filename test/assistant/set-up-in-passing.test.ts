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

/** What is said to whoever writes, on Tuesday 4 May 2027. */
async function answerTo(from: string, text: string): Promise<string> {
  const talk = openRehearsal(store, household);
  const lines = await talk({ at: '2027-05-04T08:20:00+01:00', from, text });
  return lines
    .map((line) => (line.to === from ? `${String(line.kind)}: ${String(line.text)}` : ''))
    .join('\n');
}

describe('What a system holds now, told in passing', () => {
  it.each(['the bench holds 620 l now', 'bench can hold 620 l now', 'bench now holds 620 l'])(
    'is shown before it is changed, where it is more than till now: “%s”',
    async (text) => {
      expect(await answerTo('ines', text)).toContain('600 L → 620 L');
    },
  );

  it('is asked about where it may as well be what is in it', async () => {
    expect(await answerTo('ines', 'the bench holds 300 l now')).toContain(
      'is that what is in it now',
    );
  });
});

describe('Plants put into a system', () => {
  it('are shown before they are kept', async () => {
    expect(await answerTo('ines', 'put 10 lettuces in the jars')).toContain(
      '10 × lettuce planted in Jar shelf',
    );
    expect(await answerTo('ines', 'put 10 cans in the bench')).toContain('topped up 100 L');
  });
});

describe('The days between two, in German', () => {
  it('are all of them', async () => {
    const text = await answerTo('priya', 'zwischen Freitag und Montag kann ich nicht');
    expect(text).toContain('Von Freitag, 7. Mai bis Montag, 10. Mai');
  });
});
