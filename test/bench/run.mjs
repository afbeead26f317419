import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

/*
 * `node test/bench/run.mjs [name …]`: bundles the benches (Node 20 does not run TypeScript) and starts them with the collector at
 * hand. Without names: all of them.
 */
const named = process.argv.slice(2);
const folder = mkdtempSync(join(tmpdir(), 'bumpline-bench-'));
try {
  for (const name of named.length > 0
    ? named
    : [
        'speed',
        'properties',
        'driveway',
        'fit-speed',
        'fit',
        'data-warnings',
        'sets',
        'gaps',
        'between-samples',
        'gap-coverage',
        'break-even',
        'break-even-coverage',
        'lowered-joint',
        'shim',
        'geometry',
        'toe',
        'cornering',
        'static-camber',
        'least-cost',
        'learn',
      ])
    await start(name);
} finally {
  rmSync(folder, { recursive: true, force: true });
}

async function start(name) {
  const outfile = join(folder, `${name}.mjs`);
  await build({
    entryPoints: [fileURLToPath(new URL(`${name}.mjs`, import.meta.url))],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    logLevel: 'warning',
  });
  const { status } = spawnSync(
    process.execPath,
    ['--expose-gc', '--min-semi-space-size=64', '--max-semi-space-size=64', outfile],
    { stdio: 'inherit' },
  );
  if (status !== 0) process.exitCode = status ?? 1;
}
