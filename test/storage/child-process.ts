import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

export interface Child {
  /** What it prints next. */
  line(): Promise<string>;
  kill(): Promise<void>;
}

/** Runs a TypeScript file beside the tests in a process of its own. */
export function startChild(file: URL, args: readonly string[]): Child {
  const child: ChildProcess = spawn(
    process.execPath,
    ['--import', 'tsx', fileURLToPath(file), ...args],
    { stdio: ['ignore', 'pipe', 'inherit'] },
  );
  const lines = createInterface({ input: child.stdout! })[Symbol.asyncIterator]();
  return {
    line: async () => {
      const next = await lines.next();
      if (next.done === true) throw new Error(`${file.pathname} ended without another line`);
      return next.value;
    },
    kill: async () => {
      if (child.exitCode !== null || child.signalCode !== null) return;
      child.kill('SIGKILL');
      await once(child, 'exit');
    },
  };
}
