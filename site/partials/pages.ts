import { dirname, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { withAuthorPage } from './author-page.js';
import { withContents } from './contents.js';
import { withFirstAnswers } from './first-answers.js';
import { framed } from './framed.js';
import { listedPages } from './listed.js';
import { escaped, filled } from './partial.js';
import { publishedHead } from './published.js';
import { references } from './reference/list.js';
import { withReferences } from './reference/listed-here.js';
import { referencePage } from './reference/page.js';
import { withElements, withReservedHeights } from './reserved-heights.js';
import { withWhoseFigures } from './whose-figures.js';

/*
 * A page's index.html below site/ holds what stands in its <main>, and nothing else; what pages have in common stands in the
 * partials beside this file, and what a page is called in its row of site/pages.json, whose order is that of the navigation. The pages
 * about the elements have no files: reference/ makes them of the manifest.
 */

const KINDS = {
  home: { class: 'home', skip: 'the questions', carOf: 'Car', hasElements: false, onPhone: true },
  article: { class: 'article', skip: 'the article', carOf: 'Car of the text', hasElements: true, onPhone: true },
  guide: { class: 'article', skip: 'the instructions', carOf: 'Car', hasElements: true, onPhone: false },
  reading: { class: 'article', skip: 'the text', carOf: 'Car of the text', hasElements: false, onPhone: false },
  reference: { class: 'article', skip: 'the reference', carOf: 'Car', hasElements: true, onPhone: false },
  card: { class: 'article card', skip: 'the card', carOf: 'Car', hasElements: false, onPhone: false },
} as const;

const site = dirname(dirname(fileURLToPath(import.meta.url)));

/**
 * @param article what stands in site/<path>index.html
 * @param address that the site will have, where it is known
 * @returns the whole page
 * @throws {Error} where site/pages.json has no row of the path
 */
export function wholePage(path: string, article: string, address?: string): string {
  const pages = listedPages();
  const page = pages.find((one) => one.path === path);
  if (!page) throw new Error(`site/${path}index.html has no row in site/pages.json: add { "path": "${path}", … }.`);
  const kind = KINDS[page.kind];
  const root = path === '' ? './' : '../'.repeat(path.split('/').length - 1);
  const links = pages.flatMap(({ path: to, link, kind: of, fromArticle }) => {
    if (link === undefined) return [];
    const current = to === path ? ' aria-current="page"' : '';
    const isOnPhone = KINDS[of].onPhone && !fromArticle;
    return `<li${isOnPhone ? '' : ' class="desk"'}><a href="${root}${to}"${current}>${escaped(link)}</a></li>`;
  });
  const said = withReservedHeights(withFirstAnswers(withWhoseFigures(withContents(article))));
  const values = {
    root,
    class: kind.class,
    skip: kind.skip,
    title: escaped(page.title),
    description: escaped(page.description),
    published: publishedHead(address, page, page.kind === 'article' ? article : undefined),
    script: `<script type="module" src="${root}${page.script ?? (kind.hasElements ? 'site' : 'home')}.ts"></script>`,
    current: path === '' ? ' aria-current="page"' : '',
    links: links.join('\n'),
    sheet: escaped(page.sheet ?? page.title),
    units: escaped(page.units ?? 'mm, degrees'),
    signsBy: page.signs ? 'Signs' : 'Signs (ISO 8855)',
    signs: escaped(page.signs ?? 'bump +, top out +, toe-in +'),
    carOf: kind.carOf,
    article: withAuthorPage(withReferences(said, root), root),
  };
  const parts = ['head', 'masthead', 'footer'].map((name) => [name, filled(name, values)]);
  return filled('page', { ...values, ...Object.fromEntries(parts) });
}

/** A page's path below site/, by its file. */
const pathOf = (file: string): string =>
  relative(site, file)
    .replaceAll('\\', '/')
    .replace(/index\.html$/, '');

/** By the file that it would have: pages that are made, and not written. */
const made = new Map(references.map(({ tag, path }) => [`${site}/${path}index.html`, tag]));

/** The files that the build takes for pages of the site. */
export const pageFiles = (): string[] => listedPages().map(({ path }) => `${site}/${path}index.html`);

/** Puts every page together, as it is built and as the dev server serves it, and the heights of elements into site.css. */
export function pages(address: string | undefined): Plugin {
  return {
    name: 'pages',
    enforce: 'pre',
    resolveId: (id) => (made.has(id) ? id : undefined),
    load: (id) => (made.has(id) ? referencePage(made.get(id)!) : undefined),
    transformIndexHtml: {
      order: 'pre',
      handler: (article, { filename }) => {
        const path = pathOf(filename);
        // Whole as it is: frames.ts.
        return framed().some((frame) => frame.path === path) ? article : wholePage(path, article, address);
      },
    },
    transform: (code, id) =>
      id.replace(/\?.*$/, '') === `${site}/site.css` ? { code: withElements(code), map: null } : undefined,
  };
}
