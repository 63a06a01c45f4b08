import { readFileSync } from 'node:fs';
import { Desk, type DeskOptions } from '../assistant/desk.ts';
import type { GreenhouseId, Store } from '../assistant/ports/store.ts';
import { type Config, readConfig } from '../config/read-config.ts';
import { DatabaseRefused } from '../storage/refusal.ts';
import { openGreenhouse } from './open-greenhouse.ts';
import { openStore } from './open-store.ts';
import { packageRoot } from './package-root.ts';

const badCall = 2;

/** What every way of running the bot stands on. */
export interface Ground {
  readonly config: Config;
  readonly root: string;
  readonly store: Store;
  readonly desk: Desk;
  readonly greenhouseId: GreenhouseId;
}

/**
 * Reads the configuration, opens the database and the greenhouse, and runs the bot on them. What
 * forbids it is told in clear sentences, with exit status 2.
 */
export async function start(
  reach: Omit<DeskOptions, 'store'>,
  run: (ground: Ground) => Promise<void>,
): Promise<void> {
  const read = readConfig(process.env, (file) => readFileSync(file, 'utf8'));
  if (!read.ok) {
    refuse(read.faults);
    return;
  }
  const { config } = read;
  const root = packageRoot();
  let store: Store;
  try {
    store = await openStore(config, root);
  } catch (error) {
    if (!(error instanceof DatabaseRefused)) throw error;
    refuse([error.message]);
    return;
  }
  const opened = await openGreenhouse(store, config, root, Date.now());
  if (!opened.ok) {
    await store.close();
    refuse(opened.faults);
    return;
  }
  const desk = new Desk({ store, ...reach });
  await run({ config, root, store, desk, greenhouseId: opened.id });
}

function refuse(faults: readonly string[]): void {
  for (const fault of faults) console.error(fault);
  process.exitCode = badCall;
}
