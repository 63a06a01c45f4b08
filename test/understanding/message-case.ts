import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseGreenhouseText } from '../../src/greenhouse/file/parse-greenhouse-text.ts';
import type { Greenhouse } from '../../src/greenhouse/greenhouse.ts';

/** An entry as a case expects it: only the fields that matter. */
export type ExpectedEntry = Readonly<Record<string, string | number | boolean | null>>;

/** One case of a message corpus, as `messages.jsonl` has them. */
export interface MessageCase {
  readonly greenhouse?: string;
  readonly rule?: string;
  readonly before?: readonly object[];
  readonly line: { readonly text?: string };
  readonly expect: {
    readonly logged: readonly ExpectedEntry[];
    readonly asks?: boolean;
    readonly answers?: boolean;
    readonly refuses?: boolean;
    readonly corrects?: boolean;
    readonly struck?: number;
    /** What the words of all lines out must have in them, each a pattern. */
    readonly says?: readonly string[];
  };
}

const testFolder = join(dirname(fileURLToPath(import.meta.url)), '..');

export function readCases(file: string): readonly MessageCase[] {
  return readFileSync(join(testFolder, file), 'utf8')
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => JSON.parse(line) as MessageCase);
}

/** The text of a case's greenhouse file. */
export function greenhouseTextOf({ greenhouse }: MessageCase): string {
  const file =
    greenhouse === undefined || greenhouse === 'quarry-lane'
      ? join(testFolder, '..', 'greenhouses', 'quarry-lane.json')
      : join(testFolder, 'understanding', 'corpus', 'greenhouses', `${greenhouse}.json`);
  return readFileSync(file, 'utf8');
}

const greenhouses = new Map<string, Greenhouse>();

/** A case's greenhouse, whose file is read once. */
export function greenhouseOf(messageCase: MessageCase): Greenhouse {
  const name = messageCase.greenhouse ?? 'quarry-lane';
  const known = greenhouses.get(name);
  if (known) return known;
  const read = parseGreenhouseText(greenhouseTextOf(messageCase));
  if (!read.ok) throw new Error(`a case's greenhouse is faulty: ${JSON.stringify(read.faults)}`);
  greenhouses.set(name, read.greenhouse);
  return read.greenhouse;
}
