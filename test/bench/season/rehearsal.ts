import { spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

/** One line that the rehearsal answered; the fields that the bench looks at. */
export interface LineOut {
  readonly done?: number;
  readonly error?: string;
  readonly kind?: string;
  readonly to?: string;
  readonly text?: string;
  readonly due?: readonly {
    readonly duty: string;
    readonly system: string | null;
    readonly litres?: number;
    readonly product?: string;
    readonly mL?: number;
    readonly probe?: string;
    readonly dueOn: string;
    readonly alongside?: boolean;
    readonly why: string;
  }[];
  readonly buttons?: readonly (readonly { readonly label: string; readonly press: string }[])[];
}

/** What `npm run rehearse` runs; `npm run bench:season` builds it once for all seasons. */
const BUILT_REHEARSAL = fileURLToPath(new URL('../../../dist/rehearse.js', import.meta.url));

/** A dialogue with the bot over its rehearsal: a child process that speaks JSON lines. */
export interface Rehearsal {
  /** Sends one line and gives all that it caused. */
  say(line: object): Promise<readonly LineOut[]>;
  close(): Promise<void>;
}

export function startRehearsal(greenhousePath: string): Rehearsal {
  const child = spawn(process.execPath, [BUILT_REHEARSAL, '--greenhouse', greenhousePath], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  const ended = new Promise<void>((resolve) =>
    child.once('close', () => {
      resolve();
    }),
  );
  const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
  return {
    async say(line) {
      child.stdin.write(`${JSON.stringify(line)}\n`);
      const answers: LineOut[] = [];
      for (;;) {
        const next = await lines.next();
        if (next.done === true) throw new Error(`rehearsal ended after ${JSON.stringify(line)}`);
        const answer = JSON.parse(next.value) as LineOut;
        if (answer.error !== undefined) {
          throw new Error(`${answer.error}, found in answer to ${JSON.stringify(line)}`);
        }
        if (answer.done !== undefined) return answers;
        answers.push(answer);
      }
    },
    async close() {
      child.stdin.end();
      await ended;
    },
  };
}
