import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { wholePage } from '../../site/partials/pages.js';
import { browser as findBrowser } from '../browser.mjs';
import { nearest, seenFrom, travelWhenShorter } from '../reference/independent-clearance.js';
import type { Point } from '../reference/independent-strut.js';
import { serve } from '../serve.mjs';
import { saidIn } from './said-in.js';
import { inside, page as source, tableRows, textOf } from './site-source.js';
import { clearanceScript, clearsWith, NARROWER, SMALLER } from './worked-clearance.js';

/*
 * The built article on clearance at 360 × 780: what it says and what its calculator says are one sum; and a first-time owner's way
 * through the calculator by touch, whose answer is reckoned by test/reference/independent-clearance.ts, which imports nothing
 * from core/.
 */

const ARTICLE = 'will-it-clear-at-full-bump/';
const html = source(`${ARTICLE}index.html`);
const made = wholePage(ARTICLE, html);
const dist = fileURLToPath(new URL('../../dist/site', import.meta.url));

let browser: Browser;
let site: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  [browser, site] = await Promise.all([chromium.launch(await findBrowser()), serve({ folders: { '/': dist } })]);
});
afterAll(() => Promise.all([browser?.close(), site?.close()]));

const settle = (page: Page) =>
  page.evaluate(async () => {
    await customElements.whenDefined('bumpline-clearance');
    await new Promise((done) => setTimeout(done, 0));
    await document.querySelector('bumpline-clearance')!.settled;
  });

async function open(): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 360, height: 780 }, hasTouch: true, isMobile: true });
  const page = await context.newPage();
  await page.goto(`${site.origin}/${ARTICLE}`);
  await settle(page);
  return page;
}

const plain = (text: string) => text.replace(/[\s\u202f\u00a0]+/g, ' ').trim();

async function read(page: Page) {
  const sheet = page.locator('bumpline-clearance').first();
  return {
    sentence: plain(await sheet.locator('.sentence').evaluate(saidIn)),
    owner: (await sheet.locator('.owner').textContent())!,
    changes: (await sheet.locator('.changes dd').allTextContents()).map(plain),
  };
}

/** Figures in the order in which they stand. */
const figures = (text: string): number[] => (text.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);
const listed = (change: string): string =>
  textOf(inside(inside(html, 'ul', 'id="just-clear-list"'), 'li', `data-change="${change}"`));

describe('article and calculator', () => {
  it('hold the same car: tables of the text and what the page hands its calculator', () => {
    const { fit, limits } = clearanceScript();
    const rows = new Map(
      tableRows(inside(html, 'table', 'data-example="arch"')).map(({ name, cells }) => [name, cells]),
    );
    const value = (name: string, column = 0) => figures(rows.get(name)![column]!)[0];
    const [lip, perch] = fit.places;
    expect(lip!.at).toEqual({
      clock: 12,
      distance: value('Hub centre to arch lip, 12 o’clock'),
      out: value('Arch lip outboard of the old outer sidewall'),
    });
    expect(lip!.plusMinus).toBe(value('Arch lip outboard of the old outer sidewall', 1));
    expect(perch!.at).toMatchObject({ out: -value('Spring perch inboard of the old inner sidewall')!, from: 'inner' });
    expect(fit.lock).toBe(value('Full lock, either way'));
    expect(fit.allowance).toBe(value('Allowance for rubber'));
    expect(fit.marginBodywork).toBe(value('Margin to bodywork'));
    expect(limits).toMatchObject({
      stopGap: value('Gap to the bump stop, on the damper’s rod'),
      stopGapPlusMinus: value('Gap to the bump stop, on the damper’s rod', 1),
      stopLength: value('Bump stop, solid at half its length'),
      stopUsable: 0.5,
    });
    const wheel = (which: string) => new RegExp(`wheel-${which}="([^"]*)"`).exec(html)![1]!.split(/, */);
    tableRows(inside(html, 'table', 'data-example="wheels"'))
      .slice(0, 3)
      .forEach(({ cells }, i) => {
        expect(cells.map((cell) => cell.replace(/\u00a0.*/, ''))).toEqual([wheel('before')[i], wheel('after')[i]]);
      });
  });

  it('say one verdict, with the same gap, ± and steer', async () => {
    const { sentence, owner } = await read(await open());
    const answer = textOf(inside(made, 'p', 'class="answer"')).replace(/\s+/g, ' ');
    expect(answer).toMatch(
      /too close to tell\. At full bump, steered \d+°, the arch lip at 12 o’clock is \d+ ± \d+ mm away/,
    );
    expect(sentence).toBe(answer);
    expect(sentence).toMatch(/^Not your car yet\. /);
    expect(owner).toBe('this page’s example');
  });

  it('name the same changes that would just clear, figure by figure', async () => {
    const { changes } = await read(await open());
    const [plane, width, diameter, camber, bump, drop] = changes as [string, string, string, string, string, string];
    const [inward, offset, before] = figures(listed('plane'));
    expect(plane).toBe(`wheels ${inward} mm further in: ET ${offset} in place of ET ${before}`);
    expect(width).toMatch(
      new RegExp(`^${NARROWER} clears by the numbers.*at least ${figures(listed('width')).at(-1)} mm narrower`),
    );
    expect(diameter).toMatch(
      new RegExp(`^${SMALLER} clears by the numbers.*at least ${figures(listed('diameter')).at(-1)} mm smaller`),
    );
    expect(listed('width')).toContain(NARROWER);
    expect(listed('diameter')).toContain(SMALLER);
    expect(camber).toContain(`${figures(listed('camber'))[0]!.toFixed(2)}° more negative camber`);
    const [by, packers] = figures(listed('bump'));
    expect(bump).toContain(`bump limited by ${by} mm (packers of ${packers} mm on the rod)`);
    // "The stop is touched and solid that much sooner."
    const [, , left, leftNow, touch, touchNow] = figures(bump);
    expect(Math.abs(leftNow! - left! - by!)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(touchNow! - touch! - by!)).toBeLessThanOrEqual(0.5);
    expect(drop).toContain('leave full bump where the stop is');
    expect(listed('drop')).toContain('Full bump is where the stop is');
  });

  it('the sizes that are named clear by the second computation, and the tyre itself does not', () => {
    expect([NARROWER, SMALLER, '225/45R17'].map(clearsWith)).toEqual([true, true, false]);
  });
});

