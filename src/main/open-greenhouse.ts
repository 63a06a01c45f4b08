import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { GreenhouseId, Store } from '../assistant/ports/store.ts';
import type { Config } from '../config/read-config.ts';
import { parseGreenhouseText } from '../greenhouse/file/parse-greenhouse-text.ts';

/** The demo greenhouse that a new database starts with where no file is named. */
const demoFile = ['greenhouses', 'quarry-lane.json'];

export type OpenedGreenhouse =
  | { readonly ok: true; readonly id: GreenhouseId; readonly isNew: boolean }
  | { readonly ok: false; readonly faults: readonly string[] };

/** The greenhouse of the database; a new database gets the one of the file. */
export async function openGreenhouse(
  store: Store,
  config: Config,
  root: string,
  nowMs: number,
): Promise<OpenedGreenhouse> {
  const [known] = await store.greenhouses();
  if (known) return { ok: true, id: known.id, isNew: false };
  const file = config.greenhouseFile ?? join(root, ...demoFile);
  const read = parseGreenhouseText(readFileSync(file, 'utf8'));
  if (!read.ok) {
    return {
      ok: false,
      faults: read.faults.map(
        ({ path, found, expected }) => `${path}: found ${found}, expected ${expected}`,
      ),
    };
  }
  return { ok: true, id: await store.createGreenhouse(read.greenhouse, nowMs), isNew: true };
}
