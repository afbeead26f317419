import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { createServer, type ViteDevServer } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { reservedHeight, reservedHeights } from '../../components/delivery/reserved-heights.mjs';
import { listedPages } from '../../site/partials/listed.js';
import { wholePage } from '../../site/partials/pages.js';
import { siteRoom } from '../../site/partials/reserved-heights.js';
import { inside, sitePages, page as source, textOf } from './site-source.js';

/* What the pages have in common stands in site/partials and site/pages.json once, and is there in what is built and served. */

const top = fileURLToPath(new URL('../../', import.meta.url));
const built = (path: string) => readFileSync(`${top}dist/site/${path}index.html`, 'utf8');
const rows = listedPages();
const attribute = (html: string, mark: string, name: string) =>
  new RegExp(`<[a-z]+ [^>]*${mark}[^>]*?\\b${name}="([^"]*)"`).exec(html)?.[1];
/** One after the other, white space aside. */
const plain = (markup: string) => markup.replace(/\s+/g, ' ').replace(/> </g, '><').trim();
const parts = (html: string) =>
  [inside(html, 'header'), inside(html, 'main'), inside(html.slice(html.lastIndexOf('<footer')), 'footer')].map(plain);

it('every page below site/ has one row in pages.json, and every row its page', () => {
  const paths = rows.map(({ path }) => `${path}index.html`);
  expect([...paths].sort()).toEqual(sitePages().map(({ path }) => path));
});

it.each(sitePages())('$path closes what it opens, in that order', ({ html }) => {
  const open: string[] = [];
  const left: string[] = [];
  for (const [, end, tag, closed] of html.matchAll(/<(\/?)([a-z][\w-]*)\b[^>]*?(\/?)>/gi)) {
    if (end) {
      if (open.at(-1) === tag) open.pop();
      else left.push(`</${tag}> after <${open.at(-1)}>`);
    } else if (!closed && !/^(br|img|input|hr|meta|link|col|wbr|source)$/.test(tag!)) open.push(tag!);
  }
  expect([...left, ...open]).toEqual([]);
});

it('a page without a row is told what to do', () => {
  expect(() => wholePage('new-article/', '<h1>New</h1>')).toThrow(
    'site/new-article/index.html has no row in site/pages.json',
  );
});

describe.each(rows)('page "$path"', ({ path, title, description, sheet = title }) => {
  const html = built(path);

  it('has none of the common parts in its source', () => {
    const text = source(`${path}index.html`);
    for (const part of [
      /<!doctype/i,
      /<(html|head|body|main|meta|link)\b|<title>/,
      /class="(skip|masthead|title-block)"/,
    ]) {
      expect(text).not.toMatch(part);
    }
    expect(text).not.toContain(description);
    // Heights of elements, three figures and more.
    expect(text).not.toMatch(/min-height:\s*\d{3}/);
  });

  it('is built with its title, its description and its name in the title block', () => {
    expect(textOf(inside(html, 'title'))).toBe(title);
    expect(attribute(html, 'name="description"', 'content')).toBe(description);
    expect(textOf(inside(html, 'dl', 'class="title-block"'))).toContain(sheet);
    expect(html.match(/<h1\b/g)).toHaveLength(1);
    expect(html).not.toMatch(/\{\{|%RESERVED|%VERSION/);
  });

  it('is built with all named pages in the navigation, in the order of pages.json, itself marked, the others in the title block', () => {
    const masthead = inside(html, 'header', 'class="masthead"');
    const links = [...masthead.matchAll(/<a\b[^>]*href="([^"]*)"([^>]*)>/g)];
    const root = path === '' ? './' : '../'.repeat(path.split('/').length - 1);
    const [home, ...others] = rows;
    const named = others.filter(({ link }) => link !== undefined);
    expect(links.map(([, href]) => href)).toEqual([root, ...named.map((row) => `${root}${row.path}`)]);
    const current = links.flatMap(([, , more], i) =>
      more!.includes('aria-current="page"') ? [home, ...named][i]!.path : [],
    );
    expect(current).toEqual(path === '' || named.some((row) => row.path === path) ? [path] : []);
    const block = inside(html.slice(html.lastIndexOf('<footer')), 'footer');
    // The page for authors leads to those about the elements: reference.test.ts.
    for (const row of others.filter(({ link, kind }) => link === undefined && kind !== 'reference'))
      expect(block).toContain(`href="${root}${row.path}"`);
  });
});

describe('the dev server', () => {
  let server: ViteDevServer;
  beforeAll(async () => {
    const options = { middlewareMode: true, watch: null, ws: false } as const;
    server = await createServer({
      configFile: `${top}vite.config.ts`,
      mode: 'site',
      logLevel: 'error',
      server: options,
      optimizeDeps: { noDiscovery: true },
    });
  });
  afterAll(() => server.close());

  it.each(rows)('serves page "$path" as it is built', async ({ path }) => {
    const served = await server.transformIndexHtml(`/${path}index.html`, source(`${path}index.html`));
    expect(parts(served)).toEqual(parts(built(path)));
    expect(textOf(inside(served, 'title'))).toBe(textOf(inside(built(path), 'title')));
  });

  it('serves the style sheet with the heights of every element', async () => {
    const { code } = (await server.transformRequest('/site.css?direct'))!;
    expect(code).toContain(siteRoom());
  });
});

describe('the height kept for each element', () => {
  const styles = readdirSync(`${top}dist/site/assets`)
    .filter((file) => file.endsWith('.css'))
    .map((file) => readFileSync(`${top}dist/site/assets/${file}`, 'utf8'))
    .join('\n');

  it.each(Object.keys(reservedHeights().heights))('of %s is in the built style sheet', (tag) => {
    const [first] = reservedHeights().heights[tag]!['']!;
    expect(styles).toMatch(new RegExp(`${tag}::?before\\{height:calc\\(${Number((first! + 2.75).toFixed(4))}em`));
  });

  it('stands nowhere in site.css itself', () => {
    expect(readFileSync(`${top}site/site.css`, 'utf8')).not.toMatch(
      /bumpline-(?!car|sheet)[a-z]+\b|min-height:\s*\d{3}/,
    );
  });

  it('is that of the style sheet beside the script, in the README and on the authors’ page', () => {
    const readme = readFileSync(`${top}README.md`, 'utf8');
    const authors = built('put-it-in-your-article/');
    for (const text of [readme, textOf(inside(authors, 'pre', 'id="snippet-table"'))])
      expect(text).toMatch(/<link rel="stylesheet" href="https:\/\/your-[a-z.]+\/bumpline\.css"/);
    const said = textOf(inside(authors.slice(authors.indexOf('id="height"')), 'p'));
    for (const width of [328, 640, 760])
      expect(said).toContain(`${reservedHeight('bumpline-lowering', width)}\u00a0px`);
  });
});
