/**
 * Host pages, delivery, the author's walk, the site's pages and the contract of every element in other engines:
 * `npm run test:engines [firefox|webkit|chromium …]`, Firefox and WebKit when none is named. What is not installed is NOT RUN, and so
 * is what an engine's driver cannot set up. In Debian they are `firefox-esr`, and `webkit2gtk-driver` with `xvfb`; FIREFOX_PATH,
 * WEBKIT_DRIVER_PATH and MINIBROWSER_PATH say where else. Ends with a table; the exit code tells whether anything failed.
 */
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isInstalled, startEngine } from './engines.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const counts = join(root, 'test/.counts');
const NAMES = ['firefox', 'webkit', 'chromium'];

let running;
// Whoever ends this ends what it runs.
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
  process.once(signal, () => {
    running?.kill(signal);
    process.exit(1);
  });
}

const run = (args, env = {}) =>
  new Promise((resolve) => {
    const child = spawn(process.execPath, args, { cwd: root, stdio: 'inherit', env: { ...process.env, ...env } });
    running = child;
    child.on('error', () => resolve(false));
    child.on('exit', (code) => resolve(code === 0));
  });
const module = (path) => join(root, 'node_modules', path);

/** Runs a tester that writes its counts into a file; none, or a bad end without a failure, is one failure. */
async function counted(name, read, args, env) {
  const file = join(counts, name);
  rmSync(file, { force: true });
  const ended = await run(args, env);
  let rows;
  try {
    rows = read(JSON.parse(readFileSync(file, 'utf8')));
  } catch (error) {
    return [{ what: `${name}: ${error.message}`, passed: 0, failed: 1, notRun: 0 }];
  }
  if (!ended && rows.every(({ failed, notRun }) => failed + notRun === 0)) rows[0].failed++;
  return rows;
}

const WHAT = {
  'host-pages': 'pages of somebody else',
  delivery: 'delivery, files that are not the ones built',
  markdown: "an author's walk: Markdown, RTL, en_US",
  'site-pages': 'pages of the site',
};

const perFile = ({ testResults }) =>
  testResults.map(({ name, status, assertionResults }) => {
    const is = (one) => assertionResults.filter((result) => result.status === one).length;
    const [key] = Object.keys(WHAT).filter((part) => name.includes(`${part}.test`));
    return {
      what: WHAT[key] ?? name,
      passed: is('passed'),
      failed: is('failed') || (status === 'failed' ? 1 : 0),
      notRun: 0,
    };
  });

async function testIn(name) {
  const env = { ENGINE: name };
  const report = join(counts, 'engine-pages.json');
  const pages = [module('vitest/vitest.mjs'), 'run', '--config', 'test/vitest.engines.config.ts'];
  const contract = [module('@web/test-runner/dist/bin.js'), '--config', 'test/engines/wtr.config.mjs'];
  return [
    ...(await counted(
      'engine-pages.json',
      perFile,
      [...pages, '--reporter=default', '--reporter=json', `--outputFile.json=${report}`],
      env,
    )),
    ...(await counted(
      'engine-contract.json',
      ({ passed, failed, notRun }) => [
        { what: 'the contract of every element', passed, failed, notRun: notRun.length },
      ],
      contract,
      env,
    )),
  ];
}

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !NAMES.includes(name));
if (unknown.length) {
  console.error(`There is no engine ${unknown.join(', ')}: ${NAMES.join(', ')}.`);
  process.exit(2);
}

mkdirSync(counts, { recursive: true });
const builds = [
  ['core/worker/build-layers.mjs'],
  ['test/components/worker/build-fixture.mjs'],
  ...['standalone', 'cdn', 'site'].map((mode) => [module('vite/bin/vite.js'), 'build', '--mode', mode]),
];
for (const args of builds) {
  if (!(await run(args))) {
    console.error(`${args.join(' ')} failed: there is nothing to test.`);
    process.exit(1);
  }
}

const lines = [];
let failures = 0;
for (const name of asked.length ? asked : ['firefox', 'webkit']) {
  if (!isInstalled(name)) {
    lines.push(`${name}: NOT RUN, not installed`);
    continue;
  }
  let version;
  try {
    const engine = await startEngine(name);
    ({ version } = engine);
    await engine.close();
  } catch (error) {
    lines.push(`${name}: NOT RUN, it could not be started (${error.message})`);
    continue;
  }
  console.log(`\n── ${version} ──`);
  const rows = await testIn(name);
  lines.push(version);
  for (const { what, passed, failed, notRun } of rows) {
    const cannot = notRun ? `, ${notRun} NOT RUN (the driver cannot emulate print or forced colours)` : '';
    lines.push(`  ${what.padEnd(46)}${passed} passed, ${failed} failed${cannot}`);
    failures += failed;
  }
}
console.log(`\n${lines.join('\n')}`);
process.exitCode = failures ? 1 : 0;
