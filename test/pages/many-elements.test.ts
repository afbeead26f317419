import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page, type Route } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { EMPTY_CAR } from '../../core/document/car.js';
import { carToLink } from '../../core/document/link.js';
import { byUser } from '../../core/document/own-car.js';
import { browser as findBrowser } from '../browser.mjs';
import { serve } from '../serve.mjs';

/*
 * An article with thirty elements, of every kind, as the small entry brings them: what nobody has scrolled to is on paper, is found,
 * and moves no place that an address names.
 */

const TAGS = ['bumpline-lowering', 'bumpline-clearance', 'bumpline-compare', 'bumpline-readings'] as const;
const COUNT = 30;
const tagOf = (i: number) => TAGS[i % TAGS.length]!;
const SECTIONS = Array.from(
  { length: COUNT },
  (_, i) => `<h2 id="part-${i}">Part ${i}</h2><p>Prose of part ${i}.</p>
<${tagOf(i)} id="sheet-${i}" class="sheet"><p>Written by the author, number ${i}.</p></${tagOf(i)}>`,
).join('\n');
const PAGE = `<!doctype html><html lang="en"><meta name="viewport" content="width=device-width"><title>Many</title>
<script type="module" src="/cdn/bumpline.js"></script>
<main>${SECTIONS}<h2 id="last">Last</h2><p style="min-height: 100vh">The end of the article.</p></main>`;

const ROOM = '<style>.sheet { display: block; min-height: 5000px }</style>';

let browser: Browser;
let site: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  const cdn = fileURLToPath(new URL('../../dist/cdn', import.meta.url));
  [browser, site] = await Promise.all([chromium.launch(await findBrowser()), serve({ folders: { '/cdn/': cdn } })]);
});
afterAll(() => Promise.all([browser?.close(), site?.close()]));

type Sheet = HTMLElement & { answer: unknown; settled: Promise<void> };

async function open(hash = '', files?: RegExp, meet?: (route: Route) => unknown, style = ''): Promise<Page> {
  const page = await (await browser.newContext({ viewport: { width: 360, height: 780 } })).newPage();
  await page.route('**/page', (route) => route.fulfill({ contentType: 'text/html', body: PAGE + style }));
  if (files) await page.route(files, (route) => void meet!(route));
  await page.goto(`${site.origin}/page${hash}`);
  return page;
}

/** All have an answer. */
const answered = (page: Page, tags: readonly string[] = TAGS) =>
  page.waitForFunction(
    (names) => [...document.querySelectorAll(names.join())].every((one) => (one as Sheet).answer !== undefined),
    tags,
  );
/** Nothing waits for its turn any more. */
const whole = (page: Page) =>
  page.waitForFunction(() =>
    [...document.querySelectorAll('.sheet')].every((one) => one.shadowRoot!.querySelector('.copy-link')),
  );
const settleAll = (page: Page) =>
  page.evaluate(async () => {
    for (const one of document.querySelectorAll('.sheet')) await (one as Sheet).settled;
  });
const offsetOf = (page: Page, id: string) =>
  page.evaluate((name) => Math.round(document.getElementById(name)!.getBoundingClientRect().top), id);

/** What stands on each element's paper, read when printing is over. */
const printed = async (page: Page) => {
  await page.evaluate(() => {
    addEventListener('afterprint', () => {
      const found = [...document.querySelectorAll('.sheet')].map((one) => {
        const root = one.shadowRoot!;
        const drawn = (selector: string) =>
          [...root.querySelectorAll(selector)].every((box) => box.querySelector('svg') !== null);
        return {
          answers: /\d/.test(root.querySelector('.sentence')?.textContent ?? ''),
          charts: root.querySelector('.chart-box') !== null && drawn('.chart-box'),
          drawings: drawn('.drawing-place'),
          lists: root.querySelectorAll('details').length > 0,
          words: one.querySelector('p')!.checkVisibility(),
        };
      });
      Object.assign(globalThis, { found });
    });
  });
  const pdf = await page.pdf();
  expect(pdf.length).toBeGreaterThan(10_000);
  type Found = { answers: boolean; charts: boolean; drawings: boolean; lists: boolean; words: boolean };
  return page.evaluate(() => (globalThis as unknown as { found: Found[] }).found);
};

