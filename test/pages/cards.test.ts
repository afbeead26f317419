import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { listedPages } from '../../site/partials/listed.js';
import { browser as findBrowser } from '../browser.mjs';
import { serve } from '../serve.mjs';
import { page as source, tableRows } from './site-source.js';
import { readings } from './worked-readings.js';

/* Cards are written on in a garage: one sheet of A4 each (ISO 216: 210 mm × 297 mm), with room for a pencil. */

const cards = listedPages().flatMap(({ path, kind }) => (kind === 'card' ? [path] : []));
const CURVE = 'cards/camber-curve/';
const A4_MM = [210, 297] as const;
const POINTS_PER_MM = 72 / 25.4;
const PIXELS_PER_MM = 96 / 25.4;
/** What is printed on when margins are those of the style sheet. */
const PRINTED = { width: Math.round(190 * PIXELS_PER_MM), height: Math.round(279 * PIXELS_PER_MM) };

let browser: Browser;
let site: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  const dist = fileURLToPath(new URL('../../dist/site', import.meta.url));
  [browser, site] = await Promise.all([chromium.launch(await findBrowser()), serve({ folders: { '/': dist } })]);
});
afterAll(() => Promise.all([browser?.close(), site?.close()]));

async function open(path: string, options: BrowserContextOptions = {}): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 360, height: 780 }, ...options });
  const opened = await context.newPage();
  await opened.goto(`${site.origin}/${path}`);
  return opened;
}

/** Sheets of a PDF, in mm: each of its page objects names its paper, or its parent does. */
async function sheets(opened: Page, options: Parameters<Page['pdf']>[0]): Promise<number[][]> {
  const text = (await opened.pdf(options)).toString('latin1');
  const pages = text.match(/\/Type\s*\/Page\b/g) ?? [];
  const papers = [...text.matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/g)];
  expect(papers.length).toBeGreaterThan(0);
  return pages.map((_, i) => (papers[i] ?? papers[0])!.slice(1).map((points) => Number(points) / POINTS_PER_MM));
}

it('there are cards', () => {
  expect(cards).toContain(CURVE);
});

describe.each(cards)('%s', (path) => {
  it.each([
    ['the paper that the card asks for', { preferCSSPageSize: true }],
    ['a printer’s own A4', { format: 'A4' }],
  ] as const)('prints on exactly one sheet: %s', async (_, options) => {
    const opened = await open(path);
    const printed = await sheets(opened, options);
    expect(printed).toHaveLength(1);
    for (const [i, side] of A4_MM.entries()) expect(Math.abs(printed[0]![i]! - side)).toBeLessThan(0.5);
    await opened.context().close();
  });

  it('would print on two if it were longer: sheets are counted', async () => {
    const opened = await open(path);
    await opened.evaluate(() => {
      const long = document.createElement('p');
      long.style.height = '300mm';
      document.querySelector('.text')!.append(long);
    });
    expect((await sheets(opened, { preferCSSPageSize: true })).length).toBeGreaterThan(1);
    await opened.context().close();
  });

  it('prints on one sheet in a font whose letters are 5 % wider than the one it was made with', async () => {
    const opened = await open(path);
    // Letters of a text are about half an em wide.
    await opened.addStyleTag({ content: '.card main { letter-spacing: 0.025em; }' });
    expect(await sheets(opened, { preferCSSPageSize: true })).toHaveLength(1);
    await opened.context().close();
  });

  it('loses nothing over the edge of the paper', async () => {
    const opened = await open(path, { viewport: PRINTED });
    await opened.emulateMedia({ media: 'print' });
    const out = await opened.evaluate(
      (width) =>
        [...document.querySelectorAll('main *')]
          .filter((one) => one.checkVisibility() && one.getBoundingClientRect().right > width + 1)
          .map((one) => one.outerHTML.slice(0, 80)),
      PRINTED.width,
    );
    expect(out).toEqual([]);
    await opened.context().close();
  });

  it('is printed by a button that only a script can put there, and that is not on the paper', async () => {
    const without = await open(path, { javaScriptEnabled: false });
    expect(await without.getByRole('button').count()).toBe(0);
    await without.context().close();

    const opened = await open(path);
    const button = opened.getByRole('button', { name: 'Print this card' });
    await opened.evaluate(() => {
      window.print = () => document.body.setAttribute('data-printed', '');
    });
    await button.click();
    await opened.locator('body[data-printed]').waitFor();
    await opened.emulateMedia({ media: 'print' });
    expect(await button.isVisible()).toBe(false);
    await opened.context().close();
  });
});

describe('the card of the camber curve', () => {
  const rows = tableRows(source(`${CURVE}index.html`));

  it('has a box for every reading of the example: three passes at each of its heights, and one for the tape', () => {
    const heights = rows.map(({ name }) => name);
    for (const { travel } of readings)
      expect(heights).toContain(travel > 0 ? `+${travel}` : String(travel).replace('-', '−'));
    expect(new Set(readings.map(({ pass }) => pass)).size).toBe(3);
    for (const { name, cells } of rows) expect(cells, name).toHaveLength(/^[+−]?\d+$/.test(name) ? 4 : 3);
    for (const again of ['First height again', 'Sill mark (mm), start', 'Sill mark (mm), end'])
      expect(heights).toContain(again);
  });

  it('has boxes large enough for a pencil, 6 mm by 13 mm on paper', async () => {
    const opened = await open(CURVE, { viewport: PRINTED });
    await opened.emulateMedia({ media: 'print' });
    const boxes = await opened
      .locator('.write .box')
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect()).map(({ width, height }) => [width, height]));
    expect(boxes).toHaveLength(rows.reduce((sum, { cells }) => sum + cells.length, 0));
    for (const [width, height] of boxes as [number, number][]) {
      expect(width / PIXELS_PER_MM).toBeGreaterThan(13);
      expect(height / PIXELS_PER_MM).toBeGreaterThan(6);
    }
    await opened.context().close();
  });

  it('has letters in its pictures that can be read on paper, 2 mm high at least', async () => {
    const opened = await open(CURVE, { viewport: PRINTED });
    await opened.emulateMedia({ media: 'print' });
    const sizes = await opened
      .locator('.steps svg')
      .evaluateAll((pictures) =>
        (pictures as SVGSVGElement[]).map(
          (one) =>
            parseFloat(getComputedStyle(one).fontSize) *
            (one.getBoundingClientRect().width / one.viewBox.baseVal.width),
        ),
      );
    expect(sizes).toHaveLength(7);
    for (const pixels of sizes) expect(pixels / PIXELS_PER_MM).toBeGreaterThan(1.9);
    await opened.context().close();
  });

  it.each([
    [true, 300],
    [false, 0],
  ])('on a wide screen keeps room beside a step only for a picture: %s', async (hasPicture, room) => {
    const opened = await open(CURVE, { viewport: { width: 1280, height: 900 } });
    const step = opened.locator('.steps > li').nth(1);
    if (!hasPicture) await step.locator('.figure').evaluate((one) => one.remove());
    const inset = await step.evaluate(
      (one) => one.querySelector('.do')!.getBoundingClientRect().left - one.getBoundingClientRect().left,
    );
    expect(Math.round(inset)).toBeGreaterThanOrEqual(room);
    if (!hasPicture) expect(inset).toBeLessThan(1);
    await opened.context().close();
  });
});
