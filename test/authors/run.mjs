/**
 * The packed package in other people's projects: `npm run test:authors [-- react react-18 svelte vue --as-built]`, all of them when
 * none is named. Each project stands in a folder here, without the package; it is copied elsewhere, installed by its lock file, given the
 * package, checked for types, built, and opened in a browser. Needs the package registry. `--as-built` packs what is in dist/ now.
 * The last line is `tests: N passed, N failed`, and the exit code says the same.
 */
import { spawn } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { browser as findBrowser } from '../browser.mjs';
import { openedChecks } from './opened-checks.mjs';
import { typeChecks } from './type-checks.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const here = fileURLToPath(new URL('.', import.meta.url));
const FRAMEWORKS = readdirSync(here, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);

const asked = process.argv.slice(2).filter((word) => word !== '--as-built');
const isAsBuilt = process.argv.includes('--as-built');
const unknown = asked.filter((name) => !FRAMEWORKS.includes(name));
if (unknown.length) {
  console.error(`There is no project ${unknown.join(', ')}: ${FRAMEWORKS.join(', ')}.`);
  process.exit(2);
}

let running;
const folder = mkdtempSync(join(tmpdir(), 'bumpline-authors-'));
process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
// Whoever ends this ends what it runs.
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
  process.once(signal, () => {
    running?.kill(signal);
    process.exit(1);
  });
}

/** @returns {Promise<{ ended: boolean, said: string }>} whether npm ended well, and all that it and what it ran said */
const npm = (cwd, ...args) =>
  new Promise((resolve) => {
    const file = process.env.npm_execpath;
    const child = file ? spawn(process.execPath, [file, ...args], { cwd }) : spawn('npm', args, { cwd });
    running = child;
    let said = '';
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (text) => (said += text));
    child.on('error', (error) => resolve({ ended: false, said: error.message }));
    child.on('close', (code) => resolve({ ended: code === 0, said }));
  });

let [passed, failed] = [0, 0];
/** @param {string[]} wrong what is not as it must be */
function tell(name, wrong) {
  if (wrong.length) failed++;
  else passed++;
  console.log(`${wrong.length ? '✗' : '✓'} ${name}`);
  for (const line of wrong) console.log(line.replace(/^/gm, '    '));
  return wrong.length === 0;
}
const tellRun = (name, { ended, said }) => tell(name, ended ? [] : [said.trim()]);

const QUIET = ['--no-audit', '--no-fund', '--loglevel=error'];

/** @param {string} packed @param {import('playwright-core').Browser} browser */
async function tryIn(framework, packed, browser) {
  const project = join(folder, framework);
  cpSync(join(here, framework), project, { recursive: true, filter: (file) => !/node_modules|dist$/.test(file) });
  if (!tellRun(`${framework}: what the lock file says is installed`, await npm(project, 'ci', ...QUIET))) return;
  const lock = readFileSync(join(project, 'package-lock.json'), 'utf8');
  const install = await npm(project, 'install', '--no-save', ...QUIET, packed);
  if (!tellRun(`${framework}: the package is installed beside it`, install)) return;
  const isKept = readFileSync(join(project, 'package-lock.json'), 'utf8') === lock;
  tell(`${framework}: the lock file knows nothing of the package`, isKept ? [] : ['It was changed.']);
  for (const { name, wrong } of typeChecks(project, await npm(project, 'run', 'check'))) {
    tell(`${framework}: ${name}`, wrong);
  }
  if (!tellRun(`${framework}: the project is built`, await npm(project, 'run', 'build'))) return;
  for (const { name, wrong } of await openedChecks(join(project, 'dist'), browser)) {
    tell(`${framework}: ${name}`, wrong);
  }
}

const pack = await npm(root, 'pack', ...(isAsBuilt ? ['--ignore-scripts'] : []), '--pack-destination', folder);
const file = readdirSync(folder).find((name) => name.endsWith('.tgz'));
if (tellRun('the package is built and packed', { ended: pack.ended && file !== undefined, said: pack.said })) {
  const browser = await chromium.launch(await findBrowser());
  for (const framework of asked.length ? asked : FRAMEWORKS) {
    try {
      await tryIn(framework, join(folder, file), browser);
    } catch (error) {
      tell(`${framework}: it is tried to the end`, [String(error.stack ?? error)]);
    }
  }
  await browser.close();
}
process.exitCode = failed ? 1 : 0;
console.log(`\ntests: ${passed} passed, ${failed} failed`);
