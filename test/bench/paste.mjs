import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { browserInWords, browser as findBrowser } from '../browser.mjs';
import { serve } from '../serve.mjs';

/*
 * How long a slow phone takes from a sheet pasted (5 passes × 60 readings) to its preview, and from "use these" to the chart
 * redrawn; then of two sets of parts with three passes each and their averages. 360 × 780, CPU throttled four times by the DevTools protocol, which does not reach workers; so the main-thread mode is
 * measured too. First with nothing of the paste sheet loaded, then again. Printed, never asserted.
 */
const THROTTLE = 4;
const RUNS = 7;
const PAGE = process.env.PASTE_PAGE ?? '/measure-your-own-camber-curve/';
const ms = (value) => `${value.toFixed(0)} ms`.padStart(7);
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

/** Two sets of parts, three passes each and an average beside them, another sheet for each run. */
function setsSheet(run) {
  const rows = [
    ['Wheel travel (mm)', 'Stock 1', 'Stock 2', 'Stock 3', 'Stock avg', 'Low 1', 'Low 2', 'Low 3', 'Low avg'],
  ];
  for (let i = 0; i < 37; i++) {
    const travel = -40 + i * 2.5;
    const cells = [0.014, 0.018].flatMap((slope) => {
      const passes = [0, 1, 2].map((pass) =>
        (-0.6 - slope * travel + 1.1e-4 * travel ** 2 + 0.03 * Math.sin(i * 7 + pass * 13 + run) + pass * 0.01).toFixed(
          2,
        ),
      );
      return [...passes, (passes.reduce((sum, cell) => sum + Number(cell), 0) / 3).toFixed(3)];
    });
    rows.push([travel.toFixed(1), ...cells]);
  }
  return rows.map((row) => row.join('\t')).join('\n');
}

/** A sheet with semicolons and decimal commas, another one for each run. */
function sheet(run) {
  const rows = [['Wheel travel (mm)', '1 up', '2 down', '3 up', '4 down', '5 up']];
  for (let i = 0; i < 60; i++) {
    const travel = -40 + i * 1.75;
    const cells = [0, 1, 2, 3, 4].map((pass) => {
      const value =
        -0.6 - 0.014 * travel + 1.1e-4 * travel ** 2 + 0.03 * Math.sin(i * 7 + pass * 13 + run) + pass * 0.01;
      return value.toFixed(2).replace('.', ',');
    });
    rows.push([travel.toFixed(2).replace('.', ','), ...cells]);
  }
  return rows.map((row) => row.join(';')).join('\n');
}

/** In the page: pastes a text into the element and waits for the preview; then takes it and waits for a new chart. */
async function pasteAndTake(text) {
  const element = document.querySelector('bumpline-readings');
  const root = element.shadowRoot;
  const painted = () => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
  const until = async (is) => {
    while (!is()) await new Promise((resolve) => setTimeout(resolve));
    await painted();
  };
  const curve = () => root.querySelector('.chart-sheet .line')?.getAttribute('d');
  const data = new DataTransfer();
  data.setData('text/plain', text);
  const start = performance.now();
  element.dispatchEvent(
    new ClipboardEvent('paste', { clipboardData: data, bubbles: true, composed: true, cancelable: true }),
  );
  const button = () =>
    [...root.querySelectorAll('dialog[open] button')].find(({ textContent }) =>
      /^\s*(Use these (?:300|2 sets)|Replace)/.test(textContent),
    );
  await until(() => button() && root.querySelectorAll('dialog[open] table td').length > 50);
  const previewed = performance.now();
  await new Promise((resolve) => setTimeout(resolve, 300));
  const before = curve();
  const pressed = performance.now();
  button().click();
  await new Promise((resolve) => setTimeout(resolve));
  const replace = [...root.querySelectorAll('dialog[open] button')].find(({ textContent }) =>
    /Replace/.test(textContent),
  );
  replace?.click();
  await until(() => curve() !== before);
  return { preview: previewed - start, chart: performance.now() - pressed };
}

export async function paste() {
  const site = await serve({ folders: { '/': fileURLToPath(new URL('../../dist/site', import.meta.url)) } });
  const how = await findBrowser();
  const browser = await chromium.launch(how);
  console.log(`In ${browserInWords(browser, how)}:`);
  try {
    for (const mainThread of [false, true]) {
      const context = await browser.newContext({
        viewport: { width: 360, height: 780 },
        hasTouch: true,
        isMobile: true,
      });
      const page = await context.newPage();
      if (mainThread) {
        await page.addInitScript(() => {
          globalThis[Symbol.for('bumpline.main-thread')] = true;
        });
      }
      const session = await context.newCDPSession(page);
      await session.send('Emulation.setCPUThrottlingRate', { rate: THROTTLE });
      await page.goto(`${site.origin}${PAGE}`);
      await page.waitForFunction(() =>
        document.querySelector('bumpline-readings')?.shadowRoot?.querySelector('.chart-sheet .line'),
      );
      await page.waitForTimeout(1500);
      const found = [];
      const sets = [];
      for (let run = 0; run < 2 * RUNS; run++) {
        const isSets = run >= RUNS;
        (isSets ? sets : found).push(await page.evaluate(pasteAndTake, (isSets ? setsSheet : sheet)(run)));
        await page.waitForTimeout(600);
      }
      const [first, ...rest] = found;
      const ofSets = (what) => ms(median(sets.map((one) => one[what])));
      const of = (what) => ms(median(rest.map((one) => one[what])));
      console.log(
        `${mainThread ? 'main thread' : 'worker     '}  first, nothing loaded: paste to preview ${ms(first.preview)} (budget 400 to the chart)` +
          `  take to chart ${ms(first.chart)}   then: paste to preview ${of('preview')}  take to chart ${of('chart')} (budget 100)` +
          `   two sets and averages: paste to preview ${ofSets('preview')}  take to chart ${ofSets('chart')}`,
      );
      await context.close();
    }
  } finally {
    await browser.close();
    await site.close();
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await paste();
