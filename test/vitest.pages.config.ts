import { defineConfig } from 'vitest/config';

/** Pages tier: built site and foreign host pages, driven in a real browser. One file at a time: they share two cores with it. */
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['test/pages/**/*.test.ts', 'test/hosts/**/*.test.ts'],
    fileParallelism: false,
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
