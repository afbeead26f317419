/**
 * Builds what is published on npm into dist/npm: the sources through tsc, one module each, with types; and the manifest of the
 * elements. The layers of the core must have been built before (npm run prepare-core).
 */
import { spawnSync } from 'node:child_process';
import { rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { manifest } from './manifest/build-manifest.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
function run(program, ...args) {
  const file = fileURLToPath(new URL(`../node_modules/${program}`, import.meta.url));
  const { status } = spawnSync(process.execPath, [file, ...args], {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  if (status !== 0) process.exit(status ?? 1);
}

rmSync(`${root}dist/npm`, { recursive: true, force: true });
run('typescript/bin/tsc', '-p', 'components/tsconfig.npm.json');
writeFileSync(`${root}dist/npm/custom-elements.json`, `${JSON.stringify(await manifest(), null, 2)}\n`);
