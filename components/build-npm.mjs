/**
 * Builds what is published on npm into dist/npm: the sources through tsc, one module each, with types; the manifest of the
 * elements; and from it their types in frameworks. The layers of the core must have been built before (npm run prepare-core).
 */
import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { elementsManifest } from './delivery/elements-manifest.mjs';
import { writeFrameworkTypes } from './delivery/framework-types.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));

rmSync(`${root}dist/npm`, { recursive: true, force: true });
const { status } = spawnSync(
  process.execPath,
  [`${root}node_modules/typescript/bin/tsc`, '-p', 'components/tsconfig.npm.json'],
  { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] },
);
if (status !== 0) process.exit(status ?? 1);
writeFrameworkTypes(await elementsManifest({ isWritten: true }), `${root}dist/npm/frameworks`);
