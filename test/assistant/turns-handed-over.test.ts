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
    member.handle === 'tomas' ? { ...member, language: 'de' as const } : member,
  ),
});

/** Ines is away for a week from Saturday 10 July 2027 on, Priya covers, the round of Saturday is out. */
async function underWay() {
  const talk = openRehearsal(store, household);
  const say = (clock: string, from: string, text: string, day = '10') =>
    talk({ at: `2027-07-${day}T${clock}:00+01:00`, from, text });
  await say('18:00', 'ines', 'bench level 180 l', '08');
  await say('18:01', 'ines', 'away from 10 july to 16 july, Priya covers', '08');
  await talk({ at: '2027-07-10T08:00:00+01:00' });
  return say;
}

const textTo = (lines: readonly OutLine[], to: string): string =>
  lines
    .filter((line) => line.to === to && line.kind !== 'round')
    .map(({ text }) => text)
    .join('\n');

describe('A turn', () => {
  it.each([
    ['olli', "I'll go for Priya today", 'You go today.', 'To do today:'],
    ['olli', "I'll go for Priya", 'You go today.', 'To do today:'],
    ['olli', 'Olli instead of Priya today', 'You go today.', 'To do today:'],
    ['tomas', 'ich geh heute für Priya', 'Du gehst heute.', 'Heute zu tun:'],
    ['tomas', 'ich gehe für Priya', 'Du gehst heute.', 'Heute zu tun:'],
  ])('is taken over by %s: “%s”, who is told the work of the day', async (by, text, goes, work) => {
    const say = await underWay();
    const said = await say('08:40', by, text);
    expect(textTo(said, by).split('\n')[0]).toBe(goes);
    expect(textTo(said, by)).toContain(work);
    expect(textTo(said, by)).toContain('North bench');
    expect(textTo(said, 'priya')).toContain('you need not go today');
    expect(textTo(await say('08:41', 'ines', 'who goes'), 'ines')).toContain(
      'Sunday 11 July: Priya.',
    );
  });

  it.each([
    ['tomas', 'ich geh heute für Priya', 'doch nur Priya', 'Priya geht heute.'],
    ['tomas', 'ich geh heute für Priya', 'doch wieder Priya', 'Priya geht heute.'],
    ['olli', "I'll go for Priya today", 'only Priya after all', 'Priya goes today.'],
    ['olli', "I'll go for Priya today", 'Priya goes after all', 'Priya goes today.'],
  ])('is handed back by %s, who had taken it: “%s”, “%s”', async (by, taken, back, goes) => {
    const say = await underWay();
    await say('08:40', by, taken);
    const said = await say('08:45', by, back);
    expect(textTo(said, by)).toBe(goes);
    expect(textTo(said, 'priya')).toContain('has put you down to go today.');
    expect(textTo(said, 'priya')).not.toContain('you step in');
  });

  it('is taken back by whose it was', async () => {
    const say = await underWay();
    await say('08:40', 'olli', "I'll go for Priya today");
    const said = await say('08:45', 'priya', "I'll go myself after all");
    expect(textTo(said, 'priya').split('\n')[0]).toBe('You go today.');
    expect(textTo(said, 'olli')).toContain('you need not go today');
  });

  it('is not for a third to hand on', async () => {
    const say = await underWay();
    await say('08:40', 'olli', "I'll go for Priya today");
    const [refused] = await say('08:45', 'tomas', 'doch nur Priya');
    expect(refused?.kind).toBe('refusal');
  });

  it('for one system is a claim of whoever says so', async () => {
    const say = await underWay();
    const said = await say('08:40', 'olli', "I'll do the jars for Priya");
    expect(textTo(said, 'olli')).toContain('You take Jar shelf today.');
  });
});
