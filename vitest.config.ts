import { defineConfig } from 'vitest/config';

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
    // Two cores, and each embedded database takes some 350 MB.
    maxWorkers: 2,
  },
});
