import { readFileSync } from 'node:fs';
import { PassThrough, Readable, Writable } from 'node:stream';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Desk } from '../../../src/assistant/desk.ts';
import type { Store } from '../../../src/assistant/ports/store.ts';
import { Terminal } from '../../../src/channels/terminal/terminal.ts';
import type { TerminalOptions } from '../../../src/channels/terminal/terminal-options.ts';
import { parseGreenhouseText } from '../../../src/greenhouse/file/parse-greenhouse-text.ts';
import { wordings } from '../../../src/wording/wordings.ts';
import { openTestStore } from '../../storage/open-test-store.ts';

const morning = Date.parse('2027-05-04T08:20:00+01:00');

let store: Store;
beforeAll(async () => {
  store = await openTestStore();
});
afterAll(() => store.close());

async function terminalOver(input: Readable, changed: Partial<TerminalOptions> = {}) {
  const read = parseGreenhouseText(readFileSync('greenhouses/quarry-lane.json', 'utf8'));
  if (!read.ok) throw new Error('the demo greenhouse has faults');
  const greenhouseId = await store.createGreenhouse(read.greenhouse, morning - 24 * 3_600_000);
  const desk = new Desk({ store, channelOf: () => 'terminal' });
  const shown: string[] = [];
  const reported: string[] = [];
  const output = new Writable({
    write(chunk: Buffer, _encoding, done) {
      shown.push(chunk.toString());
      done();
    },
  });
  const terminal = new Terminal({
    store,
    desk,
    greenhouseId,
    wordings,
    nowMs: () => morning,
    report: (error, doing) => {
      reported.push(`${doing}: ${String(error)}`);
    },
    input,
    output,
    isInteractive: false,
    ...changed,
  });
  const logged = async () =>
    (await desk.standing(greenhouseId)).logbook.all.map(({ value, struck, source }) => ({
      value,
      isStruck: struck !== null,
      by: source.kind === 'member' ? source.handle : null,
    }));
  return { terminal, desk, greenhouseId, shown: () => shown.join(''), reported, logged };
}

/** Piped input: all lines at once, then the end. */
async function talk(...lines: readonly string[]) {
  const under = await terminalOver(Readable.from([`${lines.join('\n')}\n`]));
  await under.terminal.run();
  return under;
}

describe('the conversation in a terminal', () => {
  it('begins with what to type, in names of this greenhouse', async () => {
    const { shown } = await talk('');
    expect(shown()).toMatch(/^You are in the greenhouse of Quarry Lane\.\n/);
    expect(shown()).toContain('North bench');
    expect(shown()).toContain('/as tomas');
  });

  it('handles all piped lines in order before it ends', async () => {
    const { shown, logged } = await talk(
      'north bench ph 6.1',
      'bucket row ph 5.7',
      'jar shelf ph 6',
    );
    expect((await logged()).map(({ value }) => value)).toEqual([6.1, 5.7, 6]);
    const places = ['6.1', '5.7', 'Jar shelf'].map((part) => shown().lastIndexOf(part));
    expect(places).toEqual(places.toSorted((one, other) => one - other));
  });

  it('presses a button by its number, which stays its own', async () => {
    const { logged, shown } = await talk('north bench ph 6.1', 'bucket row ph 5.7', '#1');
    expect(shown()).toMatch(/#1 \S+[^#]*#2 \S+/s);
    expect((await logged()).map(({ isStruck }) => isStruck)).toEqual([true, false]);
  });

  it('answers a question by a button', async () => {
    const { logged, shown } = await talk('ph 5.8', '#2');
    expect(shown()).toContain('#2 Bucket row');
    expect(await logged()).toEqual([{ value: 5.8, isStruck: false, by: 'ines' }]);
  });

  it('speaks as another member when told to', async () => {
    const { logged, shown } = await talk(
      '/as tomas',
      'north bench ph 6.1',
      '/as nobody',
      'gutter run ph 5.9',
    );
    expect(shown()).toContain('Speaking as Tomas.');
    expect(shown()).toContain(
      'Nobody here is called "nobody"; there are ines, tomas, priya, olli.',
    );
    expect((await logged()).map(({ by }) => by)).toEqual(['tomas', 'tomas']);
  });

  it('says what it does not know, and logs nothing of it', async () => {
    const { logged, shown } = await talk('/dance', '#7', 'x'.repeat(5000));
    expect(shown()).toContain('There is no /dance;');
    expect(shown()).toContain('No button has been shown with the number 7.');
    expect(shown()).toContain('The message has 5000 characters; at most 4096 fit.');
    expect(await logged()).toEqual([]);
  });

  it('ends at /quit and leaves the rest of the input alone', async () => {
    const { logged } = await talk('north bench ph 6.1', '/quit', 'bucket row ph 5.7');
    expect(await logged()).toHaveLength(1);
  });

  it('prints the morning round as it comes, and says to whom it goes', async () => {
    const input = new PassThrough();
    const { terminal, desk, greenhouseId, shown } = await terminalOver(input);
    const running = terminal.run();
    input.write('/as tomas\n');
    await expect.poll(shown).toContain('Speaking as Tomas.');
    await desk.sendDue(greenhouseId, morning);
    await terminal.deliver();
    expect(shown()).toContain('(to ines)');
    expect(shown().match(/1\. Top up North bench/g)).toHaveLength(1);
    expect(shown()).toMatch(/\n {2}#1 .*Top up North bench.* {3}#2 .*\n {2}#3 /);
    input.end();
    await running;
  });

  it('handles at the start what was stored and never handled', async () => {
    const input = new PassThrough();
    const { terminal, greenhouseId, logged } = await terminalOver(input);
    await store.receive({
      greenhouse: greenhouseId,
      channel: 'terminal',
      platformId: null,
      receivedAtMs: morning,
      writtenAtMs: morning,
      chat: 'ines',
      body: {
        kind: 'message',
        from: 'ines',
        chat: null,
        text: 'north bench ph 6.1',
        writtenAtMs: morning,
        replyTo: null,
      },
    });
    input.end();
    await terminal.run();
    expect((await logged()).map(({ value }) => value)).toEqual([6.1]);
  });

  it('says so when something fails, and goes on', async () => {
    const input = Readable.from(['hello\n/help\n']);
    const { terminal, shown, reported } = await terminalOver(input, {
      store: { ...bound(store), receive: () => Promise.reject(new Error('the disk is full')) },
    });
    await terminal.run();
    expect(shown()).toContain('Something went wrong here.');
    expect(reported).toEqual(['handling what was typed: Error: the disk is full']);
    expect(shown().match(/You are in the greenhouse/g)).toHaveLength(2);
  });
});

function bound(original: Store): TerminalOptions['store'] {
  return {
    receive: (raw) => original.receive(raw),
    unhandled: (channel) => original.unhandled(channel),
    pending: (channel, nowMs, most) => original.pending(channel, nowMs, most),
    settle: (greenhouse, no, outcome) => original.settle(greenhouse, no, outcome),
  };
}