describe('a first-time owner, by touch', () => {
  /** From 225/45R17 on 7.5J ET40 to 235/40R18 on 8.5J ET35, 25 mm lower, arch lip measured. Invented. */
  const OLD = { width: '225', aspect: '45', rim: '17', rimInch: '7.5', offset: '40' };
  const NEW = { width: '235', aspect: '40', rim: '18', rimInch: '8.5', offset: '35' };
  const [DISTANCE, OUT, GAP, STOP, LOCK] = [372, 24, 30, 60, 34];

  it('is led through both wheels, the lip and the stop, and is told another car’s motion until theirs is given', async () => {
    const page = await open();
    const sheet = page.locator('bumpline-clearance dialog[open]');
    const press = async (name: string | RegExp, where = sheet) => {
      await where
        .getByRole('button', { name, exact: typeof name === 'string' })
        .first()
        .tap();
      await settle(page);
    };
    const fill = async (label: string, text: string | number) => {
      const field = sheet.getByRole('textbox', { name: label }).first();
      await field.fill(String(text));
      await field.press('Tab');
      await settle(page);
    };
    const title = () => sheet.locator('#sheet-title .title').textContent();
    const wheel = async ({ width, aspect, rim, rimInch, offset }: typeof OLD) => {
      await fill('Tyre: width', width);
      await fill('Tyre: aspect', aspect);
      await fill('Tyre: rim', rim);
      await fill('Rim width', rimInch);
      await fill('Offset', offset);
      await press('Next');
    };
    await press('Put in my own car', page.locator('bumpline-clearance'));
    expect(await title()).toBe('Old wheel');
    await wheel(OLD);
    expect(await title()).toBe('New wheel');
    await wheel(NEW);
    expect(await title()).toMatch(/^Arch lip at 12/);
    await fill('Hub centre', DISTANCE);
    await fill('Outboard', OUT);
    await press('Next');
    await press('Next');
    expect(await title()).toBe('Gap to the bump stop');
    await fill('Gap on the rod', GAP);
    await press('Next');
    await fill('Length of the stop', STOP);
    await press('Next');
    await fill('Full lock', LOCK);
    await press('Done');
    const { sentence, owner, changes } = await read(page);
    expect(owner).toBe('wheels, places, bump travel yours');
    expect(sentence).toMatch(/^Not your car yet\. 25 mm lower, wheels 5 mm further out: too close to tell\./);
    expect(sentence).toMatch(/How the wheel moves and the drop are still the page’s\.$/);

    // By the second computation, with the motion that still is the page's.
    const { corner } = clearanceScript();
    const width = (mm: number, aspect: number, inch: number) =>
      mm + 0.4 * (inch * 25.4 - (aspect >= 50 ? 0.7 : 0.85) * mm);
    const shape = (mm: number, aspect: number, rimMm: number, inch: number) => ({
      sectionWidth: width(mm, aspect, inch),
      freeRadius: rimMm / 2 + (mm * aspect) / 100,
      rimRadius: rimMm / 2,
      rimWidth: inch * 25.4,
    });
    const old = shape(225, 45, 432, 7.5);
    const solid = travelWhenShorter(corner, GAP + STOP / 2);
    const lean = Math.tan((-corner.camber * Math.PI) / 180);
    const size = Math.hypot(Math.tan((corner.toe * Math.PI) / 180), 1, lean);
    const across =
      old.sectionWidth / 2 / size -
      ((lean / size ** 2) * (old.rimRadius + old.freeRadius)) / 2 / Math.sqrt(1 - (lean / size) ** 2);
    const point: Point = [0, across + OUT, DISTANCE];
    const found = nearest(seenFrom(corner, point, { lock: LOCK, end: solid }), shape(235, 40, 457, 8.5), 5);
    const said = /is (\d+) ± (\d+) mm away|the tyre is (\d+) ± (\d+) mm into/.exec(sentence)!;
    const gap = said[1] === undefined ? -Number(said[3]) : Number(said[1]);
    expect(Math.abs(gap - found.gap)).toBeLessThan(0.6);
    // The bottom of a dip is flat.
    expect(Math.abs(Number(/steered (\d+)°/.exec(sentence)![1]) - Math.abs(found.steer))).toBeLessThan(1.2);
    // Only what one can do is offered, and none of it does alone.
    expect(await page.locator('bumpline-clearance .changes .none dt').textContent()).toBe('Not enough by itself:');
    expect(changes.at(-1)!.split(', ').length).toBeGreaterThanOrEqual(3);
    await press(/^Next: how the wheel moves$/, page.locator('bumpline-clearance'));
    expect(await title()).toBe('Your car');
  });
});
