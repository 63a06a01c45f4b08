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

/** Quarry Lane, with Priya reading German. */
const household = quarryLaneWith({
  members: quarryLaneWith().members.map((member) =>
    member.handle === 'priya' ? { ...member, language: 'de' as const } : member,
  ),
});

/** A talk that begins on Thursday 8 July 2027 at 18:00 and goes on by a minute with each message. */
function talking() {
  const talk = openRehearsal(store, household);
  let minute = 0;
  return (from: string, text: string, chat?: string) => {
    minute += 1;
    const at = `2027-07-08T18:${String(minute).padStart(2, '0')}:00+01:00`;
    return talk({ at, from, text, ...(chat === undefined ? {} : { chat }) });
  };
}

const textTo = (lines: readonly OutLine[], to: string): string =>
  lines
    .filter((line) => line.to === to)
    .map(({ text }) => text)
    .join('\n');

describe('What is settled about somebody', () => {
  it('is told to them as you, and by name to the others', async () => {
    const say = talking();
    const [own] = await say('tomas', "I'll do the jars tonight");
    expect(own?.text).toMatch(/^You take Jar shelf tonight\./);
    const [inGroup] = await say('tomas', "I'll do the buckets tonight", 'kitchen');
    expect(inGroup?.text).toMatch(/^Tomas takes Bucket row tonight\./);
    const [byOther] = await say('ines', "Tomas can't go on Friday");
    expect(byOther?.text).toMatch(/^Tomas cannot go tomorrow\./);
    const [roster] = await say('tomas', 'who goes when');
    expect(roster?.text).toContain('You have taken Jar shelf');
  });

  it('is told as du in German, also among others', async () => {
    const say = talking();
    const [claim] = await say('priya', 'ich mache die jars heute Abend');
    expect(claim?.text).toMatch(/^Du übernimmst heute Abend: Jar shelf\./);
    await say('ines', 'Tomas and Priya cover Friday to Sunday');
    const [roster] = await say('priya', 'wer geht wann');
    expect(roster?.text).toMatch(/Juli: du\./);
    expect(roster?.text).toMatch(/Juli: Tomas\./);
  });
});

describe('A day that does not suit', () => {
  it.each([
    [
      'tomas',
      "I can't come before Sunday",
      'You cannot go from Thursday 8 July to Saturday 10 July.',
    ],
    [
      'tomas',
      "can't make it until Saturday",
      'You cannot go from Thursday 8 July to Friday 9 July.',
    ],
    ['tomas', 'not before Friday', 'You cannot go today.'],
    ['tomas', 'only from Saturday on', 'You cannot go from Thursday 8 July to Friday 9 July.'],
    [
      'tomas',
      'I can only come from Saturday',
      'You cannot go from Thursday 8 July to Friday 9 July.',
    ],
    ['priya', 'kann ich erst Freitag', 'Heute kannst du nicht gehen.'],
    [
      'priya',
      'ich kann erst ab Samstag',
      'Von Donnerstag, 8. Juli bis Freitag, 9. Juli kannst du nicht gehen.',
    ],
    [
      'priya',
      'vor Samstag kann ich nicht',
      'Von Donnerstag, 8. Juli bis Freitag, 9. Juli kannst du nicht gehen.',
    ],
    ['priya', 'am Freitag habe ich keine Zeit', 'Morgen kannst du nicht gehen.'],
    ['tomas', "can't do the bench on Saturday", 'You cannot go on Saturday.'],
    ['tomas', "I'm only back on Sunday", 'You are away from Thursday 8 July to Saturday 10 July.'],
    [
      'priya',
      'bin erst Sonntag wieder da',
      'Du bist von Donnerstag, 8. Juli bis Samstag, 10. Juli weg.',
    ],
  ])('is understood of %s: “%s”', async (from, text, told) => {
    const [settled, ...more] = await talking()(from, text);
    expect(settled?.text?.startsWith(told)).toBe(true);
    expect(settled?.buttons?.flat()).toHaveLength(1);
    expect(more).toEqual([]);
  });

  it.each(['Tomas until Saturday, then Priya', 'Tomas and Priya until Sunday'])(
    'is none where it is said until when somebody goes: “%s”',
    async (text) => {
      const say = talking();
      await say('ines', "I'm away from Friday to Sunday");
      const said = await say('ines', text);
      expect(textTo(said, 'ines')).toMatch(/^Tomas (goes|and Priya go in turn) from Friday 9 July/);
      expect(textTo(said, 'ines')).not.toContain('cannot go');
    },
  );

  it('is none where the end of an absence was asked for', async () => {
    const say = talking();
    await say('tomas', "I'm away");
    const [away] = await say('tomas', 'until Saturday');
    expect(away?.text).toMatch(/^You are away from Thursday 8 July to Saturday 10 July\./);
  });

  it('gives back what was taken of one system for that day, and no more', async () => {
    const say = talking();
    await say('tomas', "I'll do the bench on Sunday");
    const [released] = await say('tomas', "can't do the bench on Sunday after all");
    expect(released?.text).toBe('North bench: given back for Sunday.');
  });
});

