import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    exclude: ['test/bench/**'],
    testTimeout: 300_000,
    hookTimeout: 120_000,
    // What comes in its own time is waited for, however slow the machine is.
    expect: { poll: { timeout: 60_000 } },
    // Two cores, and each embedded database takes some 350 MB.
    maxWorkers: 2,
  },
});
