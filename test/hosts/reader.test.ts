import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { browser as findBrowser } from '../browser.mjs';

/* What a reader has set, and what a page says of its colours, met by all elements on one page of somebody else. */

const TAGS = ['bumpline-lowering', 'bumpline-readings', 'bumpline-compare', 'bumpline-clearance'] as const;
const SCRIPT = readFileSync(fileURLToPath(new URL('../../dist/standalone/bumpline-standalone.js', import.meta.url)));
const PHONE: BrowserContextOptions = { viewport: { width: 360, height: 780 } };
const DESKTOP: BrowserContextOptions = { viewport: { width: 1280, height: 900 } };

interface Host {
  head?: string;
  html?: string;
  /** Around the elements. */
  around?: string;
  attributes?: string;
  /** Which elements; all four where none is named. */
  tags?: readonly string[];
}
const elements = (attributes = '', tags: readonly string[] = TAGS) =>
  tags.map((tag) => `<${tag} ${attributes}></${tag}>`).join('');
const pageOf = ({ head = '', html = '', around = '', attributes, tags }: Host): string =>
  `<!doctype html><html ${html}><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
  ${head}<script type="module" src="/bumpline.js"></script></head><body><div ${around}>${elements(attributes, tags)}</div></body></html>`;

/** The size of text that a reader has set, as the browser's own settings have it. */
async function browserWith(size: number): Promise<Browser> {
  const options = await findBrowser();
  return chromium.launch({ ...options, args: [...(options.args ?? []), `--blink-settings=defaultFontSize=${size}`] });
}

let usual: Browser;
let large: Browser;
beforeAll(async () => {
  [usual, large] = await Promise.all([browserWith(16), browserWith(32)]);
});
afterAll(() => Promise.all([usual?.close(), large?.close()]));

async function open<T>(
  browser: Browser,
  options: BrowserContextOptions,
  host: Host | string,
  look: (page: Page) => Promise<T>,
) {
  const context = await browser.newContext(options);
  try {
    const page = await context.newPage();
    const html = typeof host === 'string' ? host : pageOf(host);
    await page.route('https://host.example/**', (route) =>
      route.request().url().endsWith('.js')
        ? route.fulfill({ contentType: 'text/javascript', body: SCRIPT })
        : route.fulfill({ contentType: 'text/html', body: html }),
    );
    await page.goto('https://host.example/');
    await page.evaluate(
      async (tags) => {
        await Promise.all(tags.map((tag) => customElements.whenDefined(tag)));
        for (const element of document.querySelectorAll<HTMLElement & { settled: Promise<void> }>(tags.join()))
          await element.settled;
      },
      TAGS as readonly string[] as string[],
    );
    return await look(page);
  } finally {
    await context.close();
  }
}

/** The sizes of all text in each element, CSS px, by where it stands; every folded list unfolded. Pictures scale as a whole. */
const sizes = (page: Page) =>
  page.evaluate(
    async (tags) => {
      const found: Record<string, number> = {};
      for (const element of document.querySelectorAll<HTMLElement & { settled: Promise<void> }>(tags.join())) {
        const root = element.shadowRoot!;
        for (const details of root.querySelectorAll('details')) details.open = true;
        // What a fold fetches it fetches when it has been told that it is open.
        await new Promise((resolve) => setTimeout(resolve, 50));
        await element.settled;
        await new Promise((resolve) => setTimeout(resolve, 100));
        for (const part of root.querySelectorAll('*')) {
          if (part.closest('svg, .chart') || !part.checkVisibility() || !part.textContent.trim()) continue;
          const names: string[] = [];
          for (let at: Element | null = part; at; at = at.parentElement)
            names.unshift(`${at.localName}.${at.className}`);
          found[[element.localName, ...names].join(' ')] = Number(getComputedStyle(part).fontSize.replace('px', ''));
        }
      }
      return found;
    },
    TAGS as readonly string[] as string[],
  );

