import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';
import { listedPages } from './listed.js';
import { oEmbed, oEmbedPath } from './published.js';

/** What authors take from the site: text of the files, and their hashes. */
export interface Taken {
  version: string;
  /** The element in one file. */
  standalone: string;
  /** What gives frames their height. */
  frames: string;
  /** What keeps the room of elements. */
  styles: string;
  integrityOf(code: string): string;
}

/**
 * Puts what authors take beside the pages that speak of it, fills its version and hashes in there, and describes each article for
 * programs that show its element elsewhere.
 *
 * @param address that the site will have; without it nothing is described
 */
export function embedFiles(
  { version, standalone, frames, styles, integrityOf }: Taken,
  address: string | undefined,
): Plugin {
  const filled: Record<string, string> = {
    VERSION: version,
    STANDALONE_INTEGRITY: integrityOf(standalone),
    FRAMES_INTEGRITY: integrityOf(frames),
    STYLES_INTEGRITY: integrityOf(styles),
  };
  const files: Record<string, string> = {
    'embed/bumpline-standalone.js': standalone,
    [`embed/bumpline-${version}.js`]: standalone,
    'embed/bumpline-frames.js': frames,
    'embed/bumpline.css': styles,
    // For sandboxed frames: no module, and so with its names to itself.
    'embed/bumpline-plain.js': `(()=>{"use strict";${standalone}\n})();\n`,
  };
  return {
    name: 'embed-files',
    transformIndexHtml: {
      order: 'pre',
      handler: (html) => html.replace(/%([A-Z_]+)%/g, (found, name: string) => filled[name] ?? found),
    },
    generateBundle() {
      for (const [fileName, source] of Object.entries(files)) this.emitFile({ type: 'asset', fileName, source });
      for (const { path, title } of address ? listedPages().filter(({ kind }) => kind === 'article') : []) {
        const article = readFileSync(new URL(`../${path}index.html`, import.meta.url), 'utf8');
        const described = oEmbed(address!, title, article);
        const source = `${JSON.stringify(described, null, 1)}\n`;
        if (described) this.emitFile({ type: 'asset', fileName: oEmbedPath(path), source });
      }
    },
  };
}
