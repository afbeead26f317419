import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { browser as findBrowser } from '../browser.mjs';
import { serve } from '../serve.mjs';

/*
 * How long a slow phone takes from a sheet pasted (5 passes × 60 readings) to its preview, and from "use these" to the chart
 * redrawn: 360 × 780, CPU throttled four times by the DevTools protocol, which does not reach workers; so the main-thread mode is
 * measured too. First with nothing of the paste sheet loaded, then again. Printed, never asserted.
 */
const THROTTLE = 4;
const RUNS = 7;
const PAGE = process.env.PASTE_PAGE ?? '/measure-your-own-camber-curve/';
const ms = (value) => `${value.toFixed(0)} ms`.padStart(7);
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

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
      /^\s*(Use these 300|Replace)/.test(textContent),
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
  const browser = await chromium.launch(await findBrowser());
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
      for (let run = 0; run < RUNS; run++) {
        found.push(await page.evaluate(pasteAndTake, sheet(run)));
        await page.waitForTimeout(600);
      }
      const [first, ...rest] = found;
      const of = (what) => ms(median(rest.map((one) => one[what])));
      console.log(
        `${mainThread ? 'main thread' : 'worker     '}  first, nothing loaded: paste to preview ${ms(first.preview)} (budget 400 to the chart)` +
          `  take to chart ${ms(first.chart)}   then: paste to preview ${of('preview')}  take to chart ${of('chart')} (budget 100)`,
      );
      await context.close();
    }
  } finally {
    await browser.close();
    await site.close();
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await paste();
