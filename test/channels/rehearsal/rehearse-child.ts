import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..', '..');

/** One line of a rehearsal's output. */
export interface OutLine {
  readonly done?: number;
  readonly error?: string;
  readonly at?: string;
  readonly id?: string;
  readonly to?: string;
  readonly kind?: string;
  readonly text?: string;
  readonly logged?: readonly Record<string, unknown>[];
  readonly struck?: readonly Record<string, unknown>[];
  readonly due?: readonly Record<string, unknown>[];
  readonly buttons?: readonly (readonly { readonly label: string; readonly press: string }[])[];
  readonly outlook?: readonly Record<string, unknown>[];
}

export interface Rehearsed {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
  readonly lines: readonly OutLine[];
}

export const quarryLane = join(root, 'greenhouses', 'quarry-lane.json');

/** Runs the built rehearsal as people do, with the input given at once. */
export async function rehearse(
  args: readonly string[],
  input: readonly (object | string)[],
): Promise<Rehearsed> {
  const child = spawn(process.execPath, [join(root, 'dist', 'rehearse.js'), ...args]);
  let stdout = '';
  let stderr = '';
  child.stdout.setEncoding('utf8').on('data', (chunk: string) => (stdout += chunk));
  child.stderr.setEncoding('utf8').on('data', (chunk: string) => (stderr += chunk));
  // A child that refuses its call closes its input early.
  child.stdin.on('error', () => undefined);
  child.stdin.end(
    input.map((line) => `${typeof line === 'string' ? line : JSON.stringify(line)}\n`).join(''),
  );
  const [status] = (await once(child, 'close')) as [number | null];
  const lines = stdout
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line) as OutLine);
  return { status, stdout, stderr, lines };
}
