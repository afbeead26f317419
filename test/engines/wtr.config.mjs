/** The contract of every element in another engine: `ENGINE` of the environment says which. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defaultReporter } from '@web/test-runner';
import base from '../wtr.config.mjs';
import { CANNOT, engineLauncher } from './launcher.mjs';

const counts = fileURLToPath(new URL('../.counts/', import.meta.url));
const name = process.env.ENGINE;

/** Tests that the driver cannot set up are told apart from those that failed. */
function engineReporter() {
  return {
    onTestRunFinished({ sessions }) {
      const result = { passed: 0, failed: 0, notRun: [] };
      const walk = (suite) => {
        for (const test of suite.tests) {
          if (test.passed) result.passed++;
          else if (test.skipped) continue;
          else if (test.error?.message?.includes(CANNOT)) result.notRun.push(`${suite.name}: ${test.name}`);
          else result.failed++;
        }
        for (const child of suite.suites) walk(child);
      };
      for (const session of sessions) {
        const before = result.failed + result.notRun.length;
        if (session.testResults) walk(session.testResults);
        if (!session.passed && result.failed + result.notRun.length === before) result.failed++;
      }
      mkdirSync(counts, { recursive: true });
      writeFileSync(`${counts}engine-contract.json`, JSON.stringify(result));
    },
  };
}

/** Media features can be set back, as each test does after itself, and not be set. */
const noMediaFeatures = {
  name: 'no-media-features',
  async executeCommand({ command, payload }) {
    if (command !== 'media-features') return undefined;
    if (payload.length) throw new Error(`${CANNOT} emulate ${payload.map((feature) => feature.name)}.`);
    return true;
  },
};

const { groups: _groups, ...rest } = base;
export default {
  ...rest,
  files: ['test/components/contract/**/*.browser.test.ts'],
  browsers: [engineLauncher(name)],
  concurrentBrowsers: 1,
  testsFinishTimeout: 600_000,
  browserStartTimeout: 60_000,
  testsStartTimeout: 60_000,
  plugins: [...rest.plugins.filter((plugin) => plugin.name !== 'media-features'), noMediaFeatures],
  reporters: [defaultReporter({ reportTestProgress: false }), engineReporter()],
};
