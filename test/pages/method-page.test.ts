import { describe, expect, test } from 'vitest';
import { inside, page, sitePages, textOf } from './site-source.js';

/* The one page of method and sources, which every article links: its sections, and that no article knows a source that it does not. */

const METHOD = 'method-and-sources/index.html';
const html = page(METHOD);
const spaced = (markup: string) => textOf(markup).replace(/[\s\u00a0]+/g, ' ');
const listOf = (of: string) => /<ol class="sources">([\s\S]*?)<\/ol>/.exec(of)?.[1] ?? '';

test('every section that articles link to is there', () => {
  const ids = [...html.matchAll(/<h2 id="([^"]*)"/g)].map(([, id]) => id);
  expect(ids).toEqual(
    'example linkage tape readings plus-minus turn toe parts clearance bump learning checked limits sources'.split(' '),
  );
});

/** What a source is known by, wherever it is listed. */
const MARKS = [
  /ISO 8855/,
  /Kodati/,
  /Akaike/,
  /PubMed 27632853/,
  /Device Orientation and Motion/,
  /JCGM 100:2008/,
  /Fieller/,
  /Automotive Chassis Engineering/,
  /Bump steer explained/,
  /UN Regulation No\. 30/,
  /theoretical rim as a share/,
  /Moré/,
  /Hoerl and Kennard/,
  /Statistical Reference Datasets/,
  /Chassis Newsletter/,
  /Health and Safety Executive/,
  /Competition and Consumer Commission/,
  /109-008/,
  /AS00\.00-Z-0001-01A/,
  /VSB 14/,
  /ktn\.gv\.at/,
  /Basel-Landschaft/,
  /SAE J2492/,
];

describe('the common lists of sources', () => {
  const common = spaced(listOf(html) + listOf(page('working-safely/index.html')));

  test.each(MARKS)('hold %s', (mark) => {
    expect(common).toMatch(mark);
  });

  /** What only the page on clearance is about stands in its own list, word for word: cautions.test.ts. */
  const OF_CLEARANCE = /^Room round a wheel|practice of fitting reports/;

  test.each(sitePages().filter(({ html }) => listOf(html)))('hold what site/$path lists', ({ html }) => {
    const items = [...listOf(html).matchAll(/<li id="source-[^"]*">([\s\S]*?)(?=<li id="source-|$)/g)];
    expect(items.length).toBeGreaterThan(0);
    for (const [, item] of items) {
      const text = spaced(item!);
      if (!OF_CLEARANCE.test(text))
        expect(
          MARKS.some((mark) => mark.test(text)),
          text,
        ).toBe(true);
    }
  });
});

test('it says what each source is, how it was read, and what nobody wrote down', () => {
  const list = listOf(html);
  for (const item of list.split('<li id=').slice(1)) expect(item).toContain('class="status"');
  const section = spaced(inside(html, 'section', 'aria-labelledby="sources"'));
  for (const part of ['Common practice, no source:', 'Our judgement:', 'Worked out here:'])
    expect(section).toContain(part);
});

test('it claims no validation against a real car', () => {
  expect(spaced(html)).toContain('It is not validated against a published suspension.');
});
