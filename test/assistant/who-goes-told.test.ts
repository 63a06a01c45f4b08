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

const household = quarryLaneWith({
  members: quarryLaneWith().members.map((member) =>
    member.handle === 'priya' ? { ...member, language: 'de' as const } : member,
  ),
});

/** A talk on 8 July 2027, a Thursday, unless another day is said. */
function talking() {
  const talk = openRehearsal(store, household);
  const at = (clock: string, day: string): string => `2027-07-${day}T${clock}:00+01:00`;
  return {
    say: (clock: string, from: string, text: string, day = '08') =>
      talk({ at: at(clock, day), from, text }),
    wait: (clock: string, day = '08') => talk({ at: at(clock, day) }),
  };
}

const alertsTo = (lines: readonly OutLine[], to: string): readonly string[] =>
  lines.filter((line) => line.to === to && line.kind === 'alert').map(({ text }) => text ?? '');

describe('A helper who had been told to go', () => {
  it('hears it when that is taken back, once', async () => {
    const { say, wait } = talking();
    await say('18:00', 'ines', 'Tomas covers friday');
    const undone = await say('18:05', 'ines', 'undo');
    expect(alertsTo(undone, 'tomas')).toEqual([
      'Ines has changed who goes: you need not go tomorrow. Ines goes then.',
    ]);
    expect(alertsTo(undone, 'olli')).toEqual([]);
    expect(alertsTo(await wait('19:00'), 'tomas')).toEqual([]);
  });

  it('hears it when another goes instead, in the language they read, and the others nothing', async () => {
    const { say } = talking();
    await say('18:00', 'ines', 'away from friday to sunday, Priya steps in');
    const handed = await say('18:10', 'ines', 'Tomas covers from friday to sunday');
    expect(alertsTo(handed, 'priya')).toEqual([
      'Ines hat geändert, wer geht: Du brauchst von Freitag, 9. Juli bis Sonntag, 11. Juli nicht zu gehen. Dann geht Tomas.',
    ]);
    expect(alertsTo(handed, 'tomas')).toHaveLength(1);
    expect(alertsTo(handed, 'olli')).toEqual([]);
  });

  it('is told whose turn it stays while nobody else is named', async () => {
    const { say } = talking();
    await say('18:00', 'ines', 'away from friday to sunday');
    await say('18:01', 'ines', 'all in turn');
    const undone = await say('18:05', 'ines', 'undo');
    expect(alertsTo(undone, 'tomas')).toEqual([
      'Ines has taken back who steps in. Until somebody is named, it is your turn tomorrow.',
    ]);
    const named = await say('18:06', 'ines', 'Olli covers from friday to sunday');
    expect(alertsTo(named, 'tomas')).toEqual([
      'Ines has changed who goes: you need not go tomorrow. Olli goes then.',
    ]);
  });

  it('hears it when the grower comes back before', async () => {
    const { say } = talking();
    await say('18:00', 'ines', 'away from friday to the 16th, Tomas steps in');
    const back = await say('12:00', 'ines', "I'm back", '12');
    expect(alertsTo(back, 'tomas').at(-1)).toBe(
      'Ines has changed who goes: you need not go from Monday 12 July to Friday 16 July. Ines goes then.',
    );
  });

  it('of one duty hears who has it now', async () => {
    const { say } = talking();
    await say('18:00', 'tomas', "I'll do the jars tonight");
    const taken = await say('18:05', 'olli', "I'll do the jars tonight");
    expect(alertsTo(taken, 'tomas')).toEqual([
      'Olli takes Jar shelf today instead of you. You need not.',
    ]);
  });
});

describe('Who steps in, said after the question was answered and taken back', () => {
  it('begins with the absence, not today', async () => {
    const { say } = talking();
    await say('18:00', 'ines', 'away from friday to the 16th, Olli steps in');
    await say('18:02', 'ines', 'undo');
    await say('18:03', 'ines', 'away from friday to the 16th, Olli steps in');
    const [settled] = await say('18:04', 'ines', 'Tomas covers till sunday, then Priya');
    expect(settled?.text).toBe(
      'Tomas goes from Friday 9 July to Sunday 11 July.\nPriya goes from Monday 12 July to Friday 16 July.',
    );
  });
});

describe('Who goes, said loosely', () => {
  it.each([
    [
      'ines',
      'away from friday to the 16th',
      'tomas and priya in turn',
      'Tomas and Priya go in turn',
    ],
    ['ines', 'away from friday to the 16th', 'all in turn', 'Tomas, Priya and Olli go in turn'],
  ])(
    'is those who are named, and all only where nobody is (%s, %s, %s)',
    async (from, away, who, told) => {
      const { say } = talking();
      await say('18:00', from, away);
      const [settled] = await say('18:01', from, who);
      expect(settled?.text).toContain(told);
    },
  );

  it('settles nothing for all where one is named against it', async () => {
    const { say } = talking();
    await say('18:00', 'ines', 'away from friday to the 16th');
    const [answer] = await say('18:01', 'ines', 'nobody but Priya');
    expect(answer?.text).not.toContain('Nobody goes');
  });

  it.each([
    ['ines', "I'm away on saturday", 'You are away on Saturday'],
    ['tomas', "I'm away on saturday", 'You are away on Saturday.'],
    ['priya', 'ich kann am samstag nich', 'Am Samstag kannst du nicht gehen.'],
  ])('is no chore, and forgives a letter: %s, %s', async (from, text, told) => {
    const { say } = talking();
    const [settled] = await say('18:00', from, text);
    expect(settled?.text).toContain(told);
  });
});

