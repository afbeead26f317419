import { defineConfig } from 'vitest/config';

/** Pages tier: built site and foreign host pages, driven in a real browser: two files at a time, each with a browser of its own. */
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['test/pages/**/*.test.ts', 'test/hosts/**/*.test.ts'],
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
