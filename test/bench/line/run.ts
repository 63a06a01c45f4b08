/**
 * What a rehearsal line costs with a short and with a long log: the median over measured lines of
 * the built rehearsal as a child, from writing a line to reading its `done`. The same kinds of
 * message in the same proportions at both lengths, measured in turns in two children at once.
 */
import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const shortLog = 100;
const longLog = 2000;
const measured = 200;
const messagesADay = 10;

class Dialogue {
  readonly #child: ChildProcessWithoutNullStreams;
  readonly #lines: AsyncIterator<string>;
  #sent = 0;

  constructor() {
    const args = [`${root}dist/rehearse.js`, '--greenhouse', `${root}greenhouses/quarry-lane.json`];
    this.#child = spawn(process.execPath, args);
    this.#lines = createInterface({ input: this.#child.stdout })[Symbol.asyncIterator]();
  }

  /** Says the next line of the season and gives the milliseconds until its `done`. */
  async next(): Promise<number> {
    const line = lineAt(this.#sent);
    this.#sent += 1;
    const from = performance.now();
    this.#child.stdin.write(`${JSON.stringify(line)}\n`);
    for (;;) {
      const out = (await this.#lines.next()) as { value: string };
      if (out.value.startsWith('{"error"')) throw new Error(out.value);
      if (out.value.startsWith('{"done"')) return performance.now() - from;
    }
  }

  end(): void {
    this.#child.stdin.end();
  }
}

const templates = [
  (n: number) => `dwc ph ${(5.7 + (n % 5) / 10).toFixed(1)}`,
  (n: number) => `topped up the gutters ${2 + (n % 3)} l`,
  (n: number) => `bench ec ${(2.2 + (n % 4) / 10).toFixed(1)}`,
  (n: number) => `jars water ${19 + (n % 3)}C`,
  (n: number) => `topped up the buckets ${3 + (n % 2)} l`,
];

function lineAt(n: number): object {
  const day = Math.floor(n / messagesADay);
  const at = new Date(
    Date.UTC(2027, 3, 15, 8) + day * 86_400_000 + (n % messagesADay) * 60_000,
  ).toISOString();
  return { at, from: 'tomas', text: templates[n % templates.length]!(n) };
}

function median(values: readonly number[]): number {
  return values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)]!;
}

const [short, long] = [new Dialogue(), new Dialogue()];
for (let n = 0; n < shortLog - measured / 2; n += 1) await short.next();
for (let n = 0; n < longLog - measured / 2; n += 1) await long.next();
const shortMs: number[] = [];
const longMs: number[] = [];
for (let n = 0; n < measured; n += 1) {
  shortMs.push(await short.next());
  longMs.push(await long.next());
}
short.end();
long.end();
const [ofShort, ofLong] = [median(shortMs), median(longMs)];
console.log(
  `a line with ${shortLog} entries in the log: ${ofShort.toFixed(1)} ms (median of ${measured})`,
);
console.log(
  `a line with ${longLog} entries in the log: ${ofLong.toFixed(1)} ms (median of ${measured})`,
);
console.log(
  `ratio ${(ofLong / ofShort).toFixed(2)} (to be at most 1.3, and the long one under 20 ms)`,
);
