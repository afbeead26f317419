import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { summary, time } from './in-turn.mjs';

/*
 * `node test/bench/abba.mjs [revision]`: is the working tree slower than another commit (default: the one before)? Both cores run in
 * one process, in turn. Printed, never asserted. Asked about the commit that is checked out, it tells what the method itself makes
 * of two that are the same.
 */
const ENOUGH_MS = 500;
const WARM_MS = 150;
/** Long for the clock, short for what else the machine does. */
const BLOCK_MS = 1;
const FEWEST_QUADS = 15;
/** Answers that differ by more are not the same: the order of sums may differ, nothing else. */
const ALIKE = 1e-9;

const here = fileURLToPath(new URL('../..', import.meta.url));
// With a young heap so small that every run is interrupted, what is timed is the collector.
if (globalThis.gc) await compare(process.argv[2] ?? 'HEAD~1');
else {
  const flags = ['--expose-gc', '--min-semi-space-size=64', '--max-semi-space-size=64'];
  const { status } = spawnSync(process.execPath, [...flags, ...process.argv.slice(1)], { stdio: 'inherit' });
  process.exitCode = status ?? 1;
}

async function compare(revision) {
  const git = (...args) => execFileSync('git', args, { cwd: here, maxBuffer: 2 ** 30 });
  const commit = `${git('rev-parse', '--verify', '--end-of-options', `${revision}^{commit}`)}`.trim();
  const folder = mkdtempSync(join(tmpdir(), 'bumpline-abba-'));
  try {
    const before = join(folder, 'before');
    mkdirSync(before);
    execFileSync('tar', ['-x', '-C', before], { input: git('archive', commit, 'core', 'package.json') });
    symlinkSync(join(here, 'node_modules'), join(before, 'node_modules'), 'dir');
    const [was, now] = [await bundled(folder, 'was', before), await bundled(folder, 'now', here)];
    // The same code is slower by some per cent where it came later into the process: each side is there twice, first and last.
    const sides = [];
    for (const [i, file] of [now, was, was, now].entries()) sides.push((await import(`${file}?${i}`)).tasks);
    console.log(`Node ${process.version}; before: ${`${git('log', '-1', '--format=%h %s', commit)}`.trim()}`);
    line('', 'before ÷ now', '(quartiles of quads)', 'ms before', 'ms now', 'quads');
    sides[0].forEach((_, i) => {
      tell(sides.map((tasks) => tasks[i]));
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** @returns {Promise<string>} URL of a module with the tasks, and the core in a folder that they ask; with nothing shared between two */
async function bundled(folder, name, top) {
  const outfile = join(folder, `${name}.mjs`);
  await build({
    stdin: {
      contents: `import * as core from ${JSON.stringify(join(top, 'core/index.ts'))};
        import { tasksOf } from ${JSON.stringify(join(here, 'test/bench/core-tasks.mjs'))};
        export const tasks = tasksOf(core);`,
      resolveDir: top,
    },
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    logLevel: 'warning',
  });
  return pathToFileURL(outfile).href;
}

/** @param sides one task, as now, before, before, now */
function tell(sides) {
  const [{ name, lacks }, was] = sides;
  if (was.lacks.length > 0) return line(name, `left out: ${was.lacks.join(', ')} is not there before`);
  if (lacks.length > 0) return line(name, `left out: ${lacks.join(', ')} is no longer there`);
  const tasks = sides.map(({ make }) => make());
  const [mine, theirs] = tasks.map((task) => task(0));
  const runMs = Math.min(...tasks.map(warmed));
  const runs = Math.ceil(BLOCK_MS / runMs);
  const quads = Math.max(FEWEST_QUADS, Math.ceil(ENOUGH_MS / (2 * runs * runMs)));
  gc();
  const timed = Array.from({ length: quads }, (_, quad) =>
    tasks.map((task) =>
      time(() => {
        // The same questions on all sides, none of which was asked while they were warmed.
        for (let i = 0; i < runs; i++) task(1e6 + quad * runs + i);
      }),
    ),
  );
  const { a, b, ratio, quartiles } = summary(timed);
  const ms = (value) => (value / runs).toPrecision(3);
  line(name, ratio.toFixed(3), `(${quartiles.map((one) => one.toFixed(3)).join(' to ')})`, ms(b), ms(a), `${quads}`);
  if (Math.abs(mine - theirs) > ALIKE * Math.abs(theirs))
    console.log(`  Not the same answer: ${theirs} before, ${mine} now.`);
}

/** @returns {number} ms of a run, when the engine has it compiled */
function warmed(task) {
  const start = performance.now();
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; performance.now() - start < WARM_MS || i < 4; i++)
    least = Math.min(
      least,
      time(() => task(i)),
    );
  return least;
}

function line(name, ...cells) {
  console.log(name.padEnd(42), ...cells.map((cell, i) => cell.padEnd([14, 22, 10, 10, 6][i])));
}
