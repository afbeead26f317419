import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { expect, test } from 'vitest';
import { browser as findBrowser } from '../browser.mjs';
import { serve } from '../serve.mjs';
import { inside, page, tableRows, textOf } from './site-source.js';

/* The card to measure with is one sheet of paper, and asks for what the element does. Its figures: worked-numbers.test.ts; its cautions: cautions.test.ts. */

const PATH = 'cards/tape/';
const html = page(`${PATH}index.html`);
const steps = [...inside(html, 'ol', 'class="steps"').matchAll(/<li>([\s\S]*?)<\/li>/g)].map(([, step]) => step!);

test('its steps are the measurements of the article’s example, in that order', () => {
  const example = inside(page('what-lowering-does-to-camber/index.html'), 'table', 'data-example="measurements"');
  expect(steps.map((step) => textOf(inside(step, 'h3')))).toEqual(tableRows(example).map(({ name }) => name));
});

test.each(steps.map((step) => [textOf(inside(step, 'h3')), step]))(
  '%s has a picture, a box for each of two readings and one for the ±',
  (_, step) => {
    expect(step).toContain('<svg');
    const boxes = inside(step, 'p', 'class="write blanks"');
    expect(textOf(boxes).replace(/\s+/g, ' ')).toMatch(/^First (mm|°) Again \1 ±$/);
    expect(boxes.match(/class="box"/g)).toHaveLength(3);
  },
);

test('it leads to the calculator that it is for', () => {
  expect(html).toContain('href="../../what-lowering-does-to-camber/#lowering"');
});

test('it is one sheet of A4 when it is printed, and fills most of it', async () => {
  const folder = fileURLToPath(new URL('../../dist/site', import.meta.url));
  const [browser, site] = await Promise.all([
    chromium.launch(await findBrowser()),
    serve({ folders: { '/': folder } }),
  ]);
  try {
    const tab = await browser.newPage();
    await tab.goto(`${site.origin}/${PATH}`);
    const paper = (await tab.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(paper.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    const [, width, height] = /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/.exec(paper)!;
    // ISO 216: 210 mm × 297 mm; a point is 1/72 inch.
    expect(Number(width)).toBeCloseTo((210 / 25.4) * 72, 0);
    expect(Number(height)).toBeCloseTo((297 / 25.4) * 72, 0);
    // As wide as the paper less its margins of 10 mm, in CSS pixels.
    await tab.emulateMedia({ media: 'print' });
    await tab.setViewportSize({ width: Math.floor((190 / 25.4) * 96), height: 300 });
    const used = await tab.evaluate(() => document.documentElement.scrollHeight);
    expect(used / ((279 / 25.4) * 96)).toBeGreaterThan(0.85);
  } finally {
    await Promise.all([browser.close(), site.close()]);
  }
});
