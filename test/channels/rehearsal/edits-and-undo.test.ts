import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../../src/assistant/ports/store.ts';
import { openTestStore } from '../../storage/open-test-store.ts';
import { openRehearsal } from './open-rehearsal.ts';
import type { OutLine } from './rehearse-child.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

/** What stands after all that was said: logged and not struck out. */
function standing(out: readonly OutLine[]): string[] {
  const live: string[] = [];
  for (const { logged = [], struck = [] } of out) {
    for (const entry of struck) live.splice(live.indexOf(inShort(entry)), 1);
    live.push(...logged.map(inShort));
  }
  return live;
}

function inShort({ system, quantity, value }: Record<string, unknown>): string {
  return `${String(system)} ${String(quantity)} ${String(value)}`;
}

/** Lines of one talk, a minute apart, from Tomas. */
async function after(...lines: readonly object[]): Promise<string[]> {
  const talk = openRehearsal(store);
  const timed = lines.map((line, minute) => ({
    at: `2027-05-05T08:${String(minute).padStart(2, '0')}:00+01:00`,
    from: 'tomas',
    ...line,
  }));
  return standing(await talk(...timed));
}

const topUp = { id: 'a', text: 'topped up the dwc 10 l' };

describe('An edited message', () => {
  it('takes the place of its correction as well, so that nothing is counted twice', async () => {
    const corrected = [topUp, { id: 'b', text: 'sorry 12 l' }, { id: 'c', text: 'sorry 11 l' }];
    const edited = { edits: 'a', text: 'topped up the dwc 13 l' };
    expect(await after(...corrected, edited)).toEqual(['Bucket row top-up 13']);
  });

  it('that corrected another corrects it anew, and gives it back where it corrects nothing more', async () => {
    const corrected = [topUp, { id: 'b', text: 'sorry 12 l' }];
    const again = { edits: 'b', text: 'sorry 11 l' };
    expect(await after(...corrected, again)).toEqual(['Bucket row top-up 11']);
    const chatter = { edits: 'b', text: 'lovely weather' };
    expect(await after(...corrected, chatter)).toEqual(['Bucket row top-up 10']);
    expect(await after(...corrected, again, chatter)).toEqual(['Bucket row top-up 10']);
  });

  it('that moved entries to another system moves them on', async () => {
    const moved = [topUp, { id: 'b', text: 'i meant the bench' }];
    const edited = { edits: 'b', text: 'i meant the gutters' };
    expect(await after(...moved, edited)).toEqual(['Gutter run top-up 10']);
  });

  it('that answered a question is the other answer to it', async () => {
    const answered = [
      { id: 'a', text: 'topped up 10 l' },
      { id: 'b', text: 'bench' },
    ];
    const edited = { edits: 'b', text: 'dwc' };
    expect(await after(...answered, edited)).toEqual(['Bucket row top-up 10']);
    const told = { edits: 'b', text: 'dwc topped up 12 l' };
    expect(await after(...answered, told)).toEqual(['Bucket row top-up 12']);
  });

  it('that had undone something lets it stand again', async () => {
    const undone = [topUp, { id: 'b', text: 'undo' }];
    expect(await after(...undone, { edits: 'b', text: 'never mind' })).toEqual([
      'Bucket row top-up 10',
    ]);
  });

  it('is read against the round that it answered', async () => {
    const talk = openRehearsal(store);
    await talk({ at: '2027-05-05T06:00:00+01:00', from: 'ines', text: 'bench ph 6' });
    await talk({ at: '2027-05-05T08:00:00+01:00', from: 'ines', id: 'a', text: 'all done' });
    const edited = { edits: 'a', text: 'all done except the gutters' };
    const out = await talk({ at: '2027-05-05T08:01:00+01:00', from: 'ines', ...edited });
    const systems = out.flatMap(({ logged = [] }) => logged.map(({ system }) => system));
    expect(systems).toContain('Bucket row');
    expect(systems).not.toContain('Gutter run');
  });
});

describe('What was undone', () => {
  const undone = [topUp, { text: 'undo' }];

  it('is put back once where the member says that it was right', async () => {
    const back = { text: 'no wait, it was right' };
    expect(await after(...undone, back)).toEqual(['Bucket row top-up 10']);
    expect(await after(...undone, back, back)).toEqual(['Bucket row top-up 10']);
    expect(await after(...undone, back, { text: 'undo' })).toEqual([]);
  });

  it('is not put back once it was told anew', async () => {
    const told = { text: 'topped up the dwc 12 l' };
    expect(await after(...undone, told, { text: 'put it back' })).toEqual(['Bucket row top-up 12']);
    const edited = { edits: 'a', text: 'topped up the dwc 12 l' };
    expect(await after(...undone, edited, { text: 'put it back' })).toEqual([
      'Bucket row top-up 12',
    ]);
  });
});

describe('A thumb', () => {
  const talkAtEight = async (...lines: readonly object[]) => {
    const talk = openRehearsal(store);
    await talk({ at: '2027-05-05T06:00:00+01:00', from: 'ines', text: 'bench ph 6' });
    const timed = lines.map((line, minute) => ({
      at: `2027-05-05T08:0${minute}:00+01:00`,
      from: 'ines',
      ...line,
    }));
    return talk(...timed);
  };

  it('under a receipt closes no duty', async () => {
    const out = await talkAtEight({ text: 'dwc ph 5.8' }, { text: '👍', replyTo: 'last' });
    expect(out.at(-1)).toMatchObject({ kind: 'answer' });
    expect(out.at(-1)).not.toHaveProperty('logged');
  });

  it('under an open question has it asked once more, unless it asks for a yes', async () => {
    const out = await talkAtEight({ text: '12 l in the dwc' }, { text: '👍' }, { text: 'added' });
    expect(out.map(({ kind }) => kind).slice(-3)).toEqual(['question', 'question', 'receipt']);
    const yes = await talkAtEight({ text: 'dwc ph 5.4?' }, { text: '👍🏽' });
    expect(yes.at(-1)).toMatchObject({ kind: 'receipt', logged: [{ quantity: 'ph', value: 5.4 }] });
  });

  it('under the round closes what it asks for', async () => {
    const out = await talkAtEight({ text: '👍', replyTo: 'round' });
    expect(out.at(-1)).toMatchObject({ kind: 'receipt' });
  });
});
