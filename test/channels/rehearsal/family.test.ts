import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../../src/assistant/ports/store.ts';
import type { Greenhouse } from '../../../src/greenhouse/greenhouse.ts';
import { openTestStore } from '../../storage/open-test-store.ts';
import { openRehearsal, quarryLaneWith } from './open-rehearsal.ts';
import type { OutLine } from './rehearse-child.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

const german: Greenhouse = {
  ...quarryLaneWith(),
  members: quarryLaneWith().members.map((member) => ({ ...member, language: 'de' as const })),
};

/** A talk on 8 July 2027, a Thursday, unless another day is said. */
function talking(greenhouse?: Greenhouse) {
  const talk = openRehearsal(store, greenhouse);
  const at = (clock: string, day = '08') => `2027-07-${day}T${clock}:00+01:00`;
  return {
    say: (clock: string, from: string, text: string, day?: string) =>
      talk({ at: at(clock, day), from, text }),
    press: (clock: string, from: string, press: string, day?: string) =>
      talk({ at: at(clock, day), from, press }),
    wait: (clock: string, day?: string) => talk({ at: at(clock, day) }),
  };
}

const textTo = (lines: readonly OutLine[], to: string): string =>
  lines
    .filter((line) => line.to === to)
    .map(({ text }) => text)
    .join('\n');
const pressOf = (line: OutLine | undefined, label: RegExp): string =>
  (line?.buttons ?? []).flat().find((button) => label.test(button.label))?.press ?? 'none';

describe('Who steps in', () => {
  it.each([
    ['en', undefined, 'away from friday to sunday', 'Tomas, Priya and Olli in turn', 'go in turn'],
    [
      'de',
      german,
      'ich bin von Freitag bis Sonntag weg',
      'Tomas, Priya und Olli abwechselnd',
      'gehen von',
    ],
  ])('is one list of names, in %s', async (_, greenhouse, away, names, told) => {
    const { say } = talking(greenhouse);
    await say('18:00', 'ines', away);
    const settled = await say('18:01', 'ines', names);
    const [first] = textTo(settled, 'ines').split('\n');
    expect(first).toContain(told);
    expect(first).toMatch(/Tomas, Priya (and|und) Olli/);
    for (const helper of ['tomas', 'priya', 'olli']) {
      expect(settled.filter(({ to }) => to === helper)).toHaveLength(1);
    }
  });

  it('can be said along with the absence, and is not asked again', async () => {
    const { say } = talking();
    const settled = await say('18:00', 'ines', 'away from friday to sunday, Tomas steps in');
    expect(settled.some(({ kind }) => kind === 'question')).toBe(false);
    expect(textTo(settled, 'ines')).toContain('Tomas goes from Friday 9 July to Sunday 11 July.');
  });

  it('is not for a helper to settle by the button that the grower was asked with', async () => {
    const { say, press } = talking();
    const [asked] = await say('18:00', 'ines', 'away from friday to sunday');
    const [refused] = await press('18:01', 'priya', pressOf(asked, /Tomas/));
    expect(refused).toMatchObject({ kind: 'refusal' });
  });

  it.each([
    ['en', undefined, 'away from friday to sunday', "I can't on friday, my sister is here"],
    [
      'de',
      german,
      'ich bin von Freitag bis Sonntag weg',
      'am Freitag kann ich nicht, meine Schwester ist da',
    ],
  ])(
    'passes to the next who can, with the reason given, in %s',
    async (_, greenhouse, away, no) => {
      const { say, press } = talking(greenhouse);
      const [asked] = await say('18:00', 'ines', away);
      await press('18:01', 'ines', pressOf(asked, /^(All|Alle)/));
      const told = await say('18:02', 'tomas', no);
      expect(told.some(({ kind }) => kind === 'question')).toBe(false);
      expect(textTo(told, 'priya')).toMatch(/sister is here|Schwester ist da/);
    },
  );
});

describe('An open duty', () => {
  it('that can wait is asked about once, offered the next day, told the grower on the third', async () => {
    const { say, press, wait } = talking();
    await say('06:00', 'ines', 'bench 600 l, buckets 108 l, gutters 120 l, jars 20 l');
    const [asked, ...earlier] = (
      await say('18:00', 'ines', 'away from friday to the 16th')
    ).toReversed();
    await press('18:01', 'ines', pressOf(asked, /^All/));
    const days: (readonly OutLine[])[] = [earlier];
    for (const day of ['09', '10', '11']) days.push(await wait('22:00', day));
    // Of many open duties the most urgent are named, and the others counted.
    const namesOrCounts = /tie up the tomatoes|\d+ more \(/;
    const about = (lines: readonly OutLine[]) =>
      lines
        .filter(({ kind, text }) => kind === 'alert' && namesOrCounts.test(text ?? ''))
        .map(({ to }) => to);
    expect(days.map(about)).toEqual([['ines'], ['olli', 'priya'], ['ines'], []]);
  });
});

describe('A power cut that two tell of', () => {
  it('is one, and began with the first', async () => {
    const { say, wait } = talking();
    await say('10:00', 'tomas', 'power is out since 9:45');
    const second = await say('10:20', 'priya', 'power out in the greenhouse');
    expect(textTo(second, 'priya')).toContain('since 09:45');
    expect(textTo(second, 'ines')).toBe('');
    const reminders = (await wait('12:30')).filter(
      ({ to, text }) => to === 'ines' && text?.startsWith('Bucket row: no power'),
    );
    expect(reminders.length).toBeLessThanOrEqual(1);
    const over = await say('12:40', 'priya', 'power is back');
    expect(textTo(over, 'priya')).toContain('after 3 hours');
    // Whoever was alarmed hears that it is over; whoever told it, once.
    expect(over.filter(({ text }) => text?.includes('after 3 hours')).map(({ to }) => to)).toEqual([
      'priya',
      'ines',
      'tomas',
    ]);
    const again = await say('12:50', 'tomas', 'power is back');
    expect(textTo(again, 'ines')).toBe('');
  });
});
