/**
 * Builds what is published on npm into dist/npm: the sources through tsc, one module each, with types; the manifest of the
 * elements; and from it their types in frameworks. The layers of the core must have been built before (npm run prepare-core).
 */
import { spawnSync } from 'node:child_process';
import { rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { writeFrameworkTypes } from './delivery/framework-types.mjs';
import { manifest } from './manifest/build-manifest.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));

rmSync(`${root}dist/npm`, { recursive: true, force: true });
const { status } = spawnSync(
  process.execPath,
  [`${root}node_modules/typescript/bin/tsc`, '-p', 'components/tsconfig.npm.json'],
  { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] },
);
if (status !== 0) process.exit(status ?? 1);
const made = await manifest();
writeFileSync(`${root}dist/npm/custom-elements.json`, `${JSON.stringify(made, null, 2)}\n`);
writeFrameworkTypes(made, `${root}dist/npm/frameworks`);
