import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal } from '../channels/rehearsal/open-rehearsal.ts';
import { openTestStore } from '../storage/open-test-store.ts';

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

/** What the last of these lines of one member was answered, the lines so many minutes apart. */
async function said(texts: readonly string[], minutesApart = 1) {
  const talk = openRehearsal(store);
  let out: Awaited<ReturnType<typeof talk>> = [];
  for (const [i, text] of texts.entries()) {
    const minute = String(i * minutesApart).padStart(2, '0');
    out = await talk({ at: `2027-05-04T08:${minute}:00+01:00`, from: 'ines', text });
  }
  return out;
}

const told = ['bench 6.1 2.2', 'gutters 5.9 1.4', 'buckets 5.7 1.9'];

describe('A question of one system, asked further', () => {
  it.each([
    ['and the gutters?', /^Gutter run: EC 1\.4/],
    ['what about the gutters', /^Gutter run: EC 1\.4/],
    ['gutters?', /^Gutter run: EC 1\.4/],
    ['and the bench and the gutters?', /North bench: EC 2\.2.*\n.*Gutter run: EC 1\.4/],
    ['and ph?', /^Bucket row: pH 5\.7/],
  ])(
    'is of another system, or another quantity, after “whats the ec of the buckets”: “%s”',
    async (text, answer) => {
      const [reply] = await said([...told, 'whats the ec of the buckets', text]);
      expect(reply).toMatchObject({ kind: 'answer' });
      expect(reply?.text).toMatch(answer);
    },
  );

  it('keeps what was asked in all else', async () => {
    const [reply] = await said(['is ph 5.4 too low for the jars', 'and for the gutters?']);
    expect(reply?.text).toMatch(/^pH 5\.4 is too low for Gutter run/);
  });

  it('goes on from the system asked about last', async () => {
    const [reply] = await said([
      ...told,
      'whats the ec of the buckets',
      'and the gutters?',
      'and ph?',
    ]);
    expect(reply?.text).toMatch(/^Gutter run: pH 5\.9/);
  });

  it('is over once something else was said, or ten minutes have passed', async () => {
    const [other] = await said(['whats the ec of the buckets', 'bench ph 6.0', 'and the jars']);
    expect(other).toMatchObject({ kind: 'question' });
    const [late] = await said([...told, 'whats the ec of the buckets', 'and the gutters?'], 11);
    expect(late?.text).not.toMatch(/^Gutter run: EC/);
  });

  it('takes no reading for a question', async () => {
    const [reply] = await said(['whats the ec of the buckets', 'and the gutters ec 1.4']);
    expect(reply).toMatchObject({ kind: 'receipt', logged: [{ quantity: 'ec', value: 1.4 }] });
  });
});
