import { defineConfig } from 'vitest/config';

/** Pages tier: built site and foreign host pages, driven in a real browser: three files at a time, each with a browser of its own: they wait for it as often as they work. */
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['test/pages/**/*.test.ts', 'test/hosts/**/*.test.ts'],
    maxWorkers: 3,
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
