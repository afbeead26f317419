import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { browserInWords, browser as findBrowser } from '../browser.mjs';
import { serve } from '../serve.mjs';
import { isLookedAt } from './site-source.js';

interface PageFacts {
  overflow(): string[];
  textOverlaps(): string[];
  textOnStrokes(): string[];
  smallTargets(): string[];
  textFieldsInView(): string[];
  nameless(): string[];
  besideOthers(): string[];
  settled(): Promise<number>;
  links(): string[];
}
type WithFacts = typeof globalThis & { pageFacts: PageFacts };

const path = (relative: string) => fileURLToPath(new URL(relative, import.meta.url));
const dist = path('../../dist/site');
const screenshots = path('../.screenshots');
const facts = readFileSync(path('page-facts.js'), 'utf8');
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const { version } = JSON.parse(readFileSync(path('../../package.json'), 'utf8')) as { version: string };

/** Not at the top of its server, as on many a free host. */
const PREFIX = '/some/sub/path/';
const built = readdirSync(dist, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.html'))
  .map((file) => file.replaceAll('\\', '/').replace(/index\.html$/, ''))
  .sort();
/** Those in frames are one page, but for the element, which is looked at in its article; of those about the elements two do. */
const pages = built.filter((name) => (!name.startsWith('embed/') || name === 'embed/lowering/') && isLookedAt(name));

/** Left to the page around a frame, which has a heading and a main part already. */
const PAGES_ALONE = Object.fromEntries(
  ['landmark-one-main', 'page-has-heading-one', 'region'].map((rule) => [rule, { enabled: false }]),
);

let browser: Browser;
let site: Awaited<ReturnType<typeof serve>>;
let used: string;

beforeAll(async () => {
  mkdirSync(screenshots, { recursive: true });
  const how = await findBrowser();
  [browser, site] = await Promise.all([chromium.launch(how), serve({ folders: { [PREFIX]: dist } })]);
  used = browserInWords(browser, how);
  console.log(`Pages are laid out in ${used}.`);
});
afterAll(() => Promise.all([browser?.close(), site?.close()]));

/** Opens a page and waits until its elements have settled. `complaints`: what its console and its server had to say against it. */
async function open(name: string, options: BrowserContextOptions = {}) {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(`${message.type()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('response', (response) => {
    if (response.status() >= 400) complaints.push(`${response.status()} ${response.url()}`);
  });
  page.on('request', (request) => {
    const url = request.url();
    if (!/^(data|blob):/.test(url) && !url.startsWith(site.origin)) complaints.push(`asks another origin: ${url}`);
  });
  await page.goto(site.origin + PREFIX + name);
  await page.evaluate(facts);
  return { context, page, complaints };
}

const ask = <T>(page: Page, question: keyof PageFacts) =>
  page.evaluate((name) => (globalThis as WithFacts).pageFacts[name]() as unknown, question) as Promise<T>;

it('the browser is told by name, version and program file: what fits depends on them', () => {
  expect(used).toMatch(/^(?:Chromium|Chrome|Edge) \d+\.\d+\S* \(.+\)$/);
  expect(used).toContain(browser.version());
});

it('the site has pages', () => {
  expect(pages).toContain('');
  expect(pages.length).toBeGreaterThan(1);
});

it.each([320, 360, 640])(
  'the navigation holds more pages than there are: none scrolls sideways at %i px',
  async (width) => {
    const { page, context } = await open('', { viewport: { width, height: 780 } });
    await ask(page, 'settled');
    await page.evaluate(() => {
      const list = document.querySelector('.masthead ul')!;
      for (const name of ['Bushes', 'Roll', 'Steering', 'Dampers']) {
        const row = list.querySelector('li')!.cloneNode(true) as HTMLElement;
        row.querySelector('a')!.textContent = name;
        list.append(row);
      }
    });
    expect.soft(await ask(page, 'overflow')).toEqual([]);
    expect.soft(await ask(page, 'textOverlaps')).toEqual([]);
    expect.soft(await ask(page, 'smallTargets')).toEqual([]);
    await page.screenshot({ path: `${screenshots}/navigation${width}.png` });
    await context.close();
  },
);

interface AxeResult {
  violations: { id: string; help: string; nodes: { target: unknown; failureSummary?: string }[] }[];
}

/** Loaded once, then looked at in every width and theme, as a visitor turns a phone or the lights go out. */
describe.each(pages)('page "%s"', (name) => {
  let opened: Awaited<ReturnType<typeof open>>;
  let elements: number;
  let modes: string[];
  beforeAll(async () => {
    opened = await open(name, { viewport: { width: 360, height: 780 }, colorScheme: 'light' });
    await opened.page.evaluate(() => document.fonts.ready);
    elements = await ask<number>(opened.page, 'settled');
    // One for all elements of a page, whatever they ask; one that has had nothing to do for a while is let go.
    modes = await opened.page.evaluate(
      (prefix) =>
        Object.getOwnPropertySymbols(globalThis)
          .filter(({ description }) => description?.startsWith(prefix))
          .map((key) => (globalThis as unknown as Record<symbol, { mode: string }>)[key]!.mode),
      `bumpline.worker/${version}/`,
    );
  });
  afterAll(() => opened?.context.close());

  /* Reserved is what an element opens with: the text below it must not jump when it has come. A wide font (DejaVu Sans) fits. */
  it('no element opens taller than the place that is kept for it by more than two lines of text, at any width', async () => {
    const { page } = opened;
    const taller: string[] = [];
    for (const width of [320, 360, 400, 480, 600, 760, 900, 1200]) {
      await page.setViewportSize({ width, height: 900 });
      await ask(page, 'settled');
      const grown = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('main *')]
          .filter((element) => element.shadowRoot && getComputedStyle(element).display !== 'contents')
          .map((element) => [
            element.localName,
            element.shadowRoot!.querySelector<HTMLElement>('.inside')!.offsetHeight,
            Math.round(parseFloat(getComputedStyle(element, '::before').height)),
          ])
          // Where nothing is kept it is no number, and too little.
          .filter(([, height, kept]) => !((height as number) <= (kept as number) + 2 * 22)),
      );
      taller.push(...grown.map((row) => `${width} px: ${row.join(' ')}`));
    }
    await page.setViewportSize({ width: 360, height: 780 });
    expect(taller).toEqual([]);
  });

  // Where things lie does not depend on the light: the dark is looked at on one page, and by axe on all.
  const looks = [
    { width: 360, colorScheme: 'light' },
    { width: 320, colorScheme: 'light' },
    { width: 1280, colorScheme: 'light' },
    ...(name === pages[1] ? [{ width: 360, colorScheme: 'dark' } as const] : []),
  ] as const;

  it.each(looks)('at $width px, $colorScheme: fits, nothing on top of another, targets large enough', async (look) => {
    const { width, colorScheme } = look;
    const { page, complaints } = opened;
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height: width < 1000 ? 780 : 900 });
    await ask(page, 'settled');
    // Before anything is scrolled: what a visitor first sees.
    const fields = await ask<string[]>(page, 'textFieldsInView');
    const shot = `${name.replaceAll('/', '_') || 'start_'}${width}-${colorScheme}.png`;
    await page.screenshot({ path: `${screenshots}/${shot}`, fullPage: true });
    expect.soft(await ask(page, 'overflow'), 'scrolls sideways').toEqual([]);
    expect.soft(await ask(page, 'textOverlaps'), 'text on text').toEqual([]);
    expect.soft(await ask(page, 'textOnStrokes'), 'text on a line').toEqual([]);
    expect.soft(await ask(page, 'besideOthers'), 'a part of a sheet beside another').toEqual([]);
    expect.soft(await ask(page, 'nameless'), 'pictures without a name').toEqual([]);
    expect.soft(await ask(page, 'smallTargets'), 'targets under 44 px').toEqual([]);
    if (width < 1000) expect.soft(fields.length, `text fields: ${fields}`).toBeLessThanOrEqual(1);
    expect.soft(complaints).toEqual([]);
  });

  it('has nothing for axe to find: all rules in the light, what is a matter of colour in the dark', async () => {
    const { page } = opened;
    await page.setViewportSize({ width: 360, height: 780 });
    // A section that is laid out only when it comes near stands where an estimate puts it, on top of its neighbours.
    await page.addStyleTag({ content: '.text > section { content-visibility: visible !important; }' });
    await page.evaluate(axe);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      await ask(page, 'settled');
      const { violations } = await page.evaluate(
        (options) => (globalThis as unknown as { axe: { run(options: object): Promise<AxeResult> } }).axe.run(options),
        colorScheme === 'light'
          ? { rules: name.startsWith('embed/') ? PAGES_ALONE : {} }
          : { runOnly: ['color-contrast', 'link-in-text-block'] },
      );
      const found = violations.flatMap(({ id, help, nodes }) =>
        nodes.map(({ target, failureSummary }) => `${id}: ${help}; ${JSON.stringify(target)} ${failureSummary ?? ''}`),
      );
      expect.soft(found, colorScheme).toEqual([]);
    }
  });

  it('has links that lead somewhere', async () => {
    const links = new Set((await ask<string[]>(opened.page, 'links')).filter((link) => link.startsWith(site.origin)));
    const dead: string[] = [];
    for (const link of links) {
      const { hash } = new URL(link);
      const response = await fetch(link);
      const text = response.ok ? await response.text() : '';
      if (!response.ok || !link.startsWith(site.origin + PREFIX)) dead.push(link);
      else if (hash && !text.includes(`id="${decodeURIComponent(hash.slice(1))}"`)) dead.push(link);
    }
    expect(dead).toEqual([]);
  });

  it('computes in a worker, minified as it is', () => {
    expect(modes).toEqual(elements > 0 ? ['worker'] : []);
  });
});
