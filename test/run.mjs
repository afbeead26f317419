/**
 * Runs the tests, tier after tier, and adds them up: `node test/run.mjs [tier …]`, all tiers when none is named.
 * A tier that fails does not keep the next from running; one that crashes counts as a failed test. The last line is always
 * `tests: N passed, N failed`, and the exit code says the same.
 */
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { checkHouse } from './house-rules.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const counts = join(root, 'test/.counts');
const PROJECTS = ['core', 'core/worker', 'components', 'site', 'test'];

/** @returns {Promise<boolean>} whether the program ended well; what it says is shown */
function run(program, ...args) {
  return new Promise((resolve) => {
    const file = program.startsWith('.') ? join(root, program) : join(root, 'node_modules', program);
    const child = spawn(process.execPath, [file, ...args], { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] });
    child.on('error', (error) => {
      console.error(`${program} could not be run: ${error.message}`);
      resolve(false);
    });
    child.on('exit', (code) => resolve(code === 0));
  });
}

const one = (passed) => ({ passed: passed ? 1 : 0, failed: passed ? 0 : 1 });
const sum = (results) =>
  results.reduce((a, b) => ({ passed: a.passed + b.passed, failed: a.failed + b.failed }), { passed: 0, failed: 0 });

/** Runs a test runner that writes its counts into a file; no file, or a bad end without a failed test, is one failure. */
async function counted(name, read, program, ...args) {
  const file = join(counts, `${name}.json`);
  rmSync(file, { force: true });
  const ended = await run(program, ...args);
  let result;
  try {
    result = read(JSON.parse(readFileSync(file, 'utf8')));
  } catch (error) {
    console.error(`The tier "${name}" left no count: ${error.message}`);
    return { passed: 0, failed: 1 };
  }
  // An error outside any test, or nothing tested at all, is no success.
  if ((!ended && result.failed === 0) || result.passed + result.failed === 0) result.failed++;
  return result;
}

function vitest(name) {
  const read = ({ numPassedTests, numFailedTests, testResults }) => {
    // A file that does not load has no tests that could fail.
    const unloaded = testResults.filter(
      ({ status, assertionResults }) => status === 'failed' && !assertionResults.length,
    );
    return { passed: numPassedTests, failed: numFailedTests + unloaded.length };
  };
  const file = join(counts, `${name}.json`);
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
  return counted(name, read, 'vitest/vitest.mjs', 'run', '--config', `test/vitest.${name}.config.ts`, ...reporters);
}

const vite = (mode) => run('vite/bin/vite.js', 'build', '--mode', mode, '--logLevel', 'warn');

/** Builds everything that is delivered; the pages tier tests what was built. The site has the standalone file in it. */
async function buildAll() {
  const site = async () => (await vite('standalone')) && vite('site');
  const built = await Promise.all([site(), vite('cdn'), run('./components/build-npm.mjs')]);
  return built.every(Boolean);
}

const tiers = {
  async types() {
    const check = async (project) => {
      const passed = await run('typescript/bin/tsc', '-p', project);
      if (!passed) console.error(`✗ tsc -p ${project}`);
      return one(passed);
    };
    return sum(await Promise.all(PROJECTS.map(check)));
  },
  async lint() {
    const biome = await run('@biomejs/biome/bin/biome', 'ci', '--colors=off');
    const house = checkHouse();
    for (const { rule, findings } of house) {
      if (findings.length) console.error(`✗ ${rule}`);
      for (const { path, line, why } of findings) console.error(`    ${path}:${line}  ${why}`);
    }
    return sum([one(biome), ...house.map(({ findings }) => one(findings.length === 0))]);
  },
  core: () => vitest('core'),
  components: () =>
    counted('components', (result) => result, '@web/test-runner/dist/bin.js', '--config', 'test/wtr.config.mjs'),
  async pages() {
    if (await buildAll()) return vitest('pages');
    console.error('The build failed: there are no pages to test.');
    return { passed: 0, failed: 1 };
  },
};

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !Object.hasOwn(tiers, name));
if (unknown.length) {
  console.error(`There is no tier ${unknown.join(', ')}: ${Object.keys(tiers).join(', ')}.`);
  process.exit(2);
}

mkdirSync(counts, { recursive: true });
const results = [];
const lines = [];
async function tier(name, work) {
  const from = performance.now();
  console.log(`\n── ${name} ──`);
  let result;
  try {
    result = await work();
  } catch (error) {
    console.error(error);
    result = { passed: 0, failed: 1 };
  }
  results.push(result);
  const seconds = ((performance.now() - from) / 1000).toFixed(1);
  lines.push(`${name.padEnd(11)}${result.passed} passed, ${result.failed} failed, ${seconds} s`);
  console.log(lines.at(-1));
}

// Every tier needs the core's layers and the manifest, and the tests layers of their own; that they can be built is worth a line only
// when they cannot.
const prepared = [
  'core/worker/build-layers.mjs',
  'components/manifest/build-manifest.mjs',
  'test/components/worker/build-fixture.mjs',
];
for (const program of prepared) {
  if (!(await run(`./${program}`))) await tier(program, () => one(false));
}
for (const name of asked.length ? asked : Object.keys(tiers)) await tier(name, tiers[name]);

const { passed, failed } = sum(results);
process.exitCode = failed ? 1 : 0;
console.log(`\n${lines.join('\n')}\ntests: ${passed} passed, ${failed} failed`);
