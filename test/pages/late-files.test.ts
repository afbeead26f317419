import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page, type Route } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { browser as findBrowser } from '../browser.mjs';
import { referenceCorner } from '../core/linkage/reference-corner.js';
import { serve } from '../serve.mjs';

/*
 * Files that fail or hang on the way, of the small entry that fetches the rest: what was lost is tried again when the connection is
 * back, or when the element is; a reader is told; and `settled` always resolves.
 */

const dist = (part: string) => fileURLToPath(new URL(`../../dist/${part}`, import.meta.url));
const TAGS = ['bumpline-lowering', 'bumpline-readings', 'bumpline-compare', 'bumpline-clearance'] as const;
const PAGE = `<!doctype html><html lang="en"><title>Late</title><script type="module" src="/cdn/bumpline.js"></script>
<main>${TAGS.map((tag) => `<${tag} keep-in-address><p>The author’s words.</p></${tag}>`).join('\n')}</main>`;
/** Slower than what counts as lost, and by how much at most, ms. */
const LOST_MS = 10_000;

let browser: Browser;
let site: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  [browser, site] = await Promise.all([
    chromium.launch(await findBrowser()),
    serve({ folders: { '/cdn/': dist('cdn') } }),
  ]);
});
afterAll(() => Promise.all([browser?.close(), site?.close()]));

async function open(files: RegExp, meet: (route: Route) => unknown, hash = ''): Promise<Page> {
  const page = await (await browser.newContext({ viewport: { width: 360, height: 780 } })).newPage();
  await page.route('**/page', (route) => route.fulfill({ contentType: 'text/html', body: PAGE }));
  await page.route(files, (route) => void meet(route));
  await page.goto(`${site.origin}/page${hash}`);
  return page;
}

/** What `settled` of each element came to, and after how long. */
const settle = (page: Page) =>
  page.evaluate(async (tags) => {
    const from = performance.now();
    const each = tags.map(async (tag) => {
      await customElements.whenDefined(tag);
      return (document.querySelector(tag) as unknown as { settled: Promise<void> }).settled.then(
        () => 'resolved',
        () => 'rejected',
      );
    });
    return { outcomes: await Promise.all(each), took: performance.now() - from };
  }, TAGS);

const look = (page: Page) =>
  page.evaluate(
    (tags) =>
      tags.map((tag) => {
        const element = document.querySelector(tag) as HTMLElement & { state: string; answer: unknown };
        const root = element.shadowRoot!;
        return {
          state: element.state,
          hasAnswer: element.answer !== undefined,
          hasBody: root.querySelector('.copy-link') !== null,
          words: element.querySelector('p')!.checkVisibility(),
          sign: root.querySelector('.late')?.textContent ?? '',
        };
      }),
    TAGS,
  );

/** The same once it is as wanted: what stands below the window is rendered in its turn. */
async function lookUntil(page: Page, isAsWanted: (each: Awaited<ReturnType<typeof look>>) => boolean) {
  for (let i = 0; i < 30; i++) {
    const found = await look(page);
    if (isAsWanted(found)) return found;
    await page.waitForTimeout(100);
  }
  return look(page);
}
const areTold = (what: RegExp) => (each: Awaited<ReturnType<typeof look>>) => each.every(({ sign }) => what.test(sign));
const areWhole = (each: Awaited<ReturnType<typeof look>>) =>
  each.every(({ hasAnswer, hasBody, sign }) => hasAnswer && hasBody && sign === '');

const online = (page: Page) => page.evaluate(() => void dispatchEvent(new Event('online')));
const move = (page: Page) =>
  page.evaluate((tags) => {
    const aside = document.querySelector('aside') ?? document.body.appendChild(document.createElement('aside'));
    for (const tag of tags) aside.append(document.querySelector(tag)!);
  }, TAGS);

const FILES: [what: string, files: RegExp][] = [
  ['apps', /-app-[\w-]+\.js$/],
  ['bodies', /-body-[\w-]+\.js$/],
  ['what reads the address', /\/address-[\w-]+\.js$/],
];

