import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import type { Emulator } from '../../telegram-emulator/emulator.ts';
import { layEmptyDatabase } from './empty-database.ts';

const root = join(import.meta.dirname, '..', '..', '..');
const greenhouseFile = join(root, 'greenhouses', 'quarry-lane.json');
/** Within the package, so that the code finds its migrations from there. */
const builtFolder = join(root, 'node_modules', '.cache', 'brimkeeper', `built-${process.pid}`);
const clockFile = join(import.meta.dirname, 'stories', 'shifted-clock.mjs');
/** A first start makes a database, which a machine that is busy with others takes a minute for. */
const startPatienceMs = 120_000;
let built: Promise<string> | null = null;

/** The program as it ships, built once a test process. */
export function builtProgram(): Promise<string> {
  built ??= build({
    entryPoints: ['serve', 'picture-drawer'].map((name) => join(root, 'src', 'main', `${name}.ts`)),
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    packages: 'external',
    outdir: builtFolder,
    logLevel: 'error',
  }).then(() => join(builtFolder, 'serve.js'));
  return built;
}

export type Mode = 'polling' | 'webhook';

export interface BotOptions {
  readonly emulator: Emulator;
  readonly mode?: Mode;
  readonly greenhouse?: string;
  readonly env?: Readonly<Record<string, string>>;
  /** What it prints when it has started. */
  readonly waitsFor?: RegExp;
  /** Its clock can be put forward by `advance`. */
  readonly hasClock?: boolean;
  /** PostgreSQL instead of the embedded database. */
  readonly databaseUrl?: string;
  /** It makes its database itself, as the first start of all does. */
  readonly startsFromNothing?: boolean;
}

/** The program as a child process, with a database folder that outlives its starts. */
export class RunningBot {
  /** Where the platform is to call it; null where it asks. */
  hookUrl: string | null = null;
  readonly folder = mkdtempSync(join(tmpdir(), 'brimkeeper-telegram-'));
  /** Everything that it wrote to its two outputs. */
  output = '';
  readonly #options: BotOptions;
  #child: ChildProcess | null = null;
  #aheadMs = 0;
  #ended: Promise<number | null> = Promise.resolve(null);
  readonly #listeners = new Set<() => void>();

  constructor(options: BotOptions) {
    this.#options = options;
  }

  /** The folder of its embedded database. */
  get dataFolder(): string {
    return join(this.folder, 'data');
  }

  async start(): Promise<void> {
    const {
      emulator,
      mode = 'polling',
      greenhouse = greenhouseFile,
      hasClock = false,
      databaseUrl,
      startsFromNothing = false,
    } = this.#options;
    const program = await builtProgram();
    const isKept = databaseUrl !== undefined || existsSync(this.dataFolder);
    if (!isKept && !startsFromNothing) await layEmptyDatabase(this.dataFolder);
    const hook: Record<string, string> = {};
    if (mode === 'webhook') {
      const port = await freePort();
      this.hookUrl = `http://127.0.0.1:${port}/updates`;
      hook['TELEGRAM_WEBHOOK_URL'] = this.hookUrl;
      hook['TELEGRAM_WEBHOOK_SECRET'] = 'hush-hush';
      hook['TELEGRAM_WEBHOOK_PORT'] = String(port);
    }
    const child = spawn(process.execPath, [...(hasClock ? ['--import', clockFile] : []), program], {
      env: {
        PATH: process.env['PATH'],
        TZ: 'UTC',
        NODE_OPTIONS: '--enable-source-maps',
        TEST_CLOCK_AHEAD_MS: String(this.#aheadMs),
        BRIMKEEPER_DATA: this.dataFolder,
        BRIMKEEPER_GREENHOUSE: greenhouse,
        PORT: '0',
        TELEGRAM_TOKEN: emulator.token,
        TELEGRAM_API_ROOT: emulator.url,
        ...(databaseUrl === undefined ? {} : { DATABASE_URL: databaseUrl }),
        ...hook,
        ...this.#options.env,
      },
      stdio: ['ignore', 'pipe', 'pipe', 'ipc'],
    });
    this.#child = child;
    const hear = (chunk: Buffer): void => {
      this.output += chunk.toString();
      for (const listener of [...this.#listeners]) listener();
    };
    child.stdout?.on('data', hear);
    child.stderr?.on('data', hear);
    this.#ended = new Promise((resolve) => {
      child.once('exit', (code) => {
        resolve(code);
      });
    });
    const from = this.output.length;
    const { waitsFor = /On Telegram as @\w+/u } = this.#options;
    await this.prints(waitsFor, { from, timeoutMs: startPatienceMs });
  }

  /** What the first group of a pattern matches in the output, past or to come. */
  async prints(
    pattern: RegExp,
    { from = 0, timeoutMs = 10_000 }: { from?: number; timeoutMs?: number } = {},
  ): Promise<string> {
    const untilMs = Date.now() + timeoutMs;
    for (;;) {
      const found = pattern.exec(this.output.slice(from));
      if (found) return found[1] ?? found[0];
      if (Date.now() > untilMs) throw new Error(`not printed: ${pattern}; but: ${this.output}`);
      await new Promise<void>((resolve) => {
        const go = (): void => {
          this.#listeners.delete(go);
          clearTimeout(timer);
          resolve();
        };
        const timer = setTimeout(go, 200);
        this.#listeners.add(go);
      });
    }
  }

  /** The code by which the grower claims the bot, as it was last printed. */
  async claimCode(): Promise<string> {
    await this.prints(/the code ([\w-]+)/u);
    return [...this.output.matchAll(/the code ([\w-]+)/gu)].at(-1)![1]!;
  }

  /** Puts its clock forward, now or for its next start. */
  async advance(ms: number): Promise<void> {
    this.#aheadMs += ms;
    const child = this.#child;
    if (!child) return;
    const heard = new Promise((resolve) => child.once('message', resolve));
    child.send({ aheadMs: this.#aheadMs });
    await heard;
  }

  /** Ends it as an owner would; gives how long it took, in ms. */
  async stop(): Promise<number> {
    const startedMs = Date.now();
    this.#child?.kill('SIGTERM');
    await this.#ended;
    this.#child = null;
    return Date.now() - startedMs;
  }

  async kill(): Promise<void> {
    this.#child?.kill('SIGKILL');
    await this.#ended;
    this.#child = null;
  }

  async dispose(): Promise<void> {
    if (this.#child) await this.stop();
    rmSync(this.folder, { recursive: true, force: true });
  }
}

export async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  await new Promise((resolve) => server.close(resolve));
  if (address === null || typeof address === 'string') throw new Error('no port');
  return address.port;
}
