import { readFileSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

/** Where the bundled tests lie, each at the place that it has below test/components. */
export const BUNDLES = fileURLToPath(new URL('../.bundled/', import.meta.url));

/**
 * Bundles browser tests, with what they share in files of its own: a browser that fetches some 400 modules for each of 55 files waits for
 * most of its time. A test that imports by a name it makes when it runs is left as it is.
 * @param {string[]} files
 * @returns {Promise<string[]>} what to run, in the order of the files
 */
export async function bundle(files) {
  const isNamedLate = (file) => /\bimport\((?!['"])/.test(readFileSync(file, 'utf8'));
  const from = fileURLToPath(new URL('.', import.meta.url));
  await rm(BUNDLES, { recursive: true, force: true });
  await build({
    entryPoints: files.filter((file) => !isNamedLate(file)),
    outdir: BUNDLES,
    outbase: from,
    bundle: true,
    splitting: true,
    format: 'esm',
    target: 'es2022',
    sourcemap: 'inline',
    conditions: ['production'],
    // Imported for what they do, which package.json says that its modules do not.
    ignoreAnnotations: true,
    tsconfig: fileURLToPath(new URL('../../components/tsconfig.json', import.meta.url)),
    // The runner serves it.
    external: ['/__web-dev-server__web-socket.js'],
    logLevel: 'warning',
  });
  return files.map((file) =>
    isNamedLate(file) ? file : `${BUNDLES}${file.slice(from.length).replace(/\.ts$/, '.js')}`,
  );
}
