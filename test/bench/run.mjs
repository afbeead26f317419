import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

/* `node test/bench/run.mjs`: bundles the bench (Node 20 does not run TypeScript) and starts it with the collector at hand. */
const folder = mkdtempSync(join(tmpdir(), 'bumpline-bench-'));
const outfile = join(folder, 'speed.mjs');
try {
  await build({
    entryPoints: [fileURLToPath(new URL('speed.mjs', import.meta.url))],
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
  process.exitCode = status ?? 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
