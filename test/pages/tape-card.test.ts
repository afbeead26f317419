import { expect, test } from 'vitest';
import { inside, page, tableRows, textOf } from './site-source.js';

/* The card to measure with asks for what the element does. Its figures: worked-numbers.test.ts; its cautions: cautions.test.ts. */

const html = page('cards/tape/index.html');
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
