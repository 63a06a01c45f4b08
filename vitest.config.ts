import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** The files that take longest, in the order they start in: those that compute beside those that wait. */
const longest = [
  'understanding/corpora/questions',
  'channels/telegram/stories/week-in-words',
  'understanding/corpora/later',
  'channels/telegram/stories/faults',
  'understanding/corpora/tried',
  'channels/telegram/delivery',
  'understanding/corpora/talks',
  'understanding/corpora/first',
  'assistant/permissions/permissions',
  'channels/telegram/stories/family-week',
  'channels/telegram/kill',
  'channels/rehearsal/process',
  'channels/page/browser',
];

/** So that no worker is left alone with a long file at the end. */
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).sort((one, other) => placeOf(one) - placeOf(other));
  }
}

function placeOf({ moduleId }: TestSpecification): number {
  const place = longest.findIndex((name) => moduleId.endsWith(`/test/${name}.test.ts`));
  return place < 0 ? longest.length : place;
}

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    exclude: ['test/bench/**'],
    testTimeout: 300_000,
    hookTimeout: 120_000,
    // What comes in its own time is waited for, however slow the machine is.
    expect: { poll: { timeout: 60_000 } },
    // The files of a worker share its modules, warmed up: reading and compiling the bot anew for each
    // file had been half of the time. A module keeps nothing but what can be worked out again from
    // its key, which eslint holds, as the program itself does not start anew for each message either.
    isolate: false,
    sequence: { sequencer: LongestFirst },
    // Two cores, and each embedded database takes some 350 MB.
    maxWorkers: 2,
  },
});
