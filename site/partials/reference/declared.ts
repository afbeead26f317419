import { MANIFEST } from '../../../components/manifest/manifest.generated.js';
import type { ElementDeclaration } from '../../../components/manifest/manifest.js';

/** What the manifest says of an element. @throws {Error} where it has none of that tag */
export function declared(tag: string): ElementDeclaration {
  const found = MANIFEST.modules.flatMap(({ declarations }) => declarations).find(({ tagName }) => tagName === tag);
  if (!found) throw new Error(`The manifest has no <${tag}>: node components/manifest/build-manifest.mjs makes it.`);
  return found;
}
