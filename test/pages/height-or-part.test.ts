import { describe, expect, test } from 'vitest';
import { changeOf } from '../reference/independent-doubt.js';
import { inside, page, textOf, wordsRead } from './site-source.js';
import { COMPARE, fitOf, workedCompare } from './worked-compare.js';

/* Drawings and table of the page on height and parts, against the cubics of worked-compare.ts, which import nothing from core/. */

const html = page(COMPARE);
const numbers = (text: string) => text.match(/-?[\d.]+/g)!.map(Number);
const curves = [...html.matchAll(/<path class="curve[^>]*>/g)].map(([markup]) => ({
  markup,
  attribute: (name: string) => new RegExp(`\\b${name}="([^"]*)"`).exec(markup)?.[1] ?? '',
}));
const figure = (id: string) => {
  const start = html.lastIndexOf('<svg', html.indexOf(`id="${id}"`));
  return html.slice(start, html.indexOf('</svg>', start));
};
const labels = (id: string) => [...figure(id).matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text!);
const worked = workedCompare();
const shown = (name: string) => Math.abs(worked[`compare.${name}`]!.value()).toFixed(2);

test('four curves are drawn', () => {
  expect(curves).toHaveLength(4);
});

describe.each(curves)('$markup', ({ attribute }) => {
  test('is drawn through the computed changes, to a tenth of a unit of the drawing', () => {
    const [from] = numbers(attribute('data-from'));
    const [step] = numbers(attribute('data-step'));
    const [perMm, perDegree] = numbers(attribute('data-scale'));
    const [originX, originY] = numbers(attribute('data-origin'));
    const bump = attribute('data-over');
    const fit = fitOf(attribute('data-curve') || 'Lowered joints');
    const drawn = numbers(attribute('d'));
    expect(drawn.length).toBeGreaterThan(16);
    for (let i = 0; i < drawn.length / 2; i++) {
      const at = from! + i * step!;
      const change = bump ? changeOf(fit, at + Number(bump), at).value : changeOf(fit, at, 0).value;
      expect(Math.abs(drawn[2 * i]! - (originX! + perMm! * at)), `x at ${at}`).toBeLessThan(0.11);
      expect(Math.abs(drawn[2 * i + 1]! - (originY! + perDegree! * change)), `y at ${at}`).toBeLessThan(0.11);
    }
  });
});

test('labels in the drawings are the computed figures', () => {
  expect(labels('one-curve-title')).toEqual(
    expect.arrayContaining([`${shown('standard-0')}° over 40`, `${shown('standard-25')}°`]),
  );
  expect(labels('two-curves-title')).toEqual(
    expect.arrayContaining([`−${shown('standard-0')}°`, `−${shown('lowered-0')}°`]),
  );
  expect(labels('square-title')).toEqual(
    expect.arrayContaining([
      ...['standard-0', 'standard-25', 'lowered-0', 'lowered-25'].map((name) => `${shown(name)}°`),
      ...['height-first', 'height-second', 'both'].map((name) => `${shown(name)}° less`),
      ...['part-first', 'part-second'].map((name) => `${shown(name)}° more`),
    ]),
  );
  expect(labels('even-title')).toContain(worked['compare.break-even']!.value().toFixed(1));
});

test('the table is what the element opens with, as an example that is nobody’s, and called invented', () => {
  const element = inside(html, 'bumpline-compare', 'id="compare"');
  expect(element).toContain('<table data-example="sets">');
  expect(textOf(inside(element, 'caption'))).toContain('Invented example');
});

test('a reader scrolls through at most 1,200 words, pictures, contents and what is folded away not counted', () => {
  expect(wordsRead(html)).toBeLessThanOrEqual(1200);
});

test('before its first section it says where the reader’s own car is entered, and the home page leads to hard points too', () => {
  const before = html.slice(html.indexOf('class="text"'), html.indexOf('<section'));
  expect(before).toContain('href="../what-lowering-does-to-camber/"');
  expect(before).toContain('href="../what-a-lower-ball-joint-does/"');
  expect(page('index.html')).toContain('href="what-a-lower-ball-joint-does/"');
});
