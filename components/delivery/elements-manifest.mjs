import { fileURLToPath } from 'node:url';
import { cli } from '@custom-elements-manifest/analyzer/cli.js';

const ARGUMENTS = ['analyze', '--config', 'components/custom-elements.config.mjs', '--quiet'];

/**
 * The custom elements manifest, made from the sources.
 *
 * @param {{ isWritten: boolean }} options whether it is written into dist/npm as well
 * @returns {Promise<{ modules: { path: string, declarations: object[] }[] }>}
 */
export const elementsManifest = ({ isWritten }) =>
  cli({ argv: ARGUMENTS, cwd: fileURLToPath(new URL('../..', import.meta.url)), noWrite: !isWritten });