/** What is wider than its element, or than the box that its text stands in. */
const cut = (page: Page) =>
  page.evaluate(
    (tags) => {
      const bad: string[] = [];
      if (document.documentElement.scrollWidth > innerWidth)
        bad.push(`the page is ${document.documentElement.scrollWidth} px wide`);
      for (const element of document.querySelectorAll(tags.join())) {
        const { left, right } = element.getBoundingClientRect();
        for (const part of element.shadowRoot!.querySelectorAll('*')) {
          if (!part.checkVisibility() || part.closest('svg, .visually-hidden')) continue;
          // What scrolls in its own box is not cut off.
          let at = part.parentElement;
          while (at && !/auto|scroll/.test(getComputedStyle(at).overflowX)) at = at.parentElement;
          if (at) continue;
          const box = part.getBoundingClientRect();
          if (box.width > 1 && (box.right > right + 1 || box.left < left - 1))
            bad.push(`${element.localName}: ${part.outerHTML.slice(0, 80)}`);
        }
      }
      return bad;
    },
    TAGS as readonly string[] as string[],
  );

describe('a reader who has set text to 32 px', () => {
  it('has all of it twice as large, in every element, on a phone and on a wide screen, and nothing cut off', async () => {
    for (const options of [PHONE, DESKTOP]) {
      // Wide enough for one column in either: a sheet of two columns has other sizes.
      const around = 'style="max-width: 700px"';
      const [before, after] = await Promise.all(
        [usual, large].map((browser) =>
          open(browser, options, { around }, async (page) => ({ sizes: await sizes(page), cut: await cut(page) })),
        ),
      );
      const both = Object.keys(before!.sizes).filter((part) => after!.sizes[part] !== undefined);
      expect(both.length).toBeGreaterThan(200);
      for (const part of both) expect(after!.sizes[part]! / before!.sizes[part]!, part).toBeCloseTo(2, 2);
      expect([before!.cut, after!.cut]).toEqual([[], []]);
    }
  });

  it('has the words of pictures larger where there is room, and no touch target smaller', async () => {
    const look = (page: Page) =>
      page.evaluate(async () => {
        const root = document.querySelector('bumpline-lowering')!.shadowRoot!;
        root.querySelector('.chart')!.scrollIntoView();
        while (!root.querySelector('.chart svg')) await new Promise((resolve) => setTimeout(resolve, 50));
        const height = (selector: string) => root.querySelector(selector)!.getBoundingClientRect().height;
        const targets = [...root.querySelectorAll('.drawing button, .sentence input, .own, summary')].map((target) =>
          Math.min(target.getBoundingClientRect().height, target.getBoundingClientRect().width),
        );
        return { drawn: height('.drawing text'), charted: height('.chart .tick'), least: Math.min(...targets) };
      });
    for (const [options, times] of [
      [DESKTOP, 2],
      [PHONE, 1],
    ] as const) {
      const [before, after] = await Promise.all([usual, large].map((browser) => open(browser, options, {}, look)));
      expect(after!.drawn / before!.drawn).toBeGreaterThan(0.9 * times);
      expect(after!.charted / before!.charted).toBeGreaterThan(0.9 * times);
      expect(after!.least).toBeGreaterThanOrEqual(44);
    }
  });
});

it.each<[what: string, host: Host]>([
  ['a root of 62.5 %', { head: '<style>html { font-size: 62.5% }</style>' }],
  ['a root of 200 %', { head: '<style>html { font-size: 200% }</style>' }],
  ['an article in 20 px', { around: 'style="font-size: 20px"' }],
  ['a rule for every element', { head: '<style>* { font-size: 11px; line-height: 1 }</style>' }],
])('a page with %s leaves the sizes of every element as they are', async (_what, host) => {
  const plain = await open(usual, PHONE, {}, sizes);
  expect(await open(usual, PHONE, host, sizes)).toEqual(plain);
});

