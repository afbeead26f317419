import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { EMPTY_CAR } from '../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../core/document/example-corner.js';
import { EXAMPLE_SETUPS } from '../../core/document/example-setups.js';
import { carToLink } from '../../core/document/link.js';
import { byUser } from '../../core/document/own-car.js';
import { takeCorner } from '../../core/document/take-corner.js';
import { TAGS } from '../../site/builder/options.js';
import { browser as findBrowser } from '../browser.mjs';
import { serve } from '../serve.mjs';

const PREFIX = '/some/sub/path/';
const dist = fileURLToPath(new URL('../../dist/site', import.meta.url));
/** Pages of somebody else. */
const folder = mkdtempSync(join(tmpdir(), 'bumpline-builder-'));

const CORNER = { ...EXAMPLE_CORNER, lowerArm: { ...EXAMPLE_CORNER.lowerArm, ball: [0, 694, 181] } };
const OWN = byUser({ ...EMPTY_CAR, by: 'points', ...takeCorner(CORNER), drop: 24, bumpTravel: 61 });
const READ = byUser({ ...EMPTY_CAR, by: 'readings', setups: EXAMPLE_SETUPS, drop: 20 });

let browser: Browser;
let site: Awaited<ReturnType<typeof serve>>;
let context: BrowserContext;
let page: Page;
const complaints: string[] = [];

beforeAll(async () => {
  [browser, site] = await Promise.all([
    chromium.launch(await findBrowser()),
    serve({
      folders: { [PREFIX]: dist, '/foreign/': folder },
      headers: () => ({ 'Access-Control-Allow-Origin': '*' }),
    }),
  ]);
});
afterAll(async () => {
  await Promise.all([browser?.close(), site?.close()]);
  rmSync(folder, { recursive: true });
});
afterEach(async () => {
  await context?.close();
  expect(complaints.splice(0)).toEqual([]);
});

async function open(path: string, viewport = { width: 1280, height: 900 }): Promise<void> {
  context = await browser.newContext({ viewport, permissions: ['clipboard-read', 'clipboard-write'] });
  page = await context.newPage();
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  await page.goto(`${site.origin}${path.startsWith('/') ? path : PREFIX + path}`);
}

type Sheet = HTMLElement & { settled: Promise<void>; state: string; answer: unknown };

/** What the preview says, once it has settled. */
async function previewed(): Promise<{ tag: string; state: string; answer: string; width: number }> {
  // After the pause in typing.
  await page.waitForTimeout(500);
  const frame = (await (await page.waitForSelector('.stage iframe')).contentFrame())!;
  await frame.waitForSelector('#here > *');
  return frame.evaluate(async () => {
    const found = () => document.querySelector<Sheet>('#here > *');
    await customElements.whenDefined(found()!.localName);
    await found()!.settled;
    const { localName, state, answer } = found()!;
    return { tag: localName, state, answer: JSON.stringify(answer), width: innerWidth };
  });
}

const text = (selector: string): Promise<string> =>
  page.locator(selector).evaluate((element) => element.textContent.replace(/\s+/g, ' ').trim());
const madeText = (): Promise<string> => page.locator('#snippet-made code').evaluate((code) => code.textContent);

/** What an element in some HTML answers on a page of somebody else. */
async function answerOn(html: string): Promise<string> {
  writeFileSync(join(folder, 'page.html'), `<!doctype html><html lang="en"><body>${html}</body></html>`);
  const other = await context.newPage();
  await other.goto(`${site.origin}/foreign/page.html`);
  const answer = await other.evaluate(
    async (tags) => {
      const element = document.querySelector<Sheet>(tags.join())!;
      await customElements.whenDefined(element.localName);
      await element.settled;
      return JSON.stringify(element.answer);
    },
    [...TAGS],
  );
  await other.close();
  return answer;
}