describe('thirty elements in an article', () => {
  it('are all whole on paper, though nobody has scrolled', async () => {
    const page = await open();
    await answered(page);
    await whole(page);
    const found = await printed(page);
    expect(found).toEqual(
      Array.from({ length: COUNT }, () => ({ answers: true, charts: true, drawings: true, lists: true, words: false })),
    );
    await page.context().close();
  });

  it('print the author’s words where their file never came', async () => {
    const page = await open('', /compare-app[\w-]*\.js$/, (route) => route.abort());
    await answered(
      page,
      TAGS.filter((tag) => tag !== 'bumpline-compare'),
    );
    const found = await printed(page);
    expect(found.map(({ words }) => words)).toEqual(
      Array.from({ length: COUNT }, (_, i) => tagOf(i) === 'bumpline-compare'),
    );
    expect(found.map(({ answers }) => answers)).toEqual(found.map(({ words }) => !words));
    await page.context().close();
  });

  it('let the author’s words be found before anything has come, and their own afterwards', async () => {
    const held: Route[] = [];
    let isHeld = true;
    const page = await open('', /-app[\w-]*\.js$/, (route) => (isHeld ? held.push(route) : route.continue()));
    const session = await page.context().newCDPSession(page);
    // What is read aloud, and found in a page: its accessibility tree, in which shadow trees are flattened.
    const find = async (text: string) => {
      const { nodes } = await session.send('Accessibility.getFullAXTree');
      return nodes.some(({ ignored, name }) => !ignored && String(name?.value ?? '').includes(text));
    };
    await page.evaluate(() => customElements.whenDefined('bumpline-readings'));
    expect(await find('Written by the author, number 29')).toBe(true);
    isHeld = false;
    for (const route of held) await route.continue();
    await answered(page);
    const says = await page.evaluate(
      () => document.getElementById('sheet-29')!.shadowRoot!.querySelector('.cautions')!.textContent,
    );
    expect(await find(says!.trim().slice(0, 30))).toBe(true);
    await page.context().close();
  });

  it.each(['part-28', 'last', 'sheet-27'])(
    'leave the place #%s where it is while they come, where the page keeps room for them',
    async (id) => {
      const page = await open(`#${id}`, undefined, undefined, ROOM);
      await answered(page);
      await whole(page);
      await settleAll(page);
      await page.waitForTimeout(100);
      expect(Math.abs(await offsetOf(page, id))).toBeLessThanOrEqual(2);
      await page.context().close();
    },
  );

  it('bring a reader to the place of a link with a car, and leave it there, where the page keeps room', async () => {
    const page = await open(
      `#last&${carToLink(byUser({ ...EMPTY_CAR, drop: 41 })).replace(/^/, 'at=1&')}`,
      undefined,
      undefined,
      ROOM,
    );
    await answered(page);
    await whole(page);
    await settleAll(page);
    await page.waitForTimeout(100);
    expect(Math.abs(await offsetOf(page, 'last'))).toBeLessThanOrEqual(2);
    await page.context().close();
  });

  it('settle, however far away', async () => {
    const page = await open();
    await page.evaluate(() => (document.getElementById('sheet-29') as Sheet).settled);
    expect(
      await page.evaluate(() => document.getElementById('sheet-29')!.shadowRoot!.querySelector('.copy-link') !== null),
    ).toBe(true);
    await page.context().close();
  });

  it('have no input wait for more than one of them', async () => {
    const page = await open();
    await answered(page);
    await whole(page);
    // One rendering of one kind and nothing else: each has a task to itself.
    const shared = await page.evaluate(async () => {
      const sheets = [...document.querySelectorAll('.sheet')];
      let frame = 0;
      const count = () => {
        frame++;
        requestAnimationFrame(count);
      };
      requestAnimationFrame(count);
      const frames: number[] = [];
      const far = sheets.slice(4);
      for (const one of far) {
        new MutationObserver((_, watching) => {
          watching.disconnect();
          frames.push(frame);
        }).observe(one.shadowRoot!, { subtree: true, childList: true, characterData: true, attributes: true });
        one.setAttribute('units', 'in');
      }
      while (frames.length < far.length) await new Promise((resolve) => setTimeout(resolve, 50));
      return frames.length - new Set(frames).size;
    });
    // A busy machine paints fewer frames than there are tasks.
    expect(shared).toBeLessThan(6);
    await page.context().close();
  });
});
