import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

/** What looks at a page's one bridge from its beginning cannot share it with other files. */
const ALONE = ['test/components/shared/answer-controller.test.ts'];
const BROWSER = '**/*.browser.test.ts';

/**
 * Node tier: the computation, and what components compute without a browser. Most of it has nothing to keep apart, and loads each module
 * once for all files of a worker.
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
        test: {
          name: 'together',
          include: ['test/core/**/*.test.ts', 'test/components/**/*.test.ts'],
          exclude: [BROWSER, ...ALONE],
          isolate: false,
        },
      },
      { extends: true, test: { name: 'alone', include: ALONE } },
    ],
  },
});