describe('from a calculator', () => {
  it('a link leads there with the car as it stands, and what is copied there answers the same on another page', async () => {
    await open(`what-lowering-does-to-camber/#${carToLink(OWN)}`);
    const answer = await page.evaluate(async () => {
      const sheet = document.querySelector<Sheet>('bumpline-lowering')!;
      await sheet.settled;
      return JSON.stringify((sheet.answer as { change: unknown }).change);
    });
    await page.locator('bumpline-lowering .put-in-article').click();
    await page.waitForURL(/snippet-builder\/\?element=lowering#car=1/);
    expect(await text('.read')).toBe(
      'Read: 8 hard points (±3 to 4 mm), loaded radius, static camber, static toe, the drop and bump travel.',
    );
    const shown = await previewed();
    expect(shown).toMatchObject({ tag: 'bumpline-lowering', state: 'ready' });
    await page.locator('input[name=at]').fill(`${site.origin}${PREFIX}embed/`);
    await expect.poll(madeText).toMatch(/<p>Lowering 24 mm adds <data value="-0\.\d{3,4}">0\.\d+°<\/data>/);
    await page.locator('.copy').click();
    await expect.poll(() => text('.copy')).toBe('Copied');
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied).toBe(await madeText());
    expect(copied).toMatch(/<bumpline-lowering drop="24" bump-travel="61">/);
    const there = JSON.parse(await answerOn(copied)) as { change: unknown };
    expect(JSON.stringify(there.change)).toBe(answer);
  });

  it('without a car of anybody’s it leads there with what the page asks', async () => {
    await open('ways-to-add-camber/');
    await page.evaluate(() => document.querySelector<Sheet>('bumpline-static-camber')!.settled);
    await page.locator('bumpline-static-camber .put-in-article').click();
    await page.waitForURL(/snippet-builder\/\?element=static-camber&by=-1#car=1&drop=0&check=\w+$/);
    expect(await text('.read')).toBe('The invented example, because no car is given.');
    expect(await madeText()).toContain('<bumpline-static-camber drop="0" by="-1"');
  });
});

describe('what is chosen', () => {
  it('is shown, written into the text, kept in the address, and there again after a reload', async () => {
    await open(`snippet-builder/#${carToLink(READ)}`, { width: 360, height: 780 });
    await page.selectOption('select[name=element]', 'compare');
    await page.getByText('What is asked').click();
    const heights = page.locator('input[name=heights]');
    expect(await heights.getAttribute('placeholder')).toBe('your car: 0, 20');
    await heights.fill('0, 15, 30');
    await page.getByLabel('Chart', { exact: true }).check();
    await page.getByText('Units, colours, language, width').click();
    await page.locator('input[name=units][value=in]').check();
    await page.locator('input[name=theme][value=dark]').check();
    await page.locator('input[name=width]').fill('wide');
    expect(await text('.wrong[data-of=width]')).toMatch(/number of pixels/);
    await page.locator('input[name=width]').fill('600');
    expect(await text('.wrong[data-of=width]')).toBe('');
    await page.locator('input[name=host][value=narrow]').check();
    expect(await previewed()).toMatchObject({ tag: 'bumpline-compare', state: 'ready', width: 320 });
    const made = await madeText();
    expect(made).toContain(
      '<bumpline-compare heights="0, 15, 30" show="sentence chart" units="in" theme="dark" style="max-width:600px">',
    );
    expect(made).toContain('<th scope="col">Lowered joints, Pass 1, going up (°)</th>');
    const url = page.url();
    expect(url).toContain('#car=1');
    await page.reload();
    await previewed();
    expect(page.url()).toBe(url);
    await expect.poll(madeText).toBe(made);
    expect(await page.locator('input[name=width]').inputValue()).toBe('600');
    expect(await page.getByLabel('Everything').isChecked()).toBe(false);
  });

  it('a pasted table is read, what is not understood in it is named, and both come back', async () => {
    await open('snippet-builder/?element=geometry');
    await page.getByText('Paste a car: a table, CSV or JSON').click();
    await page.locator('textarea').fill('Point\tx\ty\tz\nBall joint\t-5\t700\t185\nxyz\t1\t2\t3');
    expect(await text('.read')).toBe('Read: 1 hard point.');
    expect(await text('.unread')).toBe('Not understood: “xyz” (1 2 3).');
    expect(await previewed()).toMatchObject({ state: 'incomplete' });
    expect(await madeText()).toContain(
      '<tr><th scope="row">Lower ball joint</th><td>−5</td><td>700</td><td>185</td></tr>',
    );
    await page.reload();
    expect(await text('.unread')).toBe('Not understood: “xyz” (1 2 3).');
    expect(await page.locator('textarea').inputValue()).toContain('xyz');
    await page.locator('.without').click();
    expect(await text('.read')).toBe('The invented example, because no car is given.');
    expect(await page.locator('textarea').inputValue()).toBe('');
    await page.goBack();
    expect(await page.locator('textarea').inputValue()).toContain('xyz');
  });

  it('each form is made, says what it rests on, and what is not in it', async () => {
    await open(`snippet-builder/#${carToLink({ ...OWN, measuredAt: 10, lowered: 'springs' })}`);
    await previewed();
    expect(await madeText()).toContain('<script type="application/json">');
    expect(await text('.by')).toMatch(/reads the JSON/);
    await page.locator('input[name=form][value=div]').check();
    expect(await madeText()).toContain('<div data-bumpline="lowering" data-drop="24" data-bump-travel="61"');
    expect(await text('.left')).toMatch(
      /Not in it: How the car was lowered\.That the car was lowered already when it was measured\./,
    );
    await page.locator('input[name=form][value=frame]').check();
    expect(await madeText()).toMatch(
      new RegExp(
        `^<iframe src="${site.origin}${PREFIX}embed/lowering/#car=1&amp;[^"]+" title="What lowering does to camber" width="100%"`,
      ),
    );
    expect(await text('.at .label')).toBe('Where this site lies');
    await page.locator('input[name=form][value=table]').check();
    expect(await madeText()).toMatch(/^<table lang="en">/);
    await page.locator('input[name=form][value=json]').check();
    expect(JSON.parse(await madeText())).toMatchObject({ car: { measuredAt: 10, by: 'points' } });
    expect(await page.locator('.at').isVisible()).toBe(false);
  });
});

describe('the preview', () => {
  // All nine answer from their snippets in test/components/publish/; here it is the page around them that is tried.
  it.each(TAGS.filter((_, i) => i % 3 === 0))('%s answers on a dark page, with the parts that it has', async (tag) => {
    await open(`snippet-builder/?element=${tag.replace('bumpline-', '')}&host=dark`);
    const shown = await previewed();
    expect(shown.tag).toBe(tag);
    expect(shown.state).toMatch(/^(?:example|ready)$/);
    expect(shown.answer).toMatch(/\d/);
    await expect.poll(madeText).toMatch(/<p>[^<]*\d[\s\S]*<\/p>/);
    expect(
      await page.locator('.stage iframe').evaluate((frame: HTMLIFrameElement) => frame.offsetHeight),
    ).toBeGreaterThan(500);
  });
});
