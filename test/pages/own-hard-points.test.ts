import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { browser as findBrowser } from '../browser.mjs';
import { independentCamberChange, independentReversal } from '../reference/independent-strut.js';
import { serve } from '../serve.mjs';

/* The main job on the built article, as somebody does it on a phone. What it should say comes from test/reference/independent-strut.ts, which shares no code with core/. */

const ARTICLE = 'what-lowering-does-to-camber/';
const dist = fileURLToPath(new URL('../../dist/site', import.meta.url));

/** Another invented corner than the example. */
const corner = {
  kind: 'strut',
  wheelCentre: [0, 752, 318],
  loadedRadius: 318,
  camber: -0.9,
  toe: 0.05,
  lowerArm: { front: [31, 371, 203], rear: [-301, 366, 214], ball: [3, 709, 181] },
  strut: { top: [-44, 592, 861], low: [-25, 641, 490] },
  tieRod: { inner: [-151, 362, 271], outer: [-146, 668, 259] },
} as const;
const DROP_MM = 26;
const BUMP_TRAVEL_MM = 80;

const points = [
  corner.lowerArm.front,
  corner.lowerArm.rear,
  corner.lowerArm.ball,
  corner.strut.top,
  corner.strut.low,
  corner.tieRod.inner,
  corner.tieRod.outer,
  corner.wheelCentre,
];
const others: [name: string, text: string][] = [
  ['Static camber', '-0.9'],
  ['Static toe, this wheel alone', '0.05'],
  ['Bump travel left', String(BUMP_TRAVEL_MM)],
];

let browser: Browser;
let site: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  [browser, site] = await Promise.all([chromium.launch(await findBrowser()), serve({ folders: { '/': dist } })]);
});
afterAll(() => Promise.all([browser?.close(), site?.close()]));

async function openOnPhone(beforeLoad?: () => void): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width: 360, height: 780 },
    deviceScaleFactor: 2,
    hasTouch: true,
    isMobile: true,
  });
  const page = await context.newPage();
  if (beforeLoad) await page.addInitScript(beforeLoad);
  await page.goto(`${site.origin}/${ARTICLE}`);
  await settle(page);
  return page;
}

const settle = (page: Page) =>
  page.evaluate(async () => {
    await customElements.whenDefined('bumpline-lowering');
    await document.querySelector('bumpline-lowering')!.settled;
  });

/** By touch, in one run of sheets: the eight points, then the other values, Next after each. */
async function giveCorner(page: Page): Promise<void> {
  const element = page.locator('bumpline-lowering').first();
  await element.locator('.own').tap();
  await element.locator('dialog input[value=points]').tap();
  await element.locator('dialog .buttons .main').tap();
  const steps = [...points.map((point) => point.map(String)), ...others.map(([, text]) => [text])];
  for (const [step, values] of steps.entries()) {
    await element.locator('#sheet-title small', { hasText: `${step + 2} of ${steps.length + 1}` }).waitFor();
    if (step >= points.length) {
      expect(await element.locator('#sheet-title .title').textContent()).toBe(others[step - points.length]![0]);
    }
    const fields = element.locator('dialog .fields input');
    for (const [i, value] of values.entries()) await fields.nth(i).fill(value);
    await element.locator('dialog .buttons .main').tap();
  }
  await element.locator('dialog:not([open])').waitFor({ state: 'attached' });
  await element.locator('.drop').fill(String(DROP_MM));
  await element.locator('.drop').press('Enter');
  await settle(page);
}

const read = (page: Page) =>
  page.evaluate(() => {
    const root = document.querySelector('bumpline-lowering')!.shadowRoot!;
    return {
      text: root.querySelector('.says')!.textContent!.replace(/[\s\u202f]+/g, ' '),
      owner: root.querySelector('.owner')!.textContent,
      mode: Object.getOwnPropertySymbols(globalThis)
        .filter(({ description }) => description?.startsWith('bumpline.worker/'))
        .map((key) => (globalThis as unknown as Record<symbol, { mode: string }>)[key]!.mode)
        .join(),
    };
  });

/** The camber change and the turning point that a sentence states, degrees and mm. */
function statedIn(text: string): { change: number; turn: number } {
  const [, change] = /adds ([\d.]+)° ± [\d.]+° of negative camber, to −[\d.]+°/.exec(text) ?? [];
  const [, turn] = /turns back ([\d.]+) ± \d+ mm lower/.exec(text) ?? [];
  return { change: Number(change), turn: Number(turn) };
}

describe('find out what lowering does to one’s own car, at 360 × 780', () => {
  const expected = { change: -independentCamberChange(corner, DROP_MM), turn: independentReversal(corner)!.travel };

  it('before any tap: sentence, drawing and slider are in view, with at most one text field', async () => {
    const page = await openOnPhone();
    const inView = await page.evaluate(() => {
      const root = document.querySelector('bumpline-lowering')!.shadowRoot!;
      const box = (selector: string) => root.querySelector(selector)!.getBoundingClientRect();
      return {
        sentence: box('.sentence').bottom,
        drawing: box('.drawing svg').bottom,
        slider: box('input[type=range]').bottom,
        fields: [...root.querySelectorAll('input:not([type=range])')].filter((f) => f.checkVisibility()).length,
      };
    });
    expect(inView.sentence).toBeLessThan(780);
    expect(inView.drawing).toBeLessThan(780);
    expect(inView.slider).toBeLessThan(780);
    expect(inView.fields).toBe(1);
    await page.context().close();
  });

  for (const [name, block, mode] of [
    ['with the worker', undefined, 'worker'],
    [
      'with the worker blocked',
      () => {
        globalThis.Worker = class {
          constructor() {
            throw new Error('blocked by the test');
          }
        } as never;
      },
      'main-thread',
    ],
  ] as const) {
    it(`replaces the example by one’s own hard points and drop, and says what an independent solver computes, ${name}`, async () => {
      const page = await openOnPhone(block);
      expect((await read(page)).owner).toBe('Example');
      await giveCorner(page);
      const { text, owner, mode: ranIn } = await read(page);
      expect(ranIn).toBe(mode);
      expect(owner).toBe('all yours');
      const stated = statedIn(text);
      expect(text).toContain(`leaves ${BUMP_TRAVEL_MM - DROP_MM} mm of bump`);
      expect(stated.change, text).toBeCloseTo(Math.round(expected.change * 100) / 100, 10);
      // The turning point is rounded as its own doubt allows: to whole millimetres or tens.
      expect(Math.abs(stated.turn - expected.turn), text).toBeLessThanOrEqual(5);
      const answer = await page.evaluate(() => {
        const { change, reversal } = document.querySelector('bumpline-lowering')!.answer!;
        return { change: change.value, turn: reversal!.travel.value };
      });
      expect(answer.change).toBeCloseTo(-expected.change, 6);
      expect(answer.turn).toBeCloseTo(expected.turn, 3);
      await page.context().close();
    });
  }
});
