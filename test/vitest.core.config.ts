import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

const BROWSER = '**/*.browser.test.ts';

/**
 * Node tier: the computation, and what components compute without a browser. The computation has nothing to keep apart, and loads each
 * module once for all files of a worker; components share a page's one bridge, which each file begins anew.
 */
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    testTimeout: 30_000,
    // One a core: left to itself, vitest keeps a core free, and of two that is half.
    maxWorkers: availableParallelism(),
    projects: [
      {
        extends: true,
        test: { name: 'core', include: ['test/core/**/*.test.ts'], exclude: [BROWSER], isolate: false },
      },
      { extends: true, test: { name: 'components', include: ['test/components/**/*.test.ts'], exclude: [BROWSER] } },
    ],
  },
});
