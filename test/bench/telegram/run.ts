import { type ChildProcess, spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import postgres from 'postgres';
import { openPostgres } from '../../../src/storage/postgres/open-postgres.ts';
import { settledHousehold } from '../../channels/telegram/household.ts';
import { RunningBot } from '../../channels/telegram/running-bot.ts';
import { migrationsFolder } from '../../storage/folders.ts';
import { type Emulator, startEmulator } from '../../telegram-emulator/emulator.ts';
import type { Member } from '../../telegram-emulator/members/member.ts';
import { type Figures, flood, inTurn } from './latencies.ts';

/**
 * Readings a second, and the time from a member's message to its receipt, on PostgreSQL: the house
 * beside a bare grammY bot that inserts one row and answers. Both against the same emulator, one
 * after the other, in turns, each on a database of its own.
 */
const serverUrl = process.env['DATABASE_URL_TEST'] ?? 'postgres://postgres@127.0.0.1:5432/test';
const memberCount = 20;
const floodEach = 25;
const inTurnMembers = 4;
const inTurnEach = 50;
const rounds = 5;
const noPace = {
  TELEGRAM_SENDS_PER_SECOND: '100000',
  TELEGRAM_SENDS_PER_SECOND_IN_CHAT: '100000',
  LOG_LEVEL: 'warn',
};

interface Measured {
  readonly flood: Figures;
  readonly inTurn: Figures;
}

async function withDatabase<T>(act: (url: string) => Promise<T>): Promise<T> {
  const name = `brimkeeper_bench_${randomBytes(6).toString('hex')}`;
  const server = postgres(serverUrl, { max: 1, onnotice: () => undefined });
  await server.unsafe(`create database ${name}`);
  const url = new URL(serverUrl);
  url.pathname = `/${name}`;
  try {
    return await act(url.href);
  } finally {
    await server.unsafe(`drop database ${name} with (force)`);
    await server.end();
  }
}

async function measure(people: readonly Member[]): Promise<Measured> {
  await inTurn(people.slice(0, inTurnMembers), 5);
  return {
    flood: await flood(people, floodEach),
    inTurn: await inTurn(people.slice(0, inTurnMembers), inTurnEach),
  };
}

function peopleIn(emulator: Emulator): readonly Member[] {
  return Array.from({ length: memberCount }, (_, position) =>
    emulator.world.user({ name: `Person ${position}` }),
  );
}

async function house(): Promise<Measured> {
  return withDatabase(async (url) => {
    const emulator = await startEmulator();
    const people = peopleIn(emulator);
    const store = await openPostgres({ url, migrationsFolder });
    const placed = people.map((person) => ({ person, role: 'helper' as const }));
    await settledHousehold(store, placed, { createdAtMs: Date.now() - 60_000 });
    await store.close();
    const bot = new RunningBot({ emulator, databaseUrl: url, env: noPace });
    await bot.start();
    await emulator.drained();
    const measured = await measure(people);
    await bot.dispose();
    await emulator.stop();
    return measured;
  });
}

async function bare(): Promise<Measured> {
  return withDatabase(async (url) => {
    const emulator = await startEmulator();
    const people = peopleIn(emulator);
    const child: ChildProcess = spawn(
      process.execPath,
      ['--import', 'tsx', join(import.meta.dirname, 'bare-bot.ts')],
      {
        env: {
          PATH: process.env['PATH'],
          TELEGRAM_TOKEN: emulator.token,
          TELEGRAM_API_ROOT: emulator.url,
          DATABASE_URL: url,
        },
        stdio: ['ignore', 'pipe', 'inherit'],
      },
    );
    await new Promise((resolve) => child.stdout!.once('data', resolve));
    const measured = await measure(people);
    child.kill('SIGTERM');
    await new Promise((resolve) => child.once('exit', resolve));
    await emulator.stop();
    return measured;
  });
}

function median(values: readonly number[]): number {
  return values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)]!;
}

/** How much slower the house is, as the median over the rounds: each pair ran under one load. */
function pairedRatio(
  figure: keyof Figures,
  kind: keyof Measured,
  ours: readonly Measured[],
  theirs: readonly Measured[],
): number {
  return median(
    ours.map((each, round) => {
      const times = each[kind][figure] / theirs[round]![kind][figure];
      return figure === 'perSecond' ? 1 / times : times;
    }),
  );
}

function row(name: string, kind: keyof Measured, ours: Measured[], theirs: Measured[]): string {
  const of = (measured: Measured[], figure: keyof Figures) =>
    median(measured.map((each) => each[kind][figure]));
  const cells = (['perSecond', 'p50Ms', 'p99Ms'] as const).map((figure) => {
    const [house, bare] = [of(ours, figure), of(theirs, figure)];
    const ratio = pairedRatio(figure, kind, ours, theirs);
    const digits = figure === 'perSecond' ? 0 : 1;
    return `${house.toFixed(digits)} | ${bare.toFixed(digits)} | ${ratio.toFixed(2)}`;
  });
  return `| ${name} | ${cells.join(' | ')} |`;
}

function roundLine(house: Measured, bare: Measured): string {
  const cells = (['flood', 'inTurn'] as const).map(
    (kind) =>
      `${kind}: ${house[kind].perSecond.toFixed(0)}/s against ${bare[kind].perSecond.toFixed(0)}/s, p50 ${house[kind].p50Ms.toFixed(1)} against ${bare[kind].p50Ms.toFixed(1)} ms`,
  );
  return cells.join('; ');
}

const ours: Measured[] = [];
const theirs: Measured[] = [];
for (let round = 0; round < rounds; round += 1) {
  // In turns, and each first every other time, since a machine is never equally busy for long.
  if (round % 2 === 0) ours.push(await house());
  theirs.push(await bare());
  if (round % 2 === 1) ours.push(await house());
  console.error(roundLine(ours.at(-1)!, theirs.at(-1)!));
}
console.log(
  `Median of ${rounds} runs; ratio: how many times the bare bot's figure, at most 2.0 wanted.`,
);
console.log('| | readings/s | bare | ratio | p50 ms | bare | ratio | p99 ms | bare | ratio |');
console.log('|---|---|---|---|---|---|---|---|---|---|');
console.log(row(`${memberCount * floodEach} at once`, 'flood', ours, theirs));
console.log(row(`${inTurnMembers} in turn`, 'inTurn', ours, theirs));
