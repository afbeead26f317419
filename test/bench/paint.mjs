import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { browserInWords, browser as findBrowser } from '../browser.mjs';
import { serve } from '../serve.mjs';
import { quantile as quantileOf } from './in-turn.mjs';

/*
 * What a slow phone sees of the built article: 360 × 780, CPU throttled four times by the DevTools protocol. Throttling does not
 * reach workers, so the main-thread mode is measured too: there the solver is throttled with the rest. Printed, never asserted.
 */
const THROTTLE = 4;
const LOADS = 7;
const KEYS = 80;

/** What is done on a page before it is dragged. */
const PREPARE = { 'bumpline-compare': compareFourByFour };
const elements = JSON.parse(readFileSync(new URL('../../components/elements.json', import.meta.url), 'utf8'));
/** The sheets that are dragged, and the pages they open. */
export const SHEETS = elements
  .filter(({ isDragged }) => isDragged)
  .map(({ tag, article }) => ({ tag, page: article, prepare: PREPARE[tag] }));

const quantile = (values, share) =>
  quantileOf(
    [...values].sort((a, b) => a - b),
    share,
  );
const ms = (value) => `${value.toFixed(0)} ms`;

/** Four sets of parts at four heights: the table's columns twice, shifted. */
async function compareFourByFour(page) {
  await page.evaluate(async () => {
    const element = document.querySelector('bumpline-compare');
    for (const row of element.querySelectorAll('tr')) {
      const isHeading = row.closest('thead') !== null;
      for (const cell of [...row.cells].slice(1)) {
        const copy = cell.cloneNode(true);
        copy.textContent = isHeading
          ? cell.textContent.replace('(', 'again (')
          : (Number(cell.textContent.replace('−', '-')) * 0.9).toFixed(3);
        row.append(copy);
      }
    }
    element.setAttribute('heights', '0, 10, 25, 40');
    await new Promise((done) => setTimeout(done, 300));
    await element.settled;
  });
  const cells = await page.evaluate(
    () => document.querySelector('bumpline-compare').shadowRoot.querySelectorAll('.cell-button').length,
  );
  if (cells !== 16) throw new Error(`Four by four are 16 cells, not ${cells}`);
}

/** Runs in the page before anything else: tasks over 50 ms, shifts of layout, and the first sentence. */
function watch() {
  const seen = { tasks: [], shift: 0, first: 0 };
  globalThis.seen = seen;
  new PerformanceObserver((list) => seen.tasks.push(...list.getEntries().map((entry) => entry.duration))).observe({
    type: 'longtask',
    buffered: true,
  });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) if (!entry.hadRecentInput) seen.shift += entry.value;
  }).observe({ type: 'layout-shift', buffered: true });
  addEventListener('bumpline-answer', () => {
    if (!seen.first)
      requestAnimationFrame(() =>
        setTimeout(() => {
          seen.first = performance.now();
        }),
      );
  });
}

async function open(browser, origin, mainThread, sheet) {
  const context = await browser.newContext({ viewport: { width: 360, height: 780 }, hasTouch: true, isMobile: true });
  const page = await context.newPage();
  await page.addInitScript(watch);
  if (mainThread) {
    await page.addInitScript(() => {
      globalThis[Symbol.for('bumpline.main-thread')] = true;
    });
  }
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: THROTTLE });
  await page.goto(`${origin}/${sheet.page}/`);
  await page.waitForFunction(() => globalThis.seen.first > 0);
  await page.evaluate((tag) => document.querySelector(tag).settled, sheet.tag);
  await page.waitForTimeout(800);
  return { page, context };
}

/** Arrow keys on the slider: from the input event to the frame that shows the new value's sentence, of clearance straight ahead. */
async function drag(page, { tag }) {
  await page.evaluate((name) => {
    const root = document.querySelector(name).shadowRoot;
    const slider = root.querySelector('input[type=range]');
    const says = root.querySelector('.says');
    globalThis.delays = [];
    let started = 0;
    slider.addEventListener(
      'input',
      () => {
        started = performance.now();
      },
      { capture: true },
    );
    new MutationObserver(() => {
      const from = started;
      started = 0;
      if (from) requestAnimationFrame(() => setTimeout(() => globalThis.delays.push(performance.now() - from)));
    }).observe(says, { subtree: true, childList: true, characterData: true });
    slider.focus();
  }, tag);
  for (let i = 0; i < KEYS; i++) {
    await page.keyboard.press(i % 40 < 20 ? 'ArrowRight' : 'ArrowLeft');
    await page.waitForTimeout(60);
  }
  return page.evaluate(() => globalThis.delays);
}

export async function paint() {
  const site = await serve({ folders: { '/': fileURLToPath(new URL('../../dist/site', import.meta.url)) } });
  const how = await findBrowser();
  const browser = await chromium.launch(how);
  console.log(`In ${browserInWords(browser, how)}:`);
  try {
    for (const [sheet, mainThread] of SHEETS.flatMap((one) => [false, true].map((mode) => [one, mode]))) {
      const first = [];
      const longest = [];
      let shift = 0;
      let delays = [];
      for (let i = 0; i < LOADS; i++) {
        const { page, context } = await open(browser, site.origin, mainThread, sheet);
        const seen = await page.evaluate(() => globalThis.seen);
        first.push(seen.first);
        longest.push(Math.max(0, ...seen.tasks));
        shift = Math.max(shift, seen.shift);
        if (i === 0) {
          await sheet.prepare?.(page);
          delays = await drag(page, sheet);
        }
        await context.close();
      }
      console.log(
        `${sheet.tag.padEnd(18)} ${mainThread ? 'main thread' : 'worker     '}  cold load to first answer ${ms(quantile(first, 0.5))} (budget 600)` +
          `  longest task ${ms(quantile(longest, 0.5))} (budget 100)  layout shift ${shift.toFixed(4)} (budget 0)` +
          `  input to painted p50 ${ms(quantile(delays, 0.5))}, p95 ${ms(quantile(delays, 0.95))} (budget 50), n = ${delays.length}`,
      );
    }
  } finally {
    await browser.close();
    await site.close();
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await paint();