describe.each(FILES)('%s', (what, files) => {
  it.each([
    ['the connection is back', online],
    ['the element is put elsewhere', move],
  ])('that cannot come are told, and come when %s', async (_how, again) => {
    const context = await browser.newContext({ viewport: { width: 360, height: 780 } });
    const offline = await context.newPage();
    // What a browser says of its connection, before it asks for any of them.
    await offline.addInitScript(() => {
      let isOnline = false;
      Object.defineProperty(navigator, 'onLine', { get: () => isOnline });
      addEventListener('online', () => (isOnline = true), true);
      Object.assign(globalThis, { connect: () => (isOnline = true) });
    });
    let isBroken = true;
    await offline.route('**/page', (route) => route.fulfill({ contentType: 'text/html', body: PAGE }));
    await offline.route(files, (route) => void (isBroken ? route.abort() : route.continue()));
    await offline.goto(`${site.origin}/page`);
    expect((await settle(offline)).outcomes).toEqual(TAGS.map(() => 'resolved'));
    const before = await (what === 'what reads the address'
      ? look(offline)
      : lookUntil(offline, areTold(/could not be fetched/)));
    const isTold = before.map(({ words, hasAnswer, sign }) => [words, hasAnswer, /could not be fetched/.test(sign)]);
    if (what === 'apps') expect(isTold).toEqual(TAGS.map(() => [true, false, true]));
    if (what === 'bodies') expect(isTold).toEqual(TAGS.map(() => [false, true, true]));
    isBroken = false;
    await offline.evaluate(() => (globalThis as unknown as { connect(): void }).connect());
    await again(offline);
    await offline.waitForTimeout(500);
    expect((await settle(offline)).outcomes).toEqual(TAGS.map(() => 'resolved'));
    const after = await lookUntil(offline, areWhole);
    expect(after.map(({ hasAnswer, hasBody, sign }) => [hasAnswer, hasBody, sign])).toEqual(
      TAGS.map(() => [true, true, '']),
    );
    await context.close();
  });

  it('that fail with the connection there are told as well, and keep nobody waiting', async () => {
    const page = await open(files, (route) => route.abort());
    const { outcomes, took } = await settle(page);
    expect(outcomes).toEqual(TAGS.map(() => 'resolved'));
    expect(took).toBeLessThan(LOST_MS);
    if (what !== 'what reads the address') {
      expect(
        (await lookUntil(page, areTold(/could not be fetched/))).map(({ sign }) => /could not be fetched/.test(sign)),
      ).toEqual(TAGS.map(() => true));
    }
    await page.context().close();
  });

  it('that hang are told after a while, count as lost in the end, and are taken when they come', async () => {
    const held: Route[] = [];
    let isHeld = true;
    const page = await open(files, (route) => (isHeld ? held.push(route) : route.continue()));
    await page.waitForTimeout(5500);
    if (what !== 'what reads the address') {
      expect((await lookUntil(page, areTold(/still loading/))).map(({ sign }) => /still loading/.test(sign))).toEqual(
        TAGS.map(() => true),
      );
    }
    const { outcomes, took } = await settle(page);
    expect(outcomes).toEqual(TAGS.map(() => 'resolved'));
    expect(took).toBeLessThan(2 * LOST_MS);
    if (what !== 'what reads the address') {
      expect(
        (await lookUntil(page, areTold(/could not be fetched/))).map(({ sign }) => /could not be fetched/.test(sign)),
      ).toEqual(TAGS.map(() => true));
    }
    isHeld = false;
    for (const route of held) await route.continue();
    await online(page);
    await page.waitForTimeout(1500);
    await settle(page);
    expect((await lookUntil(page, areWhole)).map(({ hasAnswer, hasBody, sign }) => [hasAnswer, hasBody, sign])).toEqual(
      TAGS.map(() => [true, true, '']),
    );
    await page.context().close();
  }, 60_000);
});

it('layers of the core that failed are a fault that is told, and come when the connection is back', async () => {
  let isBroken = true;
  // A car known by its points (test/reference/derived_strut_3d.json), whose solver no first answer brings along.
  const page = await open(/\/points[\w.-]*\.js$/, (route) => (isBroken ? route.abort() : route.continue()));
  await settle(page);
  await page.evaluate(() => {
    let isOnline = false;
    Object.defineProperty(navigator, 'onLine', { get: () => isOnline });
    addEventListener('online', () => (isOnline = true), true);
  });
  await page.evaluate((corner) => {
    (document.querySelector('bumpline-lowering') as HTMLElement & { corner: unknown }).corner = corner;
  }, referenceCorner);
  await settle(page);
  expect((await look(page))[0]!.state).toBe('fault');
  isBroken = false;
  await online(page);
  await page.waitForTimeout(300);
  await settle(page);
  expect((await look(page))[0]!.state).toBe('ready');
  await page.context().close();
});
