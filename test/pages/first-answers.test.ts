import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { wholePage } from '../../site/partials/pages.js';
import { browser as findBrowser } from '../browser.mjs';
import { serve } from '../serve.mjs';
import { saidIn } from './said-in.js';
import { inside, page as source, textOf } from './site-source.js';

/* The sentence in an element's place is made by the build from what the page holds: it is the element's own, before the element is there. */

const PAGES = [
  ['what-lowering-does-to-camber/', 'bumpline-lowering', '<td>338</td>', '<td>298</td>'],
  ['how-much-bump-is-left/', 'bumpline-lowering', 'stop-gap 22;', 'stop-gap 27;'],
  ['will-it-clear-at-full-bump/', 'bumpline-clearance', '"distance": 378, "out": 48', '"distance": 378, "out": 41'],
  ['height-or-part/', 'bumpline-compare', '<td>−1.16</td>', '<td>−1.66</td>'],
  ['what-a-lower-ball-joint-does/', 'bumpline-geometry', 'drop="25"', 'drop="35"'],
  ['the-wheel-that-steers-itself/', 'bumpline-toe', 'drop="0"', 'drop="25"'],
  ['camber-in-the-turn/', 'bumpline-cornering', 'drop="25"', 'drop="40"'],
  ['ways-to-add-camber/', 'bumpline-static-camber', 'by="-1"', 'by="-1.5"'],
  ['measure-once-predict-the-rest/', 'bumpline-predict', 'drop="25"', 'drop="40"'],
  ['measure-your-own-camber-curve/', 'bumpline-readings', '<data value="-0.96">', '<data value="-1.46">'],
] as const;

const answerIn = (html: string): string => textOf(inside(html, 'p', 'class="answer"'));
const made = (path: string, change = (html: string) => html) => wholePage(path, change(source(`${path}index.html`)));

describe.each(PAGES)('%s', (path, _tag, before, after) => {
  it('has no sentence of its own in its source, and one with figures when it is made', () => {
    expect(inside(source(`${path}index.html`), 'p', 'class="answer"')).toBe('');
    expect(answerIn(made(path))).toMatch(/\d.*\.$/);
    expect(made(path)).not.toContain('data-figures');
  });

  it(`says something else of other data: ${after} in place of ${before}`, () => {
    const html = source(`${path}index.html`);
    expect(html).toContain(before);
    expect(answerIn(made(path, (text) => text.replace(before, after)))).not.toBe(answerIn(made(path)));
  });
});

describe('a page that cannot be answered', () => {
  const path = 'what-lowering-does-to-camber/';

  it('is not built where a figure of its table cannot be read, and the figure is named', () => {
    expect(() => made(path, (html) => html.replace('<td>338</td>', '<td>33x8</td>'))).toThrow(/armLength.*33x8/);
  });

  it('is not built where it names a figure that the sentence does not have, and those that it has are named', () => {
    expect(() => made(path, (html) => html.replace('bump-left=', 'bump-over='))).toThrow(
      '<bumpline-lowering> says no figure bump-over: name change, change-plus-minus, bump-left in data-figures.',
    );
  });

  it('is not built with a table whose cells go over several, which the build reads otherwise than an element', () => {
    expect(() => made(path, (html) => html.replace('<td>338</td>', '<td colspan="2">338</td>'))).toThrow('divide it');
  });
});

it('a sentence that an author wrote is left alone', () => {
  const written = made('what-lowering-does-to-camber/', (html) =>
    html.replace(/(<p class="answer")[^>]*>/, '$1>By hand.'),
  );
  expect(answerIn(written)).toBe('By hand.');
});

describe('in a browser', () => {
  let browser: Browser;
  let site: Awaited<ReturnType<typeof serve>>;
  beforeAll(async () => {
    const folder = fileURLToPath(new URL('../../dist/site', import.meta.url));
    [browser, site] = await Promise.all([chromium.launch(await findBrowser()), serve({ folders: { '/': folder } })]);
  });
  afterAll(() => Promise.all([browser?.close(), site?.close()]));

  it.each(PAGES)('%s: the element says the same, to the last digit', async (path, tag) => {
    const page = await browser.newPage();
    await page.goto(`${site.origin}/${path}`);
    await page.evaluate((name) => document.querySelector<HTMLElement & { settled?: unknown }>(name)!.settled, tag);
    const sentence = page.locator(`${tag} .sentence`).first();
    const plain = (text: string | null) => text!.replace(/\s+/g, ' ').trim();
    const said = plain(await sentence.evaluate(saidIn));
    expect(said).toMatch(/\d/);
    expect(plain(await page.locator(`${tag} > .answer`).first().textContent())).toBe(said);
    await page.close();
  });

  it.each(PAGES)(
    '%s: the sentence stands where the element’s will, in its type, while that is on its way',
    async (path, tag) => {
      for (const width of [360, 1280]) {
        const page = await browser.newPage({ viewport: { width, height: 780 } });
        let send = () => {};
        const sent = new Promise<void>((resolve) => {
          send = resolve;
        });
        await page.route(/-app-[\w-]+\.js$/, async (route) => {
          await sent;
          await route.continue();
        });
        await page.goto(`${site.origin}/${path}`, { waitUntil: 'commit' });
        await page.waitForFunction((name) => customElements.get(name), tag);
        const look = (selector: string) =>
          page
            .locator(selector)
            .first()
            .evaluate((sentence) => {
              const { x, y, width: wide } = sentence.getBoundingClientRect();
              const { fontSize, lineHeight } = getComputedStyle(sentence);
              return { x, y, wide, fontSize, lineHeight };
            });
        const before = await look(`${tag} > .answer`);
        send();
        await page.evaluate((name) => document.querySelector<HTMLElement & { settled?: unknown }>(name)!.settled, tag);
        expect(before, `at ${width} px`).toEqual(await look(`${tag} .sentence`));
        await page.close();
      }
    },
  );

  it.each(
    PAGES.flatMap(([path, tag]) =>
      (
        [
          [360, 780],
          [1280, 900],
        ] as const
      ).map(([width, height]) => [path, width, tag, height] as const),
    ),
  )('%s at %i px: nothing on the page moves when the element takes its place', async (path, width, tag, height) => {
    const context = await browser.newContext({ viewport: { width, height } });
    const page = await context.newPage();
    await page.addInitScript(() => {
      const shifts: number[] = [];
      Object.assign(globalThis, { shifts });
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) shifts.push((entry as unknown as { value: number }).value);
      }).observe({ type: 'layout-shift', buffered: true });
    });
    // Each file takes a while, so that every step of the way is painted.
    await page.route('**/*.js', async (route) => {
      await new Promise((resolve) => setTimeout(resolve, 80));
      await route.continue();
    });
    await page.goto(`${site.origin}/${path}`);
    await page.waitForFunction((name) => customElements.get(name), tag);
    await page.evaluate((name) => document.querySelector<HTMLElement & { settled?: unknown }>(name)!.settled, tag);
    await page.waitForTimeout(150);
    expect(await page.evaluate(() => (globalThis as unknown as { shifts: number[] }).shifts)).toEqual([]);
    await context.close();
  });
});