describe('the colours of every element are those of the page’s scheme', () => {
  const LIGHT = 'rgb(248, 248, 244)';
  const DARK = 'rgb(17, 22, 28)';
  /** Ground and ink of each element. */
  const looks = (page: Page) =>
    page.evaluate(
      (tags) =>
        [...document.querySelectorAll(tags.join())].map((element) => {
          const root = element.shadowRoot!;
          const { color } = getComputedStyle(root.querySelector('.sentence')!);
          const { backgroundColor } = getComputedStyle(element);
          return { backgroundColor, isDarkInk: color === 'rgb(24, 33, 43)' };
        }),
      TAGS as readonly string[] as string[],
    );
  const style = (css: string): Host => ({ head: `<style>${css}</style>` });

  it.each<[what: string, system: 'light' | 'dark', host: Host, expected: string]>([
    ['nothing said, on a dark system', 'dark', {}, LIGHT],
    ['light, on a dark system', 'dark', style(':root { color-scheme: light }'), LIGHT],
    ['only light, on a dark system', 'dark', style(':root { color-scheme: only light }'), LIGHT],
    ['dark, on a light system', 'light', style(':root { color-scheme: dark }'), DARK],
    ['light dark, on a light system', 'light', style(':root { color-scheme: light dark }'), LIGHT],
    ['light dark, on a dark system', 'dark', style(':root { color-scheme: light dark }'), DARK],
    ['dark light, on a light system', 'light', style(':root { color-scheme: dark light }'), LIGHT],
    ['dark by a meta element', 'light', { head: '<meta name="color-scheme" content="dark">' }, DARK],
    ['light dark by a meta element', 'dark', { head: '<meta name="color-scheme" content="light dark">' }, DARK],
    ['light by a meta element', 'dark', { head: '<meta name="color-scheme" content="light">' }, LIGHT],
    ['dark around the elements alone', 'light', { around: 'style="color-scheme: dark"' }, DARK],
    [
      'light around the elements of a dark page',
      'dark',
      { html: 'style="color-scheme: dark"', around: 'style="color-scheme: light"' },
      LIGHT,
    ],
    ['dark on the elements themselves', 'light', { attributes: 'style="color-scheme: dark"' }, DARK],
    [
      'light by attribute on a dark page',
      'dark',
      { html: 'style="color-scheme: dark"', attributes: 'theme="light"' },
      LIGHT,
    ],
    [
      'dark by attribute on a light page',
      'light',
      { html: 'style="color-scheme: light"', attributes: 'theme="dark"' },
      DARK,
    ],
    [
      'dark by attribute, against a rule for every element',
      'light',
      { ...style('* { color-scheme: light }'), attributes: 'theme="dark"' },
      DARK,
    ],
  ])('%s', async (_what, colorScheme, host, expected) => {
    // All elements have one sheet of colours: one of them tells, and the open page below asks all four.
    const found = await open(usual, { ...PHONE, colorScheme }, { ...host, tags: ['bumpline-lowering'] }, looks);
    expect(found).toHaveLength(1);
    for (const { backgroundColor, isDarkInk } of found) {
      expect(backgroundColor).toBe(expected);
      expect(isDarkInk).toBe(expected === LIGHT);
    }
  });

  it('follow a page that changes its scheme while it is open', async () => {
    await open(usual, PHONE, style(':root { color-scheme: light }'), async (page) => {
      await page.evaluate(() => document.documentElement.style.setProperty('color-scheme', 'dark'));
      for (const { backgroundColor } of await looks(page)) expect(backgroundColor).toBe(DARK);
    });
  });

  it('in a frame are those of the page in the frame', async () => {
    const inner = pageOf(style(':root { color-scheme: dark }')).replaceAll('&', '&amp;').replaceAll('"', '&quot;');
    const outer = `<!doctype html><html><head><script type="module" src="/bumpline.js"></script></head><body><iframe srcdoc="${inner}"></iframe></body></html>`;
    await open(usual, { ...PHONE, colorScheme: 'light' }, outer, async (page) => {
      const frame = page.frames()[1]!;
      await frame.waitForFunction(() =>
        document.querySelector('bumpline-lowering')?.shadowRoot?.querySelector('.sentence'),
      );
      expect(
        await frame.evaluate(() => getComputedStyle(document.querySelector('bumpline-lowering')!).backgroundColor),
      ).toBe(DARK);
    });
  });
});
