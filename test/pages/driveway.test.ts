import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { browser as findBrowser } from '../browser.mjs';
import { leanedStrutCamberChange } from '../reference/independent-leaned-strut.js';
import { serve } from '../serve.mjs';

/*
 * A lowered car measured in a driveway, on the built article at 360 × 780. What it should say comes from
 * test/reference/independent-leaned-strut.ts, which shares no code with core/.
 */

const ARTICLE = 'what-lowering-does-to-camber/';
const dist = fileURLToPath(new URL('../../dist/site', import.meta.url));

/** Invented, as it sits: 25 mm lower than stock. */
const DROP_MM = 25;
const car = {
  armLength: 346,
  pivotHeight: 176,
  ballHeight: 183,
  wheelCentreHeight: 311,
  damperLean: 9,
  topHeight: 826,
};
/** What nobody can see, as core assumes it. */
const hidden = { ballOffset: 20, hubOffset: 45, bumpSteer: 0 };
const STATIC_CAMBER = '-1.3';
const CASTER = 7.5;
const BUMP_LEFT_MM = 41;

/** From stock height to where it sits: the way back, turned round. */
const expected = -leanedStrutCamberChange({ ...car, ...hidden, caster: CASTER }, -DROP_MM);

let browser: Browser;
let site: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  [browser, site] = await Promise.all([chromium.launch(await findBrowser()), serve({ folders: { '/': dist } })]);
});
afterAll(() => Promise.all([browser?.close(), site?.close()]));

const settle = (page: Page) =>
  page.evaluate(async () => {
    await customElements.whenDefined('bumpline-lowering');
    await document.querySelector('bumpline-lowering')!.settled;
  });

async function open(options: BrowserContextOptions, hash = ''): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 360, height: 780 }, ...options });
  const page = await context.newPage();
  await page.goto(`${site.origin}/${ARTICLE}${hash}`);
  await settle(page);
  return page;
}

const read = (page: Page) =>
  page.evaluate(() => {
    const element = document.querySelector('bumpline-lowering')!;
    const root = element.shadowRoot!;
    return {
      says: root.querySelector('.says')!.textContent!.replace(/[\s\u202f]+/g, ' '),
      owner: root.querySelector('.owner')!.textContent,
      corner: root.querySelector('.head b')!.textContent,
      change: element.answer!.change.value,
    };
  });

function check({ says, owner, corner, change }: Awaited<ReturnType<typeof read>>): void {
  expect(owner).toBe('6 of 6 are yours');
  expect(corner).toBe('Front right');
  // Static camber, which the calculation has not, counts in the fifth decimal.
  expect(change).toBeCloseTo(expected, 4);
  expect(says).toMatch(
    new RegExp(`adds ${Math.abs(expected).toFixed(2)}° ± \\d\\.\\d\\d° of negative camber, to −1\\.30°`),
  );
  // Measured as it sits: what was left then is left now.
  expect(says).toContain(`leaves ${BUMP_LEFT_MM} mm of bump`);
}

const values = [
  String(DROP_MM),
  ...Object.values(car).map(String),
  STATIC_CAMBER,
  String(CASTER),
  String(BUMP_LEFT_MM),
];

describe('a car that sits 25 mm lower, measured in the driveway', () => {
  it('by touch: from the example to one’s own car to the sentence, and by a link to a friend', async () => {
    const page = await open({ hasTouch: true, isMobile: true, deviceScaleFactor: 2 });
    const element = page.locator('bumpline-lowering').first();
    await element.locator('.own').tap();
    await element.locator('dialog input[value=lowered]').tap();
    await element.locator('dialog input[value="Front right"]').tap();
    await element.locator('dialog .buttons .main').tap();
    for (const [step, value] of values.entries()) {
      await element.locator('#sheet-title small', { hasText: `Front right · ${step + 2} of 11` }).waitFor();
      await element.locator('dialog .fields input').first().fill(value);
      await element.locator('dialog .buttons .main').tap();
    }
    await element.locator('dialog:not([open])').waitFor({ state: 'attached' });
    await settle(page);
    check(await read(page));

    await page.waitForFunction(() => location.hash.startsWith('#car='));
    const friend = await open({}, new URL(page.url()).hash);
    check(await read(friend));
    await Promise.all([page.context().close(), friend.context().close()]);
  });

  it('by keyboard alone', async () => {
    const page = await open({});
    const focused = () =>
      page.evaluate(() => {
        const inner = document.activeElement?.shadowRoot?.activeElement as HTMLElement | null;
        return `${inner?.className ?? ''} ${inner?.getAttribute('value') ?? ''}`;
      });
    const tabTo = async (wanted: RegExp, key = 'Tab') => {
      for (let i = 0; i < 60 && !wanted.test(await focused()); i++) await page.keyboard.press(key);
      expect(await focused()).toMatch(wanted);
    };
    await tabTo(/^button own/);
    await page.keyboard.press('Enter');
    await settle(page);
    // The focus is on the first question; its group and the next two are one stop each.
    await tabTo(/stock$/);
    await page.keyboard.press('ArrowDown');
    await tabTo(/Front left$/);
    await page.keyboard.press('ArrowDown');
    await tabTo(/main/);
    await page.keyboard.press('Enter');
    await settle(page);
    for (const [step, value] of values.entries()) {
      await page.locator('#sheet-title small', { hasText: `Front right · ${step + 2} of 11` }).waitFor();
      await tabTo(/^text/);
      await page.keyboard.type(value);
      await page.keyboard.press('Enter');
    }
    await page.locator('dialog:not([open])').first().waitFor({ state: 'attached' });
    // The last dialog has nothing after it: Enter closes it, and the focus is on the sentence that it made.
    expect(await focused()).toMatch(/^sentence/);
    await settle(page);
    check(await read(page));
    await page.context().close();
  });
});
