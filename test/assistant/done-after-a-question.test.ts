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
  members: [
    ...quarryLaneWith().members,
    { handle: 'max', name: 'Max', role: 'helper' as const, language: 'de' as const },
  ],
});

interface Said {
  readonly text: string;
  readonly labels: readonly string[];
  /** System and duty or quantity of each entry. */
  readonly logged: readonly string[];
}

/** What comes of each message of a talk on the morning of 8 May 2027, after the round. */
async function talk(from: string, ...texts: readonly string[]): Promise<readonly Said[]> {
  const say = openRehearsal(store, household);
  await say({ at: '2027-05-07T08:00:00+01:00', from: 'ines', text: 'bench level 560 l' });
  await say({ at: '2027-05-08T07:00:00+01:00' });
  const said: Said[] = [];
  for (const [i, text] of texts.entries()) {
    const at = `2027-05-08T09:${String(i).padStart(2, '0')}:00+01:00`;
    const lines = (await say({ at, from, text })).filter(({ to }) => to === from);
    said.push({
      text: lines.map((line) => line.text).join('\n'),
      labels: lines.flatMap(({ buttons = [] }) => buttons.flat().map(({ label }) => label)),
      logged: lines.flatMap(({ logged = [] }) =>
        logged.map(({ system, quantity, duty }) =>
          [system ?? 'greenhouse', duty ?? quantity].map(String).join(' '),
        ),
      ),
    });
  }
  return said;
}

describe('A bare done after a question about some work', () => {
  it.each([
    ['how do I calibrate the pen', 'done'],
    ['how do i top up the gutters', 'done'],
    ['what does the bench need', 'did it'],
    ['when is the bench due', 'done!'],
    ['when was the filter of the bench last cleaned', 'just did it'],
    ['how long will the buckets last', 'ok done'],
    ['how are the gutters', 'did that'],
  ])(
    '"%s", "%s": asks whether it is of that alone, and logs nothing yet',
    async (question, done) => {
      const [, asked] = await talk('priya', question, done);
      expect(asked!.logged).toEqual([]);
      expect(asked!.text).toContain('Which work is done?');
      expect(asked!.labels).toContain('Everything');
    },
  );

  it('is asked about in German', async () => {
    const [, asked] = await talk('max', 'wie fülle ich die Rinne auf', 'erledigt');
    expect(asked!.logged).toEqual([]);
    expect(asked!.labels).toContain('Alles');
  });

  it('is of what was asked about where the first is chosen, and of all where all is said', async () => {
    const [, , one] = await talk(
      'priya',
      'when was the filter of the bench last cleaned',
      'done',
      '1',
    );
    expect(one!.logged).toEqual(['North bench clean']);
    const [, whole] = await talk('priya', 'what needs doing', 'done');
    for (const all of ['all', 'all of them', 'everything', 'the lot']) {
      const [, , logged] = await talk('priya', 'how do I top up the gutters', 'done', all);
      expect(logged!.logged, all).toEqual(whole!.logged);
    }
  });

  it.each(['all done', 'did it all', 'everything done'])('"%s" is of all', async (words) => {
    const [, whole] = await talk('priya', 'what needs doing', 'done');
    const [, said] = await talk('priya', 'how do I top up the gutters', words);
    expect(whole!.logged.length).toBeGreaterThan(1);
    expect(said!.logged).toEqual(whole!.logged);
  });

  it('is of all again once something was logged, or the whole list was asked for', async () => {
    const [, , , afterReading] = await talk(
      'priya',
      'how do I top up the gutters',
      'bench ph 6.0',
      'thanks',
      'done',
    );
    expect(afterReading!.logged.length).toBeGreaterThan(1);
    const [, , afterList] = await talk(
      'priya',
      'how do I top up the gutters',
      'what needs doing today',
      'done',
    );
    expect(afterList!.logged.length).toBeGreaterThan(1);
  });
});

