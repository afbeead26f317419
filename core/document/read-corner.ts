import { buildLinkage } from '../linkage/build-linkage.js';
import type { Corner } from '../linkage/corner.js';
import { checkCorner } from './check-corner.js';

/**
 * Reads a corner from anything: parsed JSON, a form, a table.
 *
 * @throws InputError with every problem found, each with its path, never another error.
 */
export function readCorner(data: unknown): Corner {
  const corner = checkCorner(data);
  buildLinkage(corner); // throws when the links do not close
  return corner;
}