describe('An absence that ends otherwise than told', () => {
  it.each(["we're only back on the 20th", 'we come back on the 20th'])(
    'goes on, and asks who steps in on the days that are new: %s',
    async (later) => {
      const { say } = talking();
      await say('18:00', 'ines', 'away from friday to the 16th, Tomas steps in');
      const [settled, asked] = await say('12:00', 'ines', later, '12').then((lines) =>
        lines.filter(({ kind, to }) => to === 'ines' && (kind === 'answer' || kind === 'question')),
      );
      expect(settled?.text).toBe('You are away from Friday 9 July to Monday 19 July.');
      expect(asked?.text).toContain('Away from Saturday 17 July to Monday 19 July. Who steps in?');
      const home = await say('12:00', 'ines', 'back early', '18');
      const story = home.find(({ kind, text }) => kind === 'answer' && text?.startsWith('Welcome'));
      expect(story?.text).toContain('Friday 9 July to Sunday 18 July');
    },
  );
});

describe('Who has not joined yet', () => {
  const reaches = (handle: string): boolean => handle !== 'olli';

  it('is in no turn, has no button, and is told of by others where named all the same', async () => {
    const talk = openRehearsal(store, household, { reaches });
    const at = '2027-07-08T18:00:00+01:00';
    const said = await talk({ at, from: 'ines', text: 'away from friday to sunday' });
    const asked = said.find(({ kind }) => kind === 'question');
    const labels = (asked?.buttons ?? []).flat().map(({ label }) => label);
    expect(labels).toEqual(['All in turn', 'Tomas', 'Priya', 'Nobody']);
    const turns = await talk({ at, from: 'ines', text: 'all in turn' });
    expect(turns[0]?.text).toContain('Tomas and Priya go in turn');
    const named = await talk({ at, from: 'ines', text: 'Olli covers friday' });
    expect(named[0]?.text).toContain('Olli has not joined yet and hears nothing from me');
  });

  it('has no turn and no say where nobody said who goes', async () => {
    const talk = openRehearsal(store, household, { reaches });
    const at = (day: string, clock: string) => `2027-07-${day}T${clock}:00+01:00`;
    await talk(
      { at: at('08', '18:00'), from: 'ines', text: 'bench level 160 l' },
      { at: at('08', '18:01'), from: 'ines', text: 'away from friday to the 20th' },
    );
    const [goes] = await talk({ at: at('08', '18:02'), from: 'ines', text: 'who goes next week' });
    expect(goes?.text).toMatch(/Tomas|Priya/u);
    expect(goes?.text).not.toContain('Olli');
    const [plan] = await talk({ at: at('08', '18:03'), from: 'ines', text: 'plan' });
    expect(plan?.text).toMatch(/Tomas|Priya/u);
    expect(plan?.text).not.toContain('Olli');
    const said = await talk({ at: at('20', '23:00') });
    expect(said.some(({ to }) => to === 'tomas' || to === 'priya')).toBe(true);
    expect(said.filter(({ to }) => to === 'olli')).toEqual([]);
  });

  it('is nobody where none has an account', async () => {
    const talk = openRehearsal(store, household, { reaches: () => false });
    const at = '2027-07-08T18:00:00+01:00';
    const said = await talk({ at, from: 'ines', text: 'away from friday to sunday' });
    const labels = (said.find(({ kind }) => kind === 'question')?.buttons ?? []).flat();
    expect(labels.map(({ label }) => label)).toContain('Olli');
  });
});

describe('The morning of departure', () => {
  it('tells the grower what is still open, without what was done', async () => {
    const { say, wait } = talking();
    await say('08:00', 'ines', 'the bench is full, the gutters are full', '06');
    await say('18:00', 'ines', 'away from friday to the 16th, Tomas steps in');
    await say('19:00', 'ines', 'calibrated the pen, 7.00 read 7.02 and 4.01 read 4.03');
    const morning = await wait('08:00', '09');
    const [leaving, ...more] = alertsTo(morning, 'ines');
    expect(more).toEqual([]);
    expect(leaving).toContain('You leave today, until Friday 16 July.');
    expect(leaving).toMatch(/Fill Bucket row: about \d+ L/);
    expect(leaving).toContain('Calibrate the stick');
    expect(leaving).not.toContain('Calibrate the pen');
    expect(alertsTo(await wait('12:00', '09'), 'ines')).toEqual([]);
  });

  it('says nothing where the absence was told that very day, or is over', async () => {
    const { say, wait } = talking();
    await say('06:30', 'ines', 'away from today to sunday, Tomas steps in');
    expect(alertsTo(await wait('09:00'), 'ines')).toEqual([]);
    const other = talking();
    await other.say('18:00', 'ines', 'away from friday to sunday, Tomas steps in');
    await other.say('18:05', 'ines', 'undo');
    expect(alertsTo(await other.wait('09:00', '09'), 'ines')).toEqual([]);
  });
});

describe('A helper who said beforehand not to be able to go on a day', () => {
  it('is not put down for it by a stretch that several go in turn', async () => {
    const { say } = talking();
    await say('18:00', 'tomas', "I can't go on Friday");
    await say('18:05', 'ines', 'away from Friday to the 16th');
    const named = await say('18:06', 'ines', 'tomas and priya');
    expect(alertsTo(named, 'tomas').join()).toMatch(/Your days: from Saturday 10 July/);
    const [answer] = await say('18:07', 'ines', 'who goes on Friday');
    expect(answer!.text).toContain('Priya');
    expect(answer!.text).not.toContain('Tomas');
  });

  it('goes after all where the grower names that very day, or the helper takes it', async () => {
    const { say } = talking();
    await say('18:00', 'tomas', "I can't go on Friday");
    await say('18:05', 'ines', 'Tomas covers friday');
    const [answer] = await say('18:07', 'ines', 'who goes on Friday');
    expect(answer!.text).toContain('Tomas');
  });
});
