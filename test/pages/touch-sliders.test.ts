import { fileURLToPath } from 'node:url';
import { type Browser, type CDPSession, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { browser as findBrowser } from '../browser.mjs';
import { serve } from '../serve.mjs';

/* A thumb on the built pages at 360 × 780: a swipe that scrolls changes no number, one along a slider does, as one step of undo. */

const dist = fileURLToPath(new URL('../../dist/site', import.meta.url));
const SLIDERS = [
  ['what-lowering-does-to-camber/', 'bumpline-lowering'],
  ['height-or-part/', 'bumpline-compare'],
  ['will-it-clear-at-full-bump/', 'bumpline-clearance'],
  ['how-much-bump-is-left/', 'bumpline-lowering'],
] as const;

let browser: Browser;
let site: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  [browser, site] = await Promise.all([chromium.launch(await findBrowser()), serve({ folders: { '/': dist } })]);
});
afterAll(() => Promise.all([browser?.close(), site?.close()]));

async function open(path: string, tag: string): Promise<{ page: Page; session: CDPSession }> {
  const context = await browser.newContext({ viewport: { width: 360, height: 780 }, hasTouch: true, isMobile: true });
  const page = await context.newPage();
  await page.goto(`${site.origin}/${path}`);
  await page.evaluate(async (name) => {
    await customElements.whenDefined(name);
    await (document.querySelector(name) as unknown as { settled: Promise<void> }).settled;
    document.querySelector(name)!.shadowRoot!.querySelector('.slider')!.scrollIntoView({ block: 'center' });
  }, tag);
  await page.waitForTimeout(100);
  return { page, session: await context.newCDPSession(page) };
}

const state = (page: Page, tag: string) =>
  page.evaluate(async (name) => {
    const element = document.querySelector(name)!;
    await (element as unknown as { settled: Promise<void> }).settled;
    const root = element.shadowRoot!;
    return {
      value: root.querySelector<HTMLInputElement>('.slider input')!.value,
      sentence: root.querySelector('.sentence')!.textContent,
      undo: root.querySelectorAll('.undo').length,
      top: Math.round(scrollY),
    };
  }, tag);

/** A finger from one point to another, as a screen tells it. */
async function swipe(session: CDPSession, from: [number, number], to: [number, number], steps = 12): Promise<void> {
  const point = (part: number) => ({
    x: from[0] + (to[0] - from[0]) * part,
    y: from[1] + (to[1] - from[1]) * part,
  });
  await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [point(0)] });
  for (let i = 1; i <= steps; i++) {
    await session.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: [point(i / steps)] });
    await new Promise((done) => setTimeout(done, 16));
  }
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await new Promise((done) => setTimeout(done, 300));
}

const boxOf = async (page: Page, tag: string) =>
  (await page.locator(tag).first().locator('.slider input').first().boundingBox())!;

describe.each(SLIDERS)('the slider on %s, by touch', (path, tag) => {
  it('is left alone by a swipe that begins on it and scrolls, wherever it begins and however often', async () => {
    const { page, session } = await open(path, tag);
    const before = await state(page, tag);
    for (const [share, by] of [
      [0.85, -200],
      [0.15, -160],
      [0.5, 200],
    ] as const) {
      const box = await boxOf(page, tag);
      const at: [number, number] = [box.x + share * box.width, box.y + box.height / 2];
      await swipe(session, at, [at[0] + 6, at[1] + by]);
      const { top, ...after } = await state(page, tag);
      expect(after).toEqual({ value: before.value, sentence: before.sentence, undo: 0 });
      // Upwards no further than there is page.
      expect(Math.abs(top - before.top)).toBeGreaterThanOrEqual(by < 0 ? 30 : Math.min(30, before.top / 2));
      await page.evaluate((y) => scrollTo(0, y), before.top);
    }
    await page.context().close();
  });

  it('is dragged along, as one step that undo takes back whole', async () => {
    const { page, session } = await open(path, tag);
    const before = await state(page, tag);
    const box = await boxOf(page, tag);
    const y = box.y + box.height / 2;
    await swipe(session, [box.x + 0.3 * box.width, y], [box.x + 0.85 * box.width, y + 10]);
    const after = await state(page, tag);
    expect(after.value).not.toBe(before.value);
    // What grows above it moves the page, and nothing else does; clearance says whose the other values are, in its sentence.
    expect(Math.abs((await boxOf(page, tag)).y - box.y)).toBeLessThan(tag === 'bumpline-clearance' ? 130 : 60);
    expect(after.undo).toBe(1);
    await page.locator(tag).first().locator('.undo').tap();
    const back = await state(page, tag);
    expect(back).toEqual({ ...before, top: back.top });
    await page.context().close();
  });

  it('takes a tap for a choice, as one step', async () => {
    const { page } = await open(path, tag);
    const before = await state(page, tag);
    const box = await boxOf(page, tag);
    await page.touchscreen.tap(box.x + 0.9 * box.width, box.y + box.height / 2);
    await page.waitForTimeout(200);
    const after = await state(page, tag);
    expect([after.value === before.value, after.undo]).toEqual([false, 1]);
    await page.context().close();
  });
});
