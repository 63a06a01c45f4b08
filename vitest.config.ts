import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    exclude: ['test/bench/**'],
    testTimeout: 300_000,
    hookTimeout: 120_000,
    // Two cores, and each embedded database takes some 350 MB.
    maxWorkers: 2,
  },
});