describe('A day that suits after all', () => {
  it.each([
    [
      'tomas',
      "I can't on Friday",
      'I can come on Friday after all',
      'You can go tomorrow after all. It is your turn then.',
    ],
    [
      'tomas',
      "I can't on Friday",
      'Friday works after all',
      'You can go tomorrow after all. It is your turn then.',
    ],
    [
      'tomas',
      "I can't on Friday",
      'I can after all',
      'You can go tomorrow after all. It is your turn then.',
    ],
    [
      'priya',
      'ich kann am Sonntag nicht',
      'ich kann am Sonntag doch',
      'Am Sonntag kannst du doch gehen. Dran bist du dann.',
    ],
    [
      'priya',
      'ich kann am Sonntag nicht',
      'Sonntag geht doch',
      'Am Sonntag kannst du doch gehen. Dran bist du dann.',
    ],
    [
      'priya',
      'ich kann am Sonntag nicht',
      'hab am Sonntag doch Zeit',
      'Am Sonntag kannst du doch gehen. Dran bist du dann.',
    ],
  ])('takes back what %s had said: “%s”, “%s”', async (from, hindered, text, told) => {
    const say = talking();
    await say('ines', 'Tomas and Priya cover Friday to Sunday');
    await say(from, hindered);
    const said = await say(from, text);
    expect(textTo(said, from)).toBe(told);
    const other = from === 'tomas' ? 'priya' : 'tomas';
    expect(textTo(said, other)).toMatch(/you need not go|Du brauchst .* nicht zu gehen/);
  });

  it('is one of several that did not, and the others stay so; undo brings it back', async () => {
    const say = talking();
    await say('ines', 'Tomas and Priya cover Friday to Sunday');
    await say('tomas', "I can't before Sunday");
    await say('tomas', 'Friday works after all');
    const [roster] = await say('tomas', 'who goes when');
    expect(roster?.text).toContain('Friday 9 July: you.\nSaturday 10 July: Priya.');
    // What was asked in between is no part of it.
    const [undone] = await say('tomas', 'undo');
    expect(undone?.text).toBe('Taken back: You can go tomorrow after all.');
    const [before] = await say('tomas', 'who goes when');
    expect(before?.text).toContain('Friday 9 July: Priya.');
  });

  it('is told kindly where nothing stood against it', async () => {
    const say = talking();
    await say('ines', 'Priya covers Friday');
    const [free] = await say('tomas', 'I can come on Friday after all');
    expect(free?.text).toBe(
      'Nothing stood against it: you can go tomorrow, by what I know. Priya goes then.',
    );
    expect(free?.buttons).toBeUndefined();
  });

  it('is not for a helper to say of another', async () => {
    const say = talking();
    await say('tomas', "I can't on Friday");
    const [refused] = await say('olli', 'Tomas can come on Friday after all');
    expect(refused?.kind).toBe('refusal');
  });

  it('is not meant where it is denied', async () => {
    const [settled] = await talking()('priya', 'ich kann am Freitag doch nicht');
    expect(settled?.text).toMatch(/^Morgen kannst du nicht gehen\./);
  });
});

describe('A receipt', () => {
  it('says once that a level is not known well enough for any dose', async () => {
    const talk = openRehearsal(store, {
      ...household,
      probes: household.probes.map((probe) => ({ ...probe, calibratedOn: null })),
    });
    const calibrations =
      'calibrated pen, 7.00 read 7.00 and 4.01 read 4.01, calibrated stick, 1.41 read 1.41';
    await talk({ at: '2027-07-08T17:50:00+01:00', from: 'ines', text: calibrations });
    const [receipt] = await talk({
      at: '2027-07-08T18:00:00+01:00',
      from: 'ines',
      text: 'jars ph 6.9 ec 0.7',
    });
    expect(receipt?.text?.match(/not known well enough/g)).toHaveLength(1);
  });
});
