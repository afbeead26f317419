import { defineConfig } from 'vitest/config';

/** What is the same in every engine, in the one that `ENGINE` of the environment says: see test/engines/run.mjs. */
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['test/engines/**/*.test.ts', 'test/hosts/delivery.test.ts', 'test/pages/markdown.test.ts'],
    // A driver shows one page at a time.
    fileParallelism: false,
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
