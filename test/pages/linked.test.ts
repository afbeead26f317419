import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { EMPTY_CAR } from '../../core/document/car.js';
import { carToLink } from '../../core/document/link.js';
import { byUser } from '../../core/document/own-car.js';
import { browser as findBrowser } from '../browser.mjs';
import { serve } from '../serve.mjs';

let browser: Browser;
let site: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  const folder = fileURLToPath(new URL('../../dist/site', import.meta.url));
  [browser, site] = await Promise.all([chromium.launch(await findBrowser()), serve({ folders: { '/': folder } })]);
});
afterAll(() => Promise.all([browser?.close(), site?.close()]));

const LINK = carToLink(byUser({ ...EMPTY_CAR, drop: 41 }));

/** In the page, each frame: what of an element can be seen, its own text and the page's inside it. */
function watchText(tag: string) {
  const seen = new Set<string>();
  Object.assign(globalThis, { seen });
  const look = () => {
    const element = document.querySelector<HTMLElement & { answer?: unknown }>(tag);
    const isVisible = (one: Element) => one.checkVisibility({ visibilityProperty: true, opacityProperty: true });
    for (const one of element?.querySelectorAll('p, table') ?? []) {
      const isSlotted = !element!.shadowRoot || (one as HTMLElement).assignedSlot !== null;
      if (isSlotted && isVisible(one)) seen.add(one.textContent!);
    }
    for (const one of element?.shadowRoot?.querySelectorAll('.sentence, .sentence input') ?? []) {
      if (isVisible(one)) seen.add((one as HTMLInputElement).value ?? one.textContent);
    }
    requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
}

it.each([
  ['bumpline-lowering', 'what-lowering-does-to-camber/'],
  ['bumpline-clearance', 'will-it-clear-at-full-bump/'],
])(
  'a link to another car shows no figure of the page’s own in <%s>, however slowly it comes, and moves nothing',
  async (tag, path) => {
    const page = await (await browser.newContext({ viewport: { width: 360, height: 780 } })).newPage();
    await page.addInitScript(watchText, tag);
    // Each file takes a while: nobody can say what is painted between two that come at once.
    await page.route('**/*.js', async (route) => {
      await new Promise((resolve) => setTimeout(resolve, 120));
      await route.continue();
    });
    await page.goto(`${site.origin}/${path}#${LINK}`);
    await page.waitForFunction((name) => document.querySelector<HTMLElement & { answer?: unknown }>(name)?.answer, tag);
    await page.evaluate((name) => document.querySelector<HTMLElement & { settled?: unknown }>(name)!.settled, tag);
    await page.waitForTimeout(50);
    const seen = await page.evaluate(() => [...(globalThis as unknown as { seen: Set<string> }).seen]);
    expect(seen.filter((text) => /\b(?:25|30)\s?mm|0\.39|15\.5/.test(text))).toEqual([]);
    expect(seen.some((text) => /\b41\s?mm/.test(text))).toBe(true);
    const height = await page.evaluate((name) => document.querySelector<HTMLElement>(name)!.offsetHeight, tag);
    expect(height).toBeGreaterThan(1000);
    await page.context().close();
  },
);
