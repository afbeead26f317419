import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { EMPTY_CAR } from '../../core/document/car.js';
import { carToLink } from '../../core/document/link.js';
import { byUser } from '../../core/document/own-car.js';
import { browser as findBrowser } from '../browser.mjs';
import { leanedStrutCamberChange } from '../reference/independent-leaned-strut.js';
import { serve } from '../serve.mjs';

/*
 * The figures of a text that follow the reader's car. The car is a tape-measured strut of our own; its camber is worked out again by
 * test/reference/independent-leaned-strut.ts, which shares nothing with core/.
 */

let browser: Browser;
let site: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  const folder = fileURLToPath(new URL('../../dist/site', import.meta.url));
  [browser, site] = await Promise.all([chromium.launch(await findBrowser()), serve({ folders: { '/': folder } })]);
});
afterAll(() => Promise.all([browser?.close(), site?.close()]));

/** Of another car than the example's: a short, steep arm. */
const MEASURED = {
  armLength: { value: 305, plusMinus: 3 },
  pivotHeight: { value: 205, plusMinus: 3 },
  ballHeight: { value: 172, plusMinus: 3 },
  wheelCentreHeight: { value: 296, plusMinus: 3 },
  topHeight: { value: 801, plusMinus: 3 },
  damperLean: { value: 11, plusMinus: 0.5 },
};
/** What the page on lowering says is assumed of the rest. */
const ASSUMED = { ballOffset: 20, hubOffset: 45, caster: 6, bumpSteer: 0 };
const values = Object.fromEntries(Object.entries(MEASURED).map(([key, { value }]) => [key, value]));
const changeAt = (travel: number): number =>
  leanedStrutCamberChange({ ...(values as Record<keyof typeof MEASURED, number>), ...ASSUMED }, travel);
const LINK = carToLink(
  byUser({ ...EMPTY_CAR, drop: 30, bumpTravel: 70, by: 'driveway', given: { points: {}, measures: MEASURED } }),
);

/** Two passes of a gauge over a straight curve, −0.02° a millimetre, a hair off it by turns. */
const READINGS = ['1', '2'].flatMap((pass) =>
  Array.from({ length: 21 }, (_, i) => ({
    travel: 5 * i - 50,
    value: -0.5 - 0.02 * (5 * i - 50) + (i % 2 === 0 ? 0.002 : -0.002),
    pass,
    going: 'up' as const,
  })),
);
const READ = carToLink(
  byUser({
    ...EMPTY_CAR,
    drop: 30,
    by: 'readings',
    setups: [{ name: 'Mine', cornerName: 'Front left', quantity: 'camber', readings: READINGS }],
  }),
);

async function open(hash: string, path = 'what-lowering-does-to-camber', tag = 'bumpline-lowering') {
  const page = await (await browser.newContext({ viewport: { width: 360, height: 780 } })).newPage();
  await page.goto(`${site.origin}/${path}/${hash}`);
  await page.waitForFunction((name) => document.querySelector<HTMLElement & { answer?: unknown }>(name)?.answer, tag);
  return page;
}
const figures = (names: string[]) =>
  names.map((name) => document.querySelector(`section [data-name="${name}"]`)!.textContent!.replaceAll('\u00a0', ' '));
const NAMES = ['change-10', 'change-40', 'added-30', 'bump-left-10', 'toe-change-30'];
const degrees = (value: number) => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(2)}°`;

describe('figures of a text', () => {
  it('are the example’s until the reader enters a car, and the page says so', async () => {
    const page = await open('');
    expect(await page.evaluate(figures, NAMES)).toEqual(['−0.15°', '−0.48°', '−0.11°', '52 mm', '−0.03°']);
    expect(await page.locator('.whose-figures').textContent()).toMatch(/example car’s, until you enter your own/);
    await page.context().close();
  });

  it('are the reader’s own where the calculator knows them, marked, and the example’s elsewhere', async () => {
    const page = await open(`#${LINK}`);
    await page.waitForSelector('data.yours');
    const found = await page.evaluate(figures, NAMES);
    expect(found.slice(0, 3)).toEqual([changeAt(10), changeAt(40), changeAt(30) - changeAt(20)].map(degrees));
    // 70 mm at stock height, 10 mm lower; toe is nothing that a tape tells.
    expect(found.slice(3)).toEqual(['60 mm', '−0.03°']);
    expect(await page.locator('[data-name="toe-change-30"]').getAttribute('class')).toBeNull();
    expect(await page.locator('.whose-figures').textContent()).toMatch(
      /like this are your car’s\. All others are the example car’s/,
    );
    await page.context().close();
  });

  it.each([
    ['what-lowering-does-to-camber', 'bumpline-lowering', { 'change-30': '−0.60°', 'added-30': '−0.20°' }],
    [
      'measure-your-own-camber-curve',
      'bumpline-readings',
      { 'readings-change-25': '0.50°', 'readings-change-50': '1.00°' },
    ],
  ])('on %s follow readings that the reader took', async (path, tag, expected) => {
    const page = await open(`#${READ}`, path, tag);
    await page.waitForSelector('data.yours');
    expect(await page.evaluate(figures, Object.keys(expected))).toEqual(Object.values(expected));
    await page.context().close();
  });

  it('are the example’s again when the reader’s car is taken back', async () => {
    const page = await open(`#${LINK}`);
    await page.waitForSelector('data.yours');
    // What an element says whose answer is about its example, or its page's car, again.
    await page.evaluate(() => {
      const element = document.querySelector<HTMLElement & { answer: unknown }>('bumpline-lowering')!;
      Object.defineProperty(element, 'isReaders', { value: false });
      element.dispatchEvent(new Event('bumpline-answer', { bubbles: true }));
    });
    await page.waitForFunction(() => !document.documentElement.hasAttribute('data-figures'));
    expect((await page.evaluate(figures, NAMES)).slice(0, 2)).toEqual(['−0.15°', '−0.48°']);
    expect(await page.locator('data.yours').count()).toBe(0);
    await page.context().close();
  });
});
