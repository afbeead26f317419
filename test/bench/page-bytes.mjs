/**
 * What a reader of each page downloads: `node test/bench/page-bytes.mjs` prints requests and bytes until the first answer and until
 * nothing more comes, untouched, beside aims and limits; with `--files` which. Needs `npm run build:site`. They are counted, not timed:
 * what is asked for before an answer is the same on every machine.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { brotliCompressSync, constants } from 'node:zlib';
import { chromium } from 'playwright-core';
import { browser as findBrowser } from '../browser.mjs';
import { serve } from '../serve.mjs';

const url = (relative) => new URL(`../../${relative}`, import.meta.url);
const SITE = fileURLToPath(url('dist/site/'));
/** ms without a request after which nothing more is awaited. */
const QUIET_MS = 1500;

/**
 * By the page's path: requests before the first answer, and brotli bytes of scripts until then and in all. The limits are what the
 * tests hold, a few percent above what was measured; the aims are what is wanted, where somebody has said it.
 */
export const LIMITS = {
  'what-lowering-does-to-camber/': {
    aim: { requests: 6, answer: 36_000, idle: 64_000 },
    limit: { requests: 9, answer: 58_000, idle: 132_000 },
  },
  'how-much-bump-is-left/': {
    limit: { requests: 9, answer: 58_000, idle: 132_000 },
  },
  'will-it-clear-at-full-bump/': {
    limit: { requests: 8, answer: 72_000, idle: 161_000 },
  },
  'height-or-part/': {
    limit: { requests: 10, answer: 82_500, idle: 152_500 },
  },
  'what-a-lower-ball-joint-does/': {
    limit: { requests: 7, answer: 65_000, idle: 149_500 },
  },
  'measure-your-own-camber-curve/': {
    limit: { requests: 7, answer: 45_500, idle: 107_500 },
  },
  'measure-once-predict-the-rest/': {
    limit: { requests: 7, answer: 83_500, idle: 177_000 },
  },
  'the-wheel-that-steers-itself/': {
    limit: { requests: 7, answer: 67_500, idle: 160_500 },
  },
  'ways-to-add-camber/': {
    limit: { requests: 7, answer: 66_500, idle: 166_000 },
  },
  'camber-in-the-turn/': {
    limit: { requests: 7, answer: 68_500, idle: 155_500 },
  },
  'put-it-in-your-article/': {
    limit: { requests: 11, answer: 69_000, idle: 143_000 },
  },
};

const hasElement = (path) => /<bumpline-/.test(readFileSync(url(`site/${path}index.html`), 'utf8'));
/** Those of site/pages.json with an element. */
export const PAGES = JSON.parse(readFileSync(url('site/pages.json'), 'utf8')).flatMap(({ path }) =>
  hasElement(path) ? path : [],
);

const sizes = new Map();
/** As a server sends it that compresses once, in advance. */
function brotli(file) {
  if (!sizes.has(file)) {
    const body = readFileSync(`${SITE}${file}`);
    const params = { [constants.BROTLI_PARAM_QUALITY]: 11, [constants.BROTLI_PARAM_SIZE_HINT]: body.length };
    sizes.set(file, brotliCompressSync(body, { params }).length);
  }
  return sizes.get(file);
}

/** Brotli bytes of those that end so. */
const weigh = (files, end) => files.reduce((sum, file) => sum + (file.endsWith(end) ? brotli(file) : 0), 0);

/**
 * Opens a page of the built site untouched, nothing in the cache.
 *
 * @param {import('playwright-core').Browser} browser
 * @param {string} origin where the built site is served
 * @param {string} path of the page
 */
export async function measurePage(browser, origin, path) {
  const context = await browser.newContext({ viewport: { width: 360, height: 780 } });
  const page = await context.newPage();
  await page.addInitScript(() => {
    addEventListener('bumpline-answer', () => {
      globalThis.answeredAt ??= performance.now();
    });
  });
  let last = Date.now();
  for (const event of ['request', 'requestfinished', 'requestfailed']) {
    page.on(event, () => {
      last = Date.now();
    });
  }
  await page.goto(`${origin}/${path}`);
  await page.waitForFunction(() => globalThis.answeredAt !== undefined);
  await page.evaluate(() =>
    Promise.all([...document.querySelectorAll('*')].map((one) => one.localName.startsWith('bumpline-') && one.settled)),
  );
  while (Date.now() - last < QUIET_MS) await page.waitForTimeout(QUIET_MS / 10);
  const { answeredAt, entries } = await page.evaluate(() => ({
    answeredAt: globalThis.answeredAt,
    entries: performance.getEntriesByType('resource').map(({ name, startTime }) => ({ name, startTime })),
  }));
  await context.close();
  const asked = entries
    .map(({ name, startTime }) => ({ file: new URL(name).pathname.slice(1), startTime }))
    .filter(({ file }) => /\.(?:js|css)$/.test(file));
  const early = asked.filter(({ startTime }) => startTime <= answeredAt).map(({ file }) => file);
  const files = asked.map(({ file }) => file);
  return {
    early,
    files,
    requests: early.length,
    answer: weigh(early, '.js'),
    idle: weigh(files, '.js'),
    styles: weigh(files, '.css'),
  };
}

/** All pages with elements, one after another, each as by a reader who comes from elsewhere. */
export async function measurePages() {
  const [browser, site] = await Promise.all([chromium.launch(await findBrowser()), serve({ folders: { '/': SITE } })]);
  try {
    const found = {};
    for (const path of PAGES) found[path] = await measurePage(browser, site.origin, path);
    return found;
  } finally {
    await Promise.all([browser.close(), site.close()]);
  }
}

async function report() {
  const walked = new Set();
  for (const [path, { early, files, styles, ...measured }] of Object.entries(await measurePages())) {
    const { aim = {}, limit = {} } = LIMITS[path] ?? {};
    const part = (name, unit) => `${measured[name]}${unit} (aim ${aim[name] ?? '–'}, limit ${limit[name] ?? '–'})`;
    console.log(
      `${path.padEnd(31)} answer: ${part('requests', '')} requests, ${part('answer', ' B')}; untouched: ${files.length} requests, ${part('idle', ' B')}; styles ${styles} B`,
    );
    if (process.argv.includes('--files'))
      for (const file of files) console.log(`  ${early.includes(file) ? '*' : ' '} ${file} ${brotli(file)}`);
    for (const file of files) walked.add(file);
  }
  console.log(
    `${'all of them in one walk'.padEnd(31)} ${walked.size} requests, ${weigh([...walked], '.js')} B of scripts`,
  );
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) await report();
