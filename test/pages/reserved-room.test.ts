import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { reservedHeight, reservedHeights } from '../../components/delivery/reserved-heights.mjs';
import { browser as findBrowser } from '../browser.mjs';
import { serve } from '../serve.mjs';

/*
 * A page that links the style sheet beside the script: each element keeps its height for its width before any script has come, whatever
 * it stands in, and nothing moves when it comes alive piece by piece.
 */

const cdn = fileURLToPath(new URL('../../dist/cdn', import.meta.url));
const TAGS = Object.keys(reservedHeights().heights);
const LINK = '<link rel="stylesheet" href="/cdn/bumpline.css">';
const SCRIPT = '<script type="module" src="/cdn/bumpline.js"></script>';
const head = (more: string) =>
  `<!doctype html><html lang="en"><meta name="viewport" content="width=device-width"><title>Room</title>${LINK}${more}`;

let browser: Browser;
let site: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  [browser, site] = await Promise.all([chromium.launch(await findBrowser()), serve({ folders: { '/cdn/': cdn } })]);
});
afterAll(() => Promise.all([browser?.close(), site?.close()]));

async function open(body: string, { width = 1000, delay = 0 } = {}): Promise<Page> {
  const page = await (await browser.newContext({ viewport: { width, height: 780 } })).newPage();
  await page.route('**/page', (route) => route.fulfill({ contentType: 'text/html', body }));
  if (delay > 0)
    await page.route('**/cdn/*.js', async (route) => {
      await new Promise((resolve) => setTimeout(resolve, delay));
      await route.continue();
    });
  await page.goto(`${site.origin}/page`, { waitUntil: 'domcontentloaded' });
  await page.waitForFunction(() => getComputedStyle(document.querySelector('.here')!, '::before').height !== 'auto');
  return page;
}

const sizes = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.here')].map((one) => ({
      tag: one.localName,
      show: one.getAttribute('show') ?? '',
      width: one.clientWidth,
      height: one.offsetHeight,
    })),
  );

const words =
  '<p>Lowering 30 mm adds 0.39° of negative camber.</p><table><tr><th>Ball joint</th><td>0</td></tr></table>';

describe('before any script has come', () => {
  const placed: [string, (element: string) => string, number?][] = [
    ['a block', (element) => `<div style="width: 360px">${element}</div>`],
    ['a narrow block', (element) => `<div style="width: 300px">${element}</div>`],
    ['a wide block', (element) => `<div style="width: 980px">${element}</div>`],
    [
      'a row of flexible boxes',
      (element) =>
        `<div style="display: flex; width: 900px"><p style="flex: none; width: 300px">Aside</p><div style="flex: 1; min-width: 0">${element}</div></div>`,
    ],
    [
      'a flexible box itself',
      (element) =>
        `<div style="display: flex; width: 700px">${element.replace('class', 'style="flex: 1" class')}</div>`,
    ],
    [
      'a grid',
      (element) =>
        `<div style="display: grid; grid-template-columns: 2fr 1fr; width: 990px">${element}<p>Aside</p></div>`,
    ],
    ['a float of its own width', (element) => `<div style="float: left; width: 500px">${element}</div>`],
    ['a float as wide as what it holds', (element) => `<div style="float: left">${element}</div>`],
    ['a box in a line', (element) => `<div style="display: inline-block; width: 420px">${element}</div>`],
    ['a box in a line as wide as what it holds', (element) => `<div style="display: inline-block">${element}</div>`],
    [
      'an article with letters of its own',
      (element) =>
        `<style>html { font-size: 62.5% }</style><div style="font: 20px monospace; width: 480px">${element}</div>`,
    ],
    [
      'an article that clears floats',
      (element) => `<style>table, p { clear: both }</style><div style="width: 400px">${element}</div>`,
    ],
  ];

  it.each(placed)('an element keeps its height for its width in %s', async (_, place) => {
    const elements = TAGS.map((tag) => `<${tag} class="here">${words}</${tag}>`);
    elements.push(
      ...['sentence', 'Chart sentence', 'table'].map(
        (show) => `<bumpline-toe show="${show}" class="here">${words}</bumpline-toe>`,
      ),
    );
    const page = await open(`${head('')}<body>${elements.map((one) => place(one)).join('<hr style="clear: both">')}`);
    for (const { tag, show, width, height } of await sizes(page)) {
      expect(width, tag).toBeGreaterThanOrEqual(240);
      const kept = reservedHeight(tag, width, show);
      expect(height - kept, `${tag} ${show} at ${width} px`).toBeGreaterThan(-4);
      expect(height - kept, `${tag} ${show} at ${width} px`).toBeLessThan(12);
    }
    // The words inside begin at the top, whatever clears floats.
    const offsets = await page.evaluate(() =>
      [...document.querySelectorAll('.here')].map(
        (one) => one.querySelector('table')!.getBoundingClientRect().top - one.getBoundingClientRect().top,
      ),
    );
    for (const offset of offsets) expect(offset).toBeLessThan(200);
    await page.context().close();
  });

  it('a div that an element will be put into keeps the same', async () => {
    const page = await open(
      `${head('')}<body><div style="width: 500px">${TAGS.map((tag) => `<div data-bumpline="${tag.replace('bumpline-', '')}" class="here" data-show="sentence table">${words}</div>`).join('')}</div>`,
    );
    const found = await sizes(page);
    for (const [i, { height }] of found.entries())
      expect(Math.abs(height - reservedHeight(TAGS[i]!, 500, 'sentence table')), TAGS[i]).toBeLessThan(12);
    await page.context().close();
  });

  it('a hidden one keeps none, and paper none', async () => {
    const page = await open(
      `${head('')}<body><bumpline-toe class="here" hidden></bumpline-toe><bumpline-toe class="here"><p>Words</p></bumpline-toe>`,
    );
    expect((await sizes(page))[0]!.height).toBe(0);
    await page.emulateMedia({ media: 'print' });
    expect((await sizes(page))[1]!.height).toBeLessThan(80);
    await page.context().close();
  });
});