describe('What is told after the steps of some work', () => {
  it('is of its system, and a done beside it says no more', async () => {
    const [, told] = await talk('priya', 'how do i top up the bench', 'done, took 45 litres');
    expect(told!.logged).toEqual(['North bench top-up']);
    const [, , done] = await talk('priya', 'how do i change the dwc', 'ph 5.9', 'done');
    expect(done!.logged).toEqual([]);
    expect(done!.labels).toContain('Change the solution of Bucket…');
  });
});

describe('A done beside what is told of something else', () => {
  it('is not lost: the reading is logged, and what is done is asked', async () => {
    for (const before of ['cant find the pen', 'how do i top up the bench']) {
      const [, told] = await talk('priya', before, 'done, gutters ph 5.9');
      expect(told!.logged, before).toEqual(['Gutter run ph']);
      expect(told!.labels, before).toContain('Everything');
    }
  });
});

describe('A level or a change told of the wrong system', () => {
  it.each([
    ['gutters full', 'i mean the bench', 'North bench: level 600 L'],
    ['bench full', 'i mean the dwc', 'Bucket row: level 108 L'],
    ['changed the bench', 'i meant the dwc', 'Bucket row: solution changed (about 108 L)'],
  ])('%s, %s', async (wrong, right, told) => {
    const [, corrected] = await talk('tomas', wrong, right);
    expect(corrected!.text).toContain(`Logged instead for ${told}`);
  });
});

describe('A done after talk of something else', () => {
  it.each([
    ["i'll do the calibration later", 'done'],
    ['cant find the pen', 'done'],
    ['power went out at 8', 'its back', 'done'],
    ['everything is fine here', '👍'],
    ['gutters ph 5.9', '👍'],
    ['is 5.4 too low', '✅'],
  ])('%j', async (...texts) => {
    const said = await talk('priya', ...texts);
    expect(said.at(-1)!.logged).toEqual([]);
    expect(said.at(-1)!.labels).toContain('Everything');
  });

  it.each([
    ['done'],
    ['✅'],
    ['👍'],
    ['gutters ph 5.9', 'done'],
    ['gutters ph 5.9', '✅'],
    ['thanks', '👍'],
  ])('%j is of the list', async (...texts) => {
    const said = await talk('priya', ...texts);
    expect(said.at(-1)!.logged.length).toBeGreaterThan(1);
  });
});

describe('Who did it, and when it was last done', () => {
  it('is told of work that leaves no figure, and from the set-up where nobody has logged it', async () => {
    const [calibrated, tied, cleaned, , , after, who] = await talk(
      'priya',
      'when was the last calibration',
      'when were the tomatoes last tied up',
      'when did we last clean the air stones',
      'when was the bench filter last cleaned',
      'tied up the tomatoes',
      'when were the tomatoes last tied up',
      'who tied up the tomatoes',
    );
    expect(calibrated!.text).toMatch(
      /Nobody has told me of that yet\. By the set-up:\nPen: last on .+\.\nStick: last on/u,
    );
    expect(tied!.text).toContain('Tie up the tomatoes: last');
    expect(cleaned!.text).toBe('Nobody has logged that yet.');
    expect(after!.text).toContain('Priya: “tie up the tomatoes” done');
    expect(who!.text).toContain('Priya: “tie up the tomatoes” done');
  });

  it('is told in German', async () => {
    const [calibrated, cleaned] = await talk(
      'max',
      'wann haben wir zuletzt den pen kalibriert',
      'wann wurde zuletzt der Filter gereinigt',
    );
    expect(calibrated!.text).toMatch(/Pen: zuletzt am/u);
    expect(cleaned!.text).toBe('Das hat noch niemand eingetragen.');
  });
});

describe('How much water a system took', () => {
  it.each([
    ['how much did the bench take since wednesday', 'since Wednesday'],
    ['how much water has the bench used since yesterday', 'since yesterday'],
    ['how much did the bench drink since 3 may', 'since Monday'],
    ['how much did the bench drink this week', 'since Monday'],
  ])('%s', async (question, since) => {
    const [answer] = await talk('priya', question);
    expect(answer!.text).toContain(since);
  });
});
