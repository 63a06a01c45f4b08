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
    { handle: 'max', name: 'Max', role: 'grower' as const, language: 'de' as const },
  ],
});

interface Said {
  readonly text: string;
  readonly logged: readonly string[];
  readonly struck: readonly string[];
}

/** What comes of the last of some lines, `who: text`, on a morning after the round, for whoever wrote it. */
async function lastOf(...lines: readonly string[]): Promise<Said> {
  const say = openRehearsal(store, household);
  await say({ at: '2027-05-07T08:00:00+01:00', from: 'ines', text: 'bench level 560 l' });
  await say({ at: '2027-05-08T07:00:00+01:00' });
  let said: Said = { text: '', logged: [], struck: [] };
  for (const [i, line] of lines.entries()) {
    const [from = '', text = ''] = line.split(': ');
    const at = `2027-05-08T09:${String(i).padStart(2, '0')}:00+01:00`;
    const out = (await say({ at, from, text })).filter(({ to }) => to === from);
    const short = (entries: readonly Readonly<Record<string, unknown>>[]) =>
      entries.map(({ system, quantity, duty }) =>
        [system ?? 'greenhouse', quantity, duty ?? ''].map(String).join(' ').trim(),
      );
    said = {
      text: out.map((each) => each.text).join('\n'),
      logged: short(out.flatMap(({ logged = [] }) => logged)),
      struck: short(out.flatMap(({ struck = [] }) => struck)),
    };
  }
  return said;
}

describe('What failed after it was told done', () => {
  it.each([
    ['ines: all done', "ines: couldn't do the jars"],
    ['ines: all done', "ines: couldn't do the jars, lid is stuck"],
    ['max: alles erledigt', 'max: konnte die jars nicht machen'],
  ])('"%s", "%s": strikes out what was done of it', async (done, failed) => {
    const said = await lastOf(done, failed);
    expect(said.struck.length).toBeGreaterThan(0);
    expect(said.struck.every((entry) => entry.startsWith('Jar shelf duty-done'))).toBe(true);
    expect(said.logged).toEqual(['Jar shelf duty-failed']);
  });

  it('strikes out the one work that failed, and no other', async () => {
    const said = await lastOf('ines: all done', "ines: couldn't check the jars");
    expect(said.struck).toEqual(['Jar shelf duty-done check']);
  });

  it.each([
    [['ines: all done', "tomas: couldn't do the jars"]],
    [['ines: did the gutters', "ines: couldn't do the jars"]],
  ])('leaves what others did, or what was done elsewhere: %s', async (lines) => {
    const said = await lastOf(...lines);
    expect(said.struck).toEqual([]);
    expect(said.logged).toEqual(['Jar shelf duty-failed']);
  });
});

describe('A yes to what was bought', () => {
  it('is of all that one message told', async () => {
    const { text } = await lastOf('ines: bought 5 l of ph down and 2 l of A', 'ines: yes');
    expect(text).toContain('Done: 5 L of pH down bought.');
    expect(text).toContain('Done: 2 L of nutrient A bought.');
  });

  it('is of the last message alone, where two told of it', async () => {
    const { text } = await lastOf(
      'ines: bought 5 l of ph down',
      'ines: bought 2 l of A',
      'ines: yes',
    );
    expect(text).not.toContain('pH down');
    expect(text).toContain('Done: 2 L of nutrient A bought.');
  });
});

describe('Turns that are swapped', () => {
  it.each([
    ['ines: swap with tomas, he does thursday', 'Tomas goes on Thursday.'],
    ["ines: swapped with priya, she's doing thursday", 'Priya goes on Thursday.'],
    ['max: hab mit tomas getauscht, er macht donnerstag', 'Tomas geht am Donnerstag.'],
  ])('%s', async (line, goes) => {
    expect((await lastOf(line)).text).toContain(goes);
  });

  it.each(['ines: swapped the pump with olli, he says it runs', 'ines: olli called, he is fine'])(
    'puts nobody down: %s',
    async (line) => {
      expect((await lastOf(line)).text).not.toMatch(/goes|cannot go/u);
    },
  );
});

describe('A low mark told the other way round', () => {
  it.each([
    'ines: change bench to 160 low mark',
    'ines: change the bench low mark to 160 l',
    'ines: 160 low mark for the bench',
  ])('%s: is shown and asked about', async (line) => {
    const { text, logged } = await lastOf(line);
    expect(text).toContain('Low mark of North bench: 150 L → 160 L.');
    expect(logged).toEqual([]);
  });
});

describe('What had failed, and had not', () => {
  it.each([
    ['ines: bench pump stopped', 'ines: sorry it is, it just started', 'restored', 0],
    ["ines: power's out", 'ines: back on now', 'restored', 0],
    ['ines: bench pump stopped', 'ines: false alarm', '', 1],
    ['max: bench Pumpe steht', 'max: Fehlalarm', '', 1],
  ])('"%s", "%s"', async (out, over, logged, struck) => {
    const said = await lastOf(out, over);
    expect(said.logged.join()).toContain(logged);
    expect(said.struck.length).toBe(struck);
  });

  it.each([
    ['ines: bench pump stopped', 'ines: it just started raining'],
    ['ines: bench ph 6.1', 'ines: false alarm'],
    ['ines: bench pump stopped', 'ines: we started the round'],
  ])('"%s", "%s": changes nothing', async (out, said) => {
    const { logged, struck } = await lastOf(out, said);
    expect([...logged, ...struck]).toEqual([]);
  });
});
