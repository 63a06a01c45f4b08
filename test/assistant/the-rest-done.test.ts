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

/** A talk on Tuesday 4 May 2027, after the round. */
async function talkAfterRound() {
  const talk = openRehearsal(store, quarryLaneWith());
  await talk({ at: '2027-05-04T06:00:00+01:00' });
  let minute = 0;
  return (from: string, text: string): Promise<readonly OutLine[]> => {
    minute += 1;
    return talk({ at: `2027-05-04T08:${10 + minute}:00+01:00`, from, text });
  };
}

interface Logged {
  readonly quantity: string;
  readonly system: string | null;
}

const doneOf = (lines: readonly OutLine[]): readonly (string | null)[] =>
  lines.flatMap(({ logged }) =>
    ((logged ?? []) as unknown as readonly Logged[]).flatMap(({ quantity, system }) =>
      quantity === 'duty-done' ? [system] : [],
    ),
  );

describe('“The rest is done”', () => {
  it('closes what nothing was told of', async () => {
    const say = await talkAfterRound();
    await say('tomas', 'did the jars');
    const done = doneOf(await say('tomas', 'rest done'));
    expect(done).toContain('Bucket row');
    expect(done).not.toContain('Jar shelf');
  });

  it.each([
    ["couldn't do the jars, lid stuck", 'rest done'],
    ["couldn't do the jars, lid stuck, rest done"],
  ])('leaves open what could not be done: “%s”', async (...told) => {
    const say = await talkAfterRound();
    let lines: readonly OutLine[] = [];
    for (const text of told) lines = await say('tomas', text);
    expect(doneOf(lines)).toContain('Bucket row');
    expect(doneOf(lines)).not.toContain('Jar shelf');
  });

  it('leaves open the system that the message tells of by itself', async () => {
    const say = await talkAfterRound();
    const done = doneOf(await say('tomas', 'bench ph 6 ec 2.4, the rest is done'));
    expect(done).toContain('Bucket row');
    expect(done).not.toContain('North bench');
  });
});

describe('Days swapped in one message', () => {
  it('are both settled, and the other is told', async () => {
    const say = await talkAfterRound();
    await say('ines', 'tomas does mondays');
    await say('ines', 'olli does thursdays');
    const lines = await say('tomas', 'Olli takes my Monday and I do his Thursday');
    const texts = lines.map(({ to, text }) => `${String(to)}: ${String(text)}`).join('\n');
    expect(texts).toContain('Olli goes on Monday.');
    expect(texts).toContain('You go on Thursday.');
    expect(lines.some(({ to, kind }) => to === 'olli' && kind === 'alert')).toBe(true);
  });
});

describe('An exception that comes after all was told done', () => {
  const struckOf = (lines: readonly OutLine[]): readonly (string | null)[] =>
    lines.flatMap(({ struck }) =>
      ((struck ?? []) as unknown as readonly Logged[]).map(({ system }) => system),
    );

  it.each([
    ['except the jars', ['Jar shelf']],
    ["oh, except the jars cause I couldn't get the lid off", ['Jar shelf']],
    ['but not the gutters', ['Gutter run']],
    ['everything except the gutters and the jars', ['Gutter run', 'Jar shelf']],
    ['sorry not the buckets, no time', ['Bucket row']],
    ["didn't do the gutters", ['Gutter run']],
    ['gutters not', ['Gutter run']],
  ])('strikes out what it names: “%s”', async (text, systems) => {
    const say = await talkAfterRound();
    await say('olli', 'did everything');
    const struck = struckOf(await say('olli', text));
    expect([...new Set(struck)].toSorted()).toEqual([...systems].toSorted());
    const due = (await say('olli', 'what is due')).map(({ text: list }) => list ?? '').join();
    for (const system of systems) expect(due).toContain(system);
  });

  it.each([
    ['did the jars', 'did everything except the gutters'],
    ['all done', 'not the pump'],
    ['all done', 'everything except the gutters?'],
    ['all done', 'not 6.2 in the jars'],
    ['bench ph 6.1', 'not the jars'],
  ])('strikes out nothing where it is no such thing: “%s”, “%s”', async (first, text) => {
    const say = await talkAfterRound();
    await say('olli', first);
    expect(struckOf(await say('olli', text))).toEqual([]);
  });
});
