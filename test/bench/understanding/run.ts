/**
 * How well messages are understood, through the whole rehearsal. The sealed halves are scored as well where
 * `--sealed` is given. What reading one costs is measured after that, in a process of its own: the heap
 * that thousands of played talks leave behind is no bot's.
 */
import { fork } from 'node:child_process';
import { once } from 'node:events';
import { openTestStore } from '../../storage/open-test-store.ts';
import { readCases } from '../../understanding/message-case.ts';
import { runCase } from '../../understanding/run-case.ts';
import { corpora } from './corpora.ts';

const withSealed = process.argv.includes('--sealed');
const store = await openTestStore();
for (const { file, isSealed } of corpora) {
  if (isSealed && !withSealed) continue;
  const cases = readCases(file);
  const scores = [];
  for (const messageCase of cases) scores.push(await runCase(store, messageCase));
  const exact = scores.filter(({ isExact }) => isExact).length;
  const wrong = scores.filter((score) => score.wrong.length > 0).length;
  const asked = scores.filter(({ isExact, asked: has }) => !isExact && has).length;
  const share = ((100 * exact) / cases.length).toFixed(1);
  console.log(
    `${file}: ${cases.length} messages, exact ${exact} (${share} %), with a wrong entry ${wrong}, asked needlessly ${asked}`,
  );
}
await store.close();

const reading = fork(new URL('reading.ts', import.meta.url), process.argv.slice(2));
const [status] = (await once(reading, 'exit')) as [number];
process.exitCode = status;
