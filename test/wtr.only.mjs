import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { esbuildPlugin } from '@web/dev-server-esbuild';
import { defaultReporter } from '@web/test-runner';
import { chromeLauncher } from '@web/test-runner-chrome';
import { browser } from './browser.mjs';

const counts = fileURLToPath(new URL('.counts/', import.meta.url));

/** Writes { passed, failed } where test/run.mjs adds the tiers up; a file that does not load counts as one failure. */
function countingReporter() {
  return {
    onTestRunFinished({ sessions }) {
      let passed = 0;
      let failed = 0;
      const walk = (suite) => {
        for (const test of suite.tests) {
          if (test.skipped) continue;
          if (test.passed) passed++;
          else failed++;
        }
        for (const child of suite.suites) walk(child);
      };
      for (const session of sessions) {
        const before = failed;
        if (session.testResults) walk(session.testResults);
        if (!session.passed && failed === before) failed++;
      }
      mkdirSync(counts, { recursive: true });
      writeFileSync(`${counts}components.json`, JSON.stringify({ passed, failed }));
    },
  };
}

/** The parser of pasted text comes as a script for all module systems but this one; bundlers know what to do with it. */
const parserAsModule = {
  name: 'parser-as-module',
  transform({ path, body }) {
    if (!path.endsWith('/papaparse.js')) return undefined;
    return `const module = { exports: {} };\nconst { exports } = module;\n${body}\nexport default module.exports;\n`;
  },
};

export default {
  rootDir: fileURLToPath(new URL('..', import.meta.url)),
  files: process.env.ONLY ? process.env.ONLY.split(',') : 'test/components/**/*.browser.test.ts',
  nodeResolve: { exportConditions: ['production', 'default'] },
  concurrency: 1,
  testsFinishTimeout: 180_000,
  browsers: [chromeLauncher({ launchOptions: await browser() })],
  plugins: [
    // The library's entry for Node is CommonJS behind a thin face; a browser takes its sources.
    {
      name: 'matrix-sources',
      resolveImport: ({ source }) => (source === 'ml-matrix' ? '/node_modules/ml-matrix/src/index.js' : undefined),
    },
    parserAsModule,
    esbuildPlugin({
      ts: true,
      tsconfig: fileURLToPath(new URL('../components/tsconfig.json', import.meta.url)),
      target: 'es2022',
    }),
  ],
  reporters: [defaultReporter({ reportTestProgress: false }), countingReporter()],
  testFramework: { config: { timeout: 20_000 } },
};
