/** What reading a message costs at the median, beside general recognisers on the same texts. */
import { readGreenhouseFile } from '../../../src/greenhouse/file/read-greenhouse-file.ts';
import type { Context } from '../../../src/understanding/context.ts';
import { understand } from '../../../src/understanding/understand.ts';
import { greenhouseTextOf, type MessageCase, readCases } from '../../understanding/message-case.ts';
import { corpora } from './corpora.ts';
import { peers } from './peers.ts';

const warmUpRounds = 3;
const measuredRounds = 5;

function contextOf(messageCase: MessageCase): Context {
  const read = readGreenhouseFile(JSON.parse(greenhouseTextOf(messageCase)));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const line = messageCase.line as { readonly at: string; readonly from: string };
  const { greenhouse } = read;
  return {
    greenhouse,
    member: greenhouse.members.find(({ handle }) => handle === line.from) ?? greenhouse.members[0]!,
    writtenAtMs: Date.parse(line.at),
    repliedTo: null,
    recentSystem: null,
    openQuestions: [],
    roundDuties: null,
    existsSinceMs: 0,
  };
}

/** The greenhouse's compiled words are kept by identity, as they are in the running bot. */
function contextsOf(cases: readonly MessageCase[]): readonly Context[] {
  const greenhouses = new Map<string, Context['greenhouse']>();
  return cases.map((messageCase) => {
    const context = contextOf(messageCase);
    const key = messageCase.greenhouse ?? '';
    const greenhouse = greenhouses.get(key) ?? context.greenhouse;
    greenhouses.set(key, greenhouse);
    return { ...context, greenhouse };
  });
}

/**
 * The median over all texts of what reading one costs, in microseconds. All are read before any is
 * read again, as in a chat: what is kept of the last messages helps nobody here.
 */
function medianMicroseconds(texts: readonly string[], read: (at: number) => unknown): number {
  for (let round = 0; round < warmUpRounds; round += 1) texts.forEach((_, at) => read(at));
  const totals = texts.map(() => 0);
  for (let round = 0; round < measuredRounds; round += 1) {
    for (const at of texts.keys()) {
      const from = performance.now();
      read(at);
      totals[at]! += performance.now() - from;
    }
  }
  const sorted = totals.toSorted((one, other) => one - other);
  return (sorted[Math.floor(sorted.length / 2)]! * 1000) / measuredRounds;
}

const withSealed = process.argv.includes('--sealed');
const told = corpora.flatMap(({ file, isSealed }) =>
  isSealed && !withSealed ? [] : readCases(file),
);
const spoken = told.filter(({ line }) => line.text !== undefined && line.text.length < 500);
const texts = spoken.map(({ line }) => line.text!);
const contexts = contextsOf(spoken);
const own = medianMicroseconds(texts, (at) => understand(texts[at]!, contexts[at]!));
console.log(`reading a message: ${own.toFixed(0)} µs at the median (to be under 200)`);
for (const { name, read, finds } of peers) {
  const microseconds = medianMicroseconds(texts, (at) => read(texts[at]!));
  const subject = spoken.map(finds).filter((found) => found !== null);
  const found = subject.filter((isFound) => isFound).length;
  console.log(
    `${name}: ${microseconds.toFixed(0)} µs at the median (${(microseconds / own).toFixed(1)} times ours), finds its subject in ${found} of ${subject.length}`,
  );
}
