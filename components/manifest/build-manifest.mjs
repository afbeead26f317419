/**
 * Analyses the elements and writes what there is to know of them as a module, for the pages and the tests:
 * `node components/manifest/build-manifest.mjs`. Where no source has changed since, nothing is done.
 */
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { cli } from '@custom-elements-manifest/analyzer/cli.js';

const top = fileURLToPath(new URL('../../', import.meta.url));
const file = `${top}components/manifest/manifest.generated.ts`;
const FROM = 'export const MANIFEST: Manifest = ';

/** Of all that the manifest is made from. */
function stampNow() {
  const hash = createHash('sha256');
  for (const folder of ['core', 'components']) {
    const names = readdirSync(top + folder, { recursive: true, encoding: 'utf8' });
    for (const name of names.filter((one) => /(?<!\.generated)\.(?:ts|mjs|json)$/.test(one)).sort())
      hash.update(`${name}\n`).update(readFileSync(`${top}${folder}/${name}`));
  }
  return hash.digest('hex').slice(0, 16);
}

/** @returns the manifest, as it was built or as it is built now */
export async function manifest() {
  const stamp = `// ${stampNow()}`;
  const had = existsSync(file) ? readFileSync(file, 'utf8') : '';
  if (had.startsWith(stamp)) return JSON.parse(had.slice(had.indexOf(FROM) + FROM.length).replace(/;\s*$/, ''));
  const argv = ['analyze', '--config', 'components/custom-elements.config.mjs', '--quiet'];
  const made = await cli({ argv, cwd: top, noWrite: true });
  const lines = [
    stamp,
    '// @ts-nocheck: written by build-manifest.mjs',
    "import type { Manifest } from './manifest.js';",
    `${FROM}${JSON.stringify(made)};`,
  ];
  writeFileSync(file, `${lines.join('\n')}\n`);
  return made;
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) await manifest();
