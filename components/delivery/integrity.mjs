/** Part of the builds (vite.config.ts): the hashes by which whoever takes a file knows that it is the one that was built. */
import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';

/** @param {string} code @param {string} [hash] */
export const integrityOf = (code, hash = 'sha384') => `${hash}-${createHash(hash).update(code).digest('base64')}`;

/**
 * Prints the hash of what authors name in a script tag, and writes it beside the files, where they, the site's build and the tests find
 * it: `integrity.json`, with the version and, by name, the hashes.
 *
 * @param {string} version
 * @param {Record<string, string>} [beside] further files by name, to be taken likewise
 * @returns {import('vite').Plugin}
 */
export const announceIntegrity = (version, beside = {}) => ({
  name: 'announce-integrity',
  writeBundle({ dir }, bundle) {
    const { fileName, code } = Object.values(bundle).find(({ isEntry }) => isEntry);
    const taken = Object.entries({ [fileName]: code, ...beside });
    const files = Object.fromEntries(taken.map(([name, text]) => [name, integrityOf(text)]));
    for (const [name, text] of Object.entries(beside)) writeFileSync(resolve(dir, name), text);
    writeFileSync(resolve(dir, 'integrity.json'), `${JSON.stringify({ version, files }, null, 1)}\n`);
    for (const [name, integrity] of Object.entries(files)) console.log(`${name}  integrity="${integrity}"`);
  },
});

/** @returns {import('vite').Plugin} that fails where what shall be one file is several */
export const oneFile = () => ({
  name: 'one-file',
  generateBundle(_options, bundle) {
    const files = Object.keys(bundle);
    if (files.length !== 1) throw new Error(`Standalone must be one file, but is: ${files.join(', ')}`);
  },
});
