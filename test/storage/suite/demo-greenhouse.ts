import { readFileSync } from 'node:fs';
import { parseGreenhouseText } from '../../../src/greenhouse/file/parse-greenhouse-text.ts';
import type { Greenhouse } from '../../../src/greenhouse/greenhouse.ts';

function readDemo(): Greenhouse {
  const file = new URL('../../../greenhouses/quarry-lane.json', import.meta.url);
  const read = parseGreenhouseText(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.greenhouse;
}

export const demoGreenhouse = readDemo();
