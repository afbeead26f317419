import { readFileSync, writeFileSync } from 'node:fs';
import { availableParallelism, loadavg } from 'node:os';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { browserInWords, browsers, browser as findBrowser } from '../browser.mjs';
import { serve } from '../serve.mjs';
import { compareFourByFour, watch } from './in-page.mjs';
import { quantile as quantileOf } from './in-turn.mjs';
import { buildPeer } from './peer/build-peer.mjs';

/**
 * The pages that the benches in a browser open, on one server, and a phone to open them on. Each element stands in its article as it
 * was built; the peer (`peer/`) stands alone, and in the article of the first in the list in the element's place.
 */

const path = (relative) => fileURLToPath(new URL(`../../${relative}`, import.meta.url));
const elements = JSON.parse(readFileSync(path('components/elements.json'), 'utf8'));
const PREPARE = { 'bumpline-compare': compareFourByFour };
const HOST_ARTICLE = 'what-lowering-does-to-camber';

/** @typedef {{ name: string, tag: string, url: string, isDragged: boolean, prepare?: () => Promise<void> }} Target */

/** What a time is a ratio to. */
export const PEER = { name: 'peer, bare', tag: 'reference-peer', url: 'peer/bare.html', isDragged: true };
/** @type {Target[]} */
export const TARGETS = [
  PEER,
  { name: 'peer in an article', tag: 'reference-peer', url: `with-peer/${HOST_ARTICLE}/`, isDragged: true },
  ...elements
    .filter(({ article }) => article !== undefined)
    .map(({ tag, article, isDragged = false }) => ({
      name: tag,
      tag,
      url: `${article}/`,
      isDragged,
      prepare: PREPARE[tag],
    })),
];

const withPeer = (html) =>
  html
    .replace(/<script type="module"[^>]*><\/script>/g, '')
    .replace(/<link rel="modulepreload"[^>]*>/g, '')
    .replace(
      /<bumpline-lowering[\s\S]*?<\/bumpline-lowering>/,
      '<script type="module" src="/peer/reference-peer.js"></script><reference-peer></reference-peer>',
    );

/**
 * One server with the built site, the cdn build under /cdn/, and the peer under /peer/.
 *
 * @param {Record<string, string>} [bodies] further pages under /peer/, what stands in their body by their name
 */
export async function servePages(bodies = {}) {
  const peer = await buildPeer();
  for (const [name, body] of Object.entries(bodies)) {
    const head =
      '<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width">';
    writeFileSync(`${peer}/${name}.html`, `${head}<title>${name}</title><body>${body}</body></html>`);
  }
  return serve({
    folders: {
      '/': path('dist/site'),
      '/cdn/': path('dist/cdn'),
      '/with-peer/': path('dist/site'),
      '/peer/': peer,
    },
    fill: (url, html) => (url.startsWith('/with-peer/') ? withPeer(html) : html),
    isCompressed: true,
  });
}

/** @returns the browser that is there, and says which it is */
export async function launch() {
  const how = await findBrowser();
  const browser = await chromium.launch(how);
  console.log(`In ${browserInWords(browser, how)}:`);
  return browser;
}

/** @returns every browser that there is, the bundled one first, with its name in words */
export async function launchAll() {
  return Promise.all(
    (await browsers()).map(async (how) => {
      const browser = await chromium.launch(how);
      return { browser, name: browserInWords(browser, how) };
    }),
  );
}

/** What else the machine does, for who reads a time: a load above the number of its cores slows everything. */
export const loadInWords = () =>
  `load ${loadavg()
    .map((one) => one.toFixed(1))
    .join(', ')} over 1, 5 and 15 minutes, ${availableParallelism()} cores`;

/** A phone: 360 × 780, its thread slowed down by the DevTools protocol, which does not reach workers. */
export async function phone(browser, { throttle = 4, isMainThread = false, line } = {}) {
  const context = await browser.newContext({ viewport: { width: 360, height: 780 }, hasTouch: true, isMobile: true });
  const page = await context.newPage();
  await page.addInitScript(watch);
  if (isMainThread) {
    await page.addInitScript(() => {
      globalThis[Symbol.for('bumpline.main-thread')] = true;
    });
  }
  const session = await context.newCDPSession(page);
  if (throttle > 1) await session.send('Emulation.setCPUThrottlingRate', { rate: throttle });
  if (line) {
    await session.send('Network.enable');
    await session.send('Network.emulateNetworkConditions', { offline: false, ...line });
  }
  return { page, session, close: () => context.close() };
}

/** Seconds that the page's thread has worked so far. */
export async function threadTime(session) {
  await session.send('Performance.enable');
  const { metrics } = await session.send('Performance.getMetrics');
  return metrics.find(({ name }) => name === 'TaskDuration').value;
}

export const quantile = (values, share) =>
  quantileOf(
    [...values].sort((a, b) => a - b),
    share,
  );
