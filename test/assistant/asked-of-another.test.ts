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

/** A talk on Thursday 8 July 2027; Ines is away from Monday 12 to Sunday 18 and all go in turn. */
function talking() {
  const talk = openRehearsal(store, household);
  let minute = 0;
  const say = async (from: string, text: string): Promise<readonly OutLine[]> => {
    minute += 1;
    const clock = `${18 + Math.floor(minute / 60)}:${String(minute % 60).padStart(2, '0')}`;
    return talk({ at: `2027-07-08T${clock}:00+01:00`, from, text });
  };
  const depart = async () => {
    await say('ines', 'away from monday to sunday the 18th');
    await say('ines', 'Tomas, Priya and Olli in turn');
  };
  return { say, depart };
}

const textOf = (lines: readonly OutLine[], to: string): string =>
  lines.flatMap((line) => (line.to === to ? [line.text ?? ''] : [])).join('\n');

describe('A turn or a system taken from somebody', () => {
  it.each([
    ['olli', "i'll take the bench from tomas", 'You take North bench today.'],
    ['priya', 'ich übernehme die bench von tomas', 'Du übernimmst heute: North bench.'],
  ])('is the speaker’s: %s says “%s”', async (who, text, settled) => {
    const { say } = talking();
    expect(textOf(await say(who, text), who)).toContain(settled);
  });

  it.each([
    ['tomas', 'can olli take my monday', 'olli', 'Olli goes on Monday.'],
    ['priya', 'kann tomas meinen freitag machen', 'tomas', 'Tomas geht am 16. Juli.'],
  ])('is asked of another by whose turn it is: %s says “%s”', async (who, text, asked, settled) => {
    const { say, depart } = talking();
    await depart();
    const lines = await say(who, text);
    expect(textOf(lines, who)).toContain(settled);
    expect(textOf(lines, asked)).not.toBe('');
    const roster = textOf(await say('ines', 'who goes on the 12th'), 'ines');
    if (asked === 'olli') expect(roster).toContain('Olli');
  });

  it('cannot be handed over by one whose turn it is not', async () => {
    const { say, depart } = talking();
    await depart();
    const refused = await say('priya', 'kann olli den montag machen');
    expect(refused.some(({ kind }) => kind === 'refusal')).toBe(true);
  });

  it('is what was spoken of last, where “it” is handed over', async () => {
    const { say } = talking();
    await say('ines', 'topped up the buckets 5 l');
    expect(textOf(await say('ines', 'can olli do it'), 'ines')).toContain('Olli takes Bucket row');
  });
});

describe('A helper who cannot', () => {
  it.each([
    ['tomas', 'i cant do mon 12', 'You cannot go on Monday.'],
    ['tomas', "i can't do sat and sun", 'You cannot go on Sunday.'],
    ['tomas', "i'm ill", 'You cannot go today.'],
    ['priya', 'schaff ich heute nicht', 'Heute kannst du nicht gehen.'],
    ['priya', 'bin krank', 'Heute kannst du nicht gehen.'],
  ])('%s says “%s”', async (who, text, settled) => {
    const { say } = talking();
    expect(textOf(await say(who, text), who)).toContain(settled);
  });

  it.each([
    ['tomas', "i don't want to do this anymore"],
    ['tomas', 'can someone else take my days'],
    ['priya', 'hab keine lust mehr'],
    ['priya', 'kann jemand anders meine tage machen'],
  ])('goes on none of their days: %s says “%s”', async (who, text) => {
    const { say, depart } = talking();
    await depart();
    await say(who, text);
    const lines = await say('ines', 'who goes from monday to sunday the 18th');
    const name = who === 'tomas' ? 'Tomas' : 'Priya';
    expect(textOf(lines, 'ines')).not.toContain(name);
  });
});

describe('Somebody away', () => {
  it.each(["we're coming home early, the 16th", 'we are back on the 16th'])(
    'is back on the day that is said: “%s”',
    async (text) => {
      const { say, depart } = talking();
      await depart();
      expect(textOf(await say('ines', text), 'ines')).toContain('back on');
      expect(textOf(await say('olli', 'when is ines back'), 'olli')).toContain('15 July');
    },
  );

  it('is not home yet where only the coming is told of', async () => {
    const { say, depart } = talking();
    await depart();
    const lines = textOf(await say('ines', "we're coming home early"), 'ines');
    expect(lines).toContain('back on Friday');
    expect(textOf(await say('priya', 'wann ist ines wieder da'), 'priya')).toContain('18. Juli');
  });
});
