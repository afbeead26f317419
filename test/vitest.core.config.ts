import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

/** Node tier: the computation, and what components compute without a browser. */
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['test/core/**/*.test.ts', 'test/components/**/*.test.ts'],
    exclude: ['**/*.browser.test.ts'],
    testTimeout: 30_000,
    // One a core: left to itself, vitest keeps a core free, and of two that is half.
    maxWorkers: availableParallelism(),
  },
});
