/**
 * The type files for frameworks that go with the npm package (components/build-npm.mjs), all of them from the manifest.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describedElements } from './described-elements.mjs';
import { react18Types, react19Types } from './react-types.mjs';
import { svelteTypes } from './svelte-types.mjs';
import { vueTypes } from './vue-types.mjs';

/** By the name of the subpath: `bumpline/react`. */
const FRAMEWORKS = { react: react19Types, 'react-18': react18Types, svelte: svelteTypes, vue: vueTypes };

/**
 * @param {object} manifest
 * @returns {Record<string, string>} the text of each type file, by the framework's name
 */
export function frameworkTypes(manifest) {
  const elements = describedElements(manifest);
  return Object.fromEntries(Object.entries(FRAMEWORKS).map(([name, textOf]) => [name, textOf(elements)]));
}

/** Each with an empty module beside it, for who imports it without saying that it is types. */
export function writeFrameworkTypes(manifest, folder) {
  mkdirSync(folder, { recursive: true });
  for (const [name, text] of Object.entries(frameworkTypes(manifest))) {
    writeFileSync(join(folder, `${name}.d.ts`), text);
    writeFileSync(join(folder, `${name}.js`), 'export {};\n');
  }
}
