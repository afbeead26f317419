import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import MarkdownIt from 'markdown-it';
import { marked } from 'marked';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { askedEngine, type Engine } from '../engines/engines.mjs';
import { serve } from '../serve.mjs';
import { printedSnippets, withFile } from './snippets.js';

/*
 * What an author copies goes through Markdown, into a page of any language and direction. A tag over two lines, or a blank line
 * inside, ends the HTML there (CommonMark 0.31.2, HTML blocks, start condition 7: https://spec.commonmark.org/0.31.2/#html-blocks),
 * and the table ends up outside its element: which then answers for the example's car. In the engine that is asked for.
 */

const snippets = printedSnippets();

it('there are snippets of every element', () => {
  const printed = snippets.map(({ html }) => html).join('\n');
  for (const tag of ['car', 'clearance', 'compare', 'lowering', 'readings'])
    expect(printed).toContain(`<bumpline-${tag}`);
});

it.each(snippets)('$name: every tag is on one line, and no line is blank', ({ html }) => {
  const lines = html.split('\n');
  expect(lines.filter((line) => line.trim() === '')).toEqual([]);
  // What is between tags has no angle brackets: a tag that goes on leaves one open at the end of its line.
  expect(lines.filter((line) => line.lastIndexOf('<') > line.lastIndexOf('>'))).toEqual([]);
});

const LIBRARIES: Record<string, (text: string) => string> = {
  'markdown-it': (text) => new MarkdownIt({ html: true, linkify: true, typographer: true }).render(text),
  marked: (text) => marked.parse(text, { async: false, gfm: true }),
};
const indented = (text: string) => text.replace(/^(?=.)/gm, '   ');
/** As the page for authors says: a blank line above and below; in an item of a list, as far in as its text. */
const PLACES: Record<string, (html: string, i: number) => string> = {
  'between paragraphs': (html) => `It is this _low_ now:\n\n${html}\n\nAnd **this** came of it.`,
  'in a list': (html, i) => `${i + 1}. Look at this:\n\n${indented(html)}\n\n   And at *that*.`,
};
const PAGES = ['lang="en"', 'lang="en_US"', 'lang="en" dir="rtl"', 'lang="ar" dir="rtl"'];

interface Answered {
  tag: string;
  state: string;
  answer: string;
  sentence: string;
  problems: number;
  tables: number;
  outside: number;
}

let engine: Engine;
let site: Awaited<ReturnType<typeof serve>>;
const folder = mkdtempSync(join(tmpdir(), 'bumpline-markdown-'));

beforeAll(async () => {
  const standalone = fileURLToPath(new URL('../../dist/standalone/', import.meta.url));
  [engine, site] = await Promise.all([
    askedEngine(),
    serve({
      folders: { '/': folder, '/standalone/': standalone },
      headers: () => ({ 'Access-Control-Allow-Origin': '*' }),
    }),
  ]);
});
afterAll(async () => {
  await Promise.all([engine?.close(), site?.close()]);
  rmSync(folder, { recursive: true });
});

/** What the elements of a page say, in order. */
async function answers(attributes: string, content: string): Promise<{ errors: string[]; elements: Answered[] }> {
  writeFileSync(
    join(folder, 'page.html'),
    `<!doctype html><html ${attributes}><head><meta charset="utf-8"><title>An article</title>
<script>addEventListener('error', ({ message }) => (globalThis.errors ??= []).push(message));
addEventListener('unhandledrejection', ({ reason }) => (globalThis.errors ??= []).push(String(reason)));</script>
<script type="module" crossorigin src="/standalone/bumpline-standalone.js"></script></head><body>${content}</body></html>`,
  );
  const page = await engine.page({ width: 800, height: 900 });
  try {
    await page.goto(`${site.origin}/page.html`);
    return await page.evaluate(async () => {
      type Sheet = HTMLElement & { settled: Promise<void>; state: string; answer: unknown; problems: unknown[] };
      await customElements.whenDefined('bumpline-car');
      const sheets = [...document.querySelectorAll<Sheet>('body *')].filter(({ localName }) =>
        /^bumpline-(?!car$)/.test(localName),
      );
      for (let i = 0; i < 2; i++) for (const sheet of sheets) await sheet.settled;
      const inAny = (node: Element) => sheets.some((sheet) => sheet.contains(node));
      return {
        errors: (globalThis as { errors?: string[] }).errors ?? [],
        elements: sheets.map((sheet) => ({
          tag: sheet.localName,
          state: sheet.state,
          answer: JSON.stringify(sheet.answer),
          sentence: sheet.shadowRoot!.querySelector('.sentence')!.textContent!.replace(/\s+/g, ' ').trim(),
          problems: sheet.problems.length,
          tables: sheet.querySelectorAll('table').length,
          outside: [...document.querySelectorAll('table')].filter((table) => !inAny(table)).length,
        })),
      };
    });
  } finally {
    await page.done();
  }
}

const asWritten = () => snippets.map(({ html }) => withFile(html, `${site.origin}/standalone/bumpline-standalone.js`));

describe('all snippets on one page', () => {
  let plain: Awaited<ReturnType<typeof answers>>;
  beforeAll(async () => {
    plain = await answers(PAGES[0]!, asWritten().join('\n'));
  });

  it('answer as HTML for what the author gave, without a problem or an error', () => {
    expect(plain.errors).toEqual([]);
    expect(plain.elements.length).toBeGreaterThanOrEqual(snippets.length);
    for (const { tag, state, answer, problems, outside } of plain.elements) {
      expect.soft({ tag, problems, outside }).toEqual({ tag, problems: 0, outside: 0 });
      expect.soft(answer, tag).toMatch(/\d/);
      expect.soft(state, tag).toMatch(/ready|incomplete|example/);
    }
    // An example’s car is that of snippets alone which give no data.
    for (const { tag, state, tables } of plain.elements) if (state === 'example') expect.soft(tables, tag).toBe(0);
  });

  for (const attributes of PAGES) {
    it(`answer the same on a page with ${attributes}`, async () => {
      expect(await answers(attributes, asWritten().join('\n'))).toEqual(plain);
    });
  }

  // Each library and place once, each on a page of its own kind: what Markdown makes of a snippet does not know the page.
  const ways = Object.entries(LIBRARIES).flatMap(([library, render]) =>
    Object.entries(PLACES).map(([where, place]) => ({ library, render, where, place })),
  );
  for (const [i, { library, render, where, place }] of ways.entries()) {
    const attributes = PAGES[i % PAGES.length]!;
    it(`answer the same through ${library}, ${where}, on a page with ${attributes}`, async () => {
      const article = asWritten().map(place).join('\n\n');
      expect(await answers(attributes, render(`# My car\n\n${article}\n`))).toEqual(plain);
    });
  }
});
