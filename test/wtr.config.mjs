import { mkdirSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { esbuildPlugin } from '@web/dev-server-esbuild';
import { defaultReporter } from '@web/test-runner';
import { chromeLauncher } from '@web/test-runner-chrome';
import { browser } from './browser.mjs';
import { bundle } from './components/bundle.mjs';

const counts = fileURLToPath(new URL('.counts/', import.meta.url));

const nameOf = (file) => file.replace(/^.*\/(?:components|\.bundled)\//, '').replace(/\.browser\.test\.[jt]s$/, '');

/** Writes { passed, failed } where test/run.mjs adds the tiers up; a file that does not load counts as one failure. */
function countingReporter() {
  return {
    onTestRunFinished({ sessions }) {
      let passed = 0;
      let failed = 0;
      const seconds = new Map();
      const walk = (suite, file) => {
        for (const test of suite.tests) {
          seconds.set(file, (seconds.get(file) ?? 0) + (test.duration ?? 0) / 1000);
          if (test.skipped) continue;
          if (test.passed) passed++;
          else failed++;
        }
        for (const child of suite.suites) walk(child, file);
      };
      for (const session of sessions) {
        const before = failed;
        if (session.testResults) walk(session.testResults, nameOf(session.testFile));
        if (!session.passed && failed === before) failed++;
      }
      const slow = [...seconds].sort(([, a], [, b]) => b - a).slice(0, 12);
      console.log(`Longest files, s: ${slow.map(([file, time]) => `${file} ${time.toFixed(1)}`).join(', ')}`);
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

/** Media features that the runner's own command does not know, such as forced-colors: a list of { name, value }. */
const mediaFeatures = {
  name: 'media-features',
  /** What was set ends with the session that set it. */
  clients: new Map(),
  async executeCommand({ command, payload, session }) {
    if (command !== 'media-features') return undefined;
    const client = this.clients.get(session.id) ?? (await session.browser.getPage(session.id).createCDPSession());
    this.clients.set(session.id, client);
    await client.send('Emulation.setEmulatedMedia', { features: payload });
    return true;
  },
};

const folder = fileURLToPath(new URL('components/', import.meta.url));
const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.browser.test.ts'))
  .map((file) => `${folder}${file}`)
  .sort((a, b) => statSync(b).size - statSync(a).size);
const launchOptions = await browser();
console.log(`Browser: ${launchOptions.executablePath}`);
/** Pages have the focus whatever else is open on the machine: a tab in the background is told of no focus and no blur. */
const launcher = () =>
  chromeLauncher({
    launchOptions,
    async createPage({ context }) {
      const page = await context.newPage();
      await (await page.createCDPSession()).send('Emulation.setFocusEmulationEnabled', { enabled: true });
      return page;
    },
  });
/** Every fourth file, the long ones first, for each browser. */
const isAsked = process.argv.includes('--files');
const bundles = isAsked ? [] : await bundle(files);
const groups = [0, 1, 2, 3].map((rest) => ({
  name: `quarter ${rest + 1}`,
  files: bundles.filter((_, i) => i % 4 === rest),
  browsers: [launcher()],
}));

export default {
  rootDir: fileURLToPath(new URL('..', import.meta.url)),
  // `--files` asks for some of them, in one browser.
  ...(isAsked ? { browsers: [launcher()] } : { groups }),
  nodeResolve: { exportConditions: ['production', 'default'] },
  // One file at a time in each of four browsers, which wait as often as they work: of two pages in one browser, only one would have the focus.
  concurrency: 1,
  concurrentBrowsers: 4,
  // A whole file, on a machine three times slower than usual.
  testsFinishTimeout: 600_000,
  plugins: [
    // The library's entry for Node is CommonJS behind a thin face; a browser takes its sources.
    {
      name: 'matrix-sources',
      resolveImport: ({ source }) => (source === 'ml-matrix' ? '/node_modules/ml-matrix/src/index.js' : undefined),
    },
    parserAsModule,
    mediaFeatures,
    esbuildPlugin({
      ts: true,
      tsconfig: fileURLToPath(new URL('../components/tsconfig.json', import.meta.url)),
      target: 'es2022',
    }),
  ],
  reporters: [defaultReporter({ reportTestProgress: false }), countingReporter()],
  // What observers are told a frame late is an error event without an error.
  filterBrowserLogs: ({ args }) => args[0] !== null,
  testFramework: { config: { timeout: 60_000 } },
};