describe('when it has come', () => {
  /** Widths between those that were measured. */
  it.each([345, 1000])('each is as high as was kept for it at %i px, or hardly less', async (width) => {
    const { heights } = reservedHeights();
    const page = await open(
      `${head(SCRIPT)}<body style="margin: 0">${TAGS.flatMap((tag, i) =>
        Object.keys(heights[tag]!)
          .filter((_, k) => k === 0 || (k + i) % 8 === 0)
          .map((show) => `<${tag} class="here" ${show ? `show="${show}"` : ''}></${tag}>`),
      ).join('')}`,
      { width },
    );
    const found = await page.evaluate(async () => {
      const all = [...document.querySelectorAll<HTMLElement & { settled: Promise<void> }>('.here')];
      const measured: [string, string, number, number][] = [];
      for (const one of all) {
        await customElements.whenDefined(one.localName);
        one.scrollIntoView();
        await one.settled;
        for (const box of one.shadowRoot!.querySelectorAll('.chart-box, .drawing-place')) {
          box.scrollIntoView();
          await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
        }
        await one.settled;
        const inside = one.shadowRoot!.querySelector<HTMLElement>('.inside')!.offsetHeight;
        const kept = parseFloat(getComputedStyle(one, '::before').height);
        measured.push([one.localName, one.getAttribute('show') ?? '', inside, kept]);
      }
      return measured;
    });
    const off = found.filter(([, , inside, kept]) => inside > kept + 40 || inside < 0.8 * kept - 60);
    expect(off).toEqual([]);
    await page.context().close();
  });

  /* Two lines of a sentence, some 0.02: https://web.dev/articles/cls counts how much of the window moves, and how far; good is 0.1. */
  it.each([360, 1280])(
    'a page with all elements, whose files come slowly, moves by 0.02 at the most at %i px',
    async (width) => {
      const body = TAGS.map((tag, i) => {
        const show = ['', 'show="sentence"', 'show="sentence chart"'][i % 3];
        return `<h2>${tag}</h2><p>What stands before it, in some words of the author’s own.</p><${tag} class="here" ${show}></${tag}><p>And after.</p>`;
      }).join('');
      const moves: number[] = [];
      // What the product moves it moves each time; what a busy machine makes late it does not.
      while (moves.length < 3 && !moves.some((moved) => moved <= 0.02)) {
        const page = await open(
          `${head(`<script>
          window.moved = 0;
          new PerformanceObserver((list) => { for (const one of list.getEntries()) window.moved += one.value; })
            .observe({ type: 'layout-shift', buffered: true });
        </script>${SCRIPT}`)}<body style="max-width: 640px; margin: 0 auto; padding: 0 16px">${body}`,
          { width, delay: 150 },
        );
        await page.evaluate(async () => {
          const all = [...document.querySelectorAll<HTMLElement & { settled: Promise<void> }>('.here')];
          for (const one of all) {
            await customElements.whenDefined(one.localName);
            one.scrollIntoView({ block: 'start' });
            await one.settled;
            for (let i = 0; i < 4; i++)
              await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 30)));
          }
        });
        const moved = await page.evaluate(() => (window as unknown as { moved: number }).moved);
        moves.push(moved);
        await page.context().close();
      }
      expect(Math.min(...moves)).toBeLessThanOrEqual(0.02);
    },
  );
});

it('the style sheet is the same in every form, and small', () => {
  const read = (folder: string) =>
    readFileSync(fileURLToPath(new URL(`../../dist/${folder}/bumpline.css`, import.meta.url)), 'utf8');
  expect(read('standalone')).toBe(read('cdn'));
  expect(read('site/embed')).toBe(read('cdn'));
  expect(read('cdn').length).toBeLessThan(80_000);
});
