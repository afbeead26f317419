import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { minify } from 'terser';
import { type Plugin, transformWithOxc } from 'vite';
import { type Framed, framed } from './framed.js';
import { listedPages } from './listed.js';
import { escaped, filled } from './partial.js';
import { canonical } from './published.js';

const site = fileURLToPath(new URL('../', import.meta.url));
const SCRIPT = `${site}frame/in-frame.ts`;

/** The files that the build takes for pages, though there are none: each is made of frame.html. */
export const frameFiles = (): string[] => framed().map(({ path }) => `${site}${path}index.html`);

async function inFrameScript(): Promise<string> {
  const { code } = await transformWithOxc(readFileSync(SCRIPT, 'utf8'), SCRIPT);
  return (await minify(code, { toplevel: true })).code!;
}

/** @param address that the site will have, where it is known */
function framePage({ tag, path, article }: Framed, script: string, address: string | undefined): string {
  const page = listedPages().find((one) => one.path === article);
  if (!page)
    throw new Error(`components/elements.json: ${tag} has the article ${article}, which is not in site/pages.json.`);
  return filled('frame', {
    tag,
    article,
    script,
    root: '../'.repeat(path.split('/').length - 1),
    title: escaped(page.title),
    // The article is what is to be found; this page is part of it.
    published: canonical(address, article),
  });
}

/** A page for each element, which holds that alone: what stands in somebody else's frame. */
export function frames(address: string | undefined): Plugin {
  const all = new Map(framed().map((one) => [`${site}${one.path}index.html`, one]));
  return {
    name: 'frames',
    enforce: 'pre',
    resolveId: (id) => (all.has(id) ? id : undefined),
    async load(id) {
      const frame = all.get(id);
      return frame && framePage(frame, await inFrameScript(), address);
    },
  };
}
