import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { parseArgs } from 'node:util';
import { Desk } from '../assistant/desk.ts';
import type { Store } from '../assistant/ports/store.ts';
import { Rehearsal, rehearsalChannel } from '../channels/rehearsal/rehearsal.ts';
import { parseGreenhouseText } from '../greenhouse/file/parse-greenhouse-text.ts';
import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import { openEmbedded } from '../storage/embedded/open-embedded.ts';
import { DatabaseRefused } from '../storage/refusal.ts';
import { wordings } from '../wording/wordings.ts';
import { cacheFolder } from './open-store.ts';
import { packageRoot } from './package-root.ts';

const usage = 'usage: npm run --silent rehearse -- --greenhouse FILE [--data DIR] < talk.jsonl';
const badCall = 2;

interface Call {
  readonly greenhouse: string;
  readonly data: string | null;
}

function readCall(args: readonly string[]): Call | null {
  try {
    const { values } = parseArgs({
      args: [...args],
      options: { greenhouse: { type: 'string' }, data: { type: 'string' } },
    });
    if (values.greenhouse === undefined) return null;
    return { greenhouse: values.greenhouse, data: values.data ?? null };
  } catch {
    return null;
  }
}

/** Reads the greenhouse file whole, telling every fault on standard error. */
function readGreenhouse(file: string): Greenhouse | null {
  let text: string;
  try {
    text = readFileSync(file, 'utf8');
  } catch (error) {
    console.error(`--greenhouse: found no readable file at "${file}" (${String(error)})`);
    return null;
  }
  const read = parseGreenhouseText(text);
  if (read.ok) {
    for (const notice of read.notices) console.error(notice);
    return read.greenhouse;
  }
  for (const { path, found, expected } of read.faults) {
    console.error(`${path}: found ${found}, expected ${expected}`);
  }
  return null;
}

async function openStoreFor({ data }: Call, root: string): Promise<Store | null> {
  try {
    return await openEmbedded({
      folder: data ?? 'memory',
      migrationsFolder: join(root, 'drizzle'),
      cacheFolder: cacheFolder(root),
      // What a rehearsal did can be done again.
      sync: 'at-close',
    });
  } catch (error) {
    if (!(error instanceof DatabaseRefused)) throw error;
    console.error(error.message);
    return null;
  }
}

async function rehearse(args: readonly string[]): Promise<number> {
  const call = readCall(args);
  if (!call) {
    console.error(usage);
    return badCall;
  }
  const greenhouse = readGreenhouse(call.greenhouse);
  if (!greenhouse) return badCall;
  const root = packageRoot();
  const store = await openStoreFor(call, root);
  if (!store) return badCall;
  const rehearsal = new Rehearsal({
    store,
    desk: new Desk({ store, channelOf: () => rehearsalChannel }),
    openGreenhouse: async (firstAtMs) => {
      const [known] = await store.greenhouses();
      return known?.id ?? (await store.createGreenhouse(greenhouse, firstAtMs));
    },
    wordings,
  });
  for await (const line of createInterface({ input: process.stdin, crlfDelay: Infinity })) {
    for (const out of await rehearsal.handle(line)) {
      process.stdout.write(`${JSON.stringify(out)}\n`);
    }
  }
  await store.close();
  return 0;
}

process.exitCode = await rehearse(process.argv.slice(2));
