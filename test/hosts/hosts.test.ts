import { appendFileSync, cpSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { browser as findBrowser } from '../browser.mjs';
import { EXPECTED_CHANGE_DEG, HOST_PAGES, type Policy, startHosts } from './host-server.js';

interface Check {
  name: string;
  ok: boolean;
  got: unknown;
  expected: unknown;
}

let browser: Browser;
let hosts: Awaited<ReturnType<typeof startHosts>>;

beforeAll(async () => {
  [browser, hosts] = await Promise.all([chromium.launch(await findBrowser()), startHosts()]);
});
afterAll(() => Promise.all([browser?.close(), hosts?.close()]));

const DESKTOP: BrowserContextOptions = { viewport: { width: 1000, height: 800 } };
const PHONE: BrowserContextOptions = { viewport: { width: 360, height: 740 }, deviceScaleFactor: 2, hasTouch: true };

interface Options extends BrowserContextOptions {
  /** How many times slower than this machine the page's own thread is. */
  slower?: number;
}

async function open(address: string, { slower, ...options }: Options, look: (page: Page) => Promise<void>) {
  const context = await browser.newContext(options);
  try {
    const page = await context.newPage();
    if (slower) {
      const session = await context.newCDPSession(page);
      await session.send('Emulation.setCPUThrottlingRate', { rate: slower });
    }
    await page.goto(address);
    await look(page);
  } finally {
    await context.close();
  }
}

/** What the page found out about itself, failed checks only. */
async function failures(page: Page): Promise<Check[]> {
  // A function, because strings are evaluated in the page, which its policy may forbid.
  const found = await page.waitForFunction(() => (window as { result?: { checks: Check[] } }).result);
  const result = (await found.jsonValue())!;
  expect(result.checks.length).toBeGreaterThan(0);
  return result.checks.filter(({ ok }) => !ok);
}

describe('a page of somebody else', () => {
  const cases: [what: string, policy: Policy, page: string, options: Options][] = [
    ...HOST_PAGES.map(
      ([what, policy, page, width]) =>
        [what, policy, page, width === 'narrow' ? PHONE : DESKTOP] as [string, Policy, string, Options],
    ),
    ['the standalone file, on a slow phone', 'open', 'plain', { ...PHONE, slower: 6 }],
    [
      'no blob workers, on a slow phone, where the core runs on its one thread',
      'strict',
      'strict',
      { ...PHONE, slower: 6 },
    ],
  ];
  it.each(cases)(
    'with %s: right answer, where it should be computed, nothing moves, no error',
    async (_what, ...how) => {
      const [policy, name, options] = how;
      await open(hosts.address(policy, name), options, async (page) => {
        expect(await failures(page)).toEqual([]);
      });
    },
  );

  it('shows the author’s text and table where scripts are off', async () => {
    await open(hosts.address('open', 'plain'), { ...PHONE, javaScriptEnabled: false }, async (page) => {
      const element = page.locator('bumpline-lowering');
      expect(await element.getByText('adds about 0.6° of negative camber').isVisible()).toBe(true);
      expect(await element.getByRole('row').count()).toBe(12);
      for (const row of await element.getByRole('row').all()) expect(await row.isVisible()).toBe(true);
      // The author's figure is true of the author's points.
      expect(EXPECTED_CHANGE_DEG).toBeCloseTo(-0.6, 1);
    });
  });
});

describe('a page whose elements come one after another', () => {
  type Elements = Element & { settled: Promise<void>; state: string; drop: number; answer: Record<string, never> };

  /** The state of each element once it is settled. */
  const look = (page: Page) =>
    page.evaluate(async () => {
      const elements = [
        ...document.querySelectorAll<Elements>('bumpline-lowering, bumpline-readings, bumpline-clearance'),
      ];
      for (const element of elements) await element.settled;
      return elements.map(({ state }) => state);
    });

  it.each<[string, boolean]>([
    ['in a worker', false],
    ['on the page', true],
  ])('%s: one core answers all of them, and those that were there answer on', async (_where, isOnPage) => {
    await open(hosts.address('inline', 'layers'), DESKTOP, async (page) => {
      if (isOnPage) {
        await page.addInitScript(() => Reflect.set(globalThis, Symbol.for('bumpline.main-thread'), true));
        await page.reload();
      }
      const mode = isOnPage ? 'main-thread' : 'worker';
      const failed = (await failures(page)).filter(({ got }) => got !== mode);
      expect(failed).toEqual([]);
      const answer = () => page.evaluate(() => document.querySelector<Elements>('bumpline-lowering')!.answer);
      const before = await answer();
      for (const name of ['readings', 'clearance']) {
        await page.evaluate(
          (tag) => document.querySelector('#later')!.append(document.createElement(tag)),
          `bumpline-${name}`,
        );
        await page.waitForFunction((tag) => document.querySelector<Elements>(tag)?.settled, `bumpline-${name}`);
      }
      expect(await look(page)).toEqual(['ready', 'example', 'example']);
      // The heights of the first are changed while the layers of the others have joined: the same source, solved by another core.
      for (const drop of [25, 40]) {
        await page.evaluate((mm) => {
          document.querySelector<Elements>('bumpline-lowering')!.drop = mm;
        }, drop);
        await look(page);
      }
      expect(await answer()).toEqual(before);
      const workers = await page.evaluate(() => (globalThis as unknown as { workers(): boolean[] }).workers());
      expect(workers.filter((isEnded) => !isEnded)).toHaveLength(isOnPage ? 0 : 1);
      expect(workers.length > 1).toBe(!isOnPage);
    });
  });
});

describe('elements that share a car, each with a copy of the code of its own', () => {
  type Elements = Element & { settled: Promise<void>; state: string; answer?: unknown; drop: number };

  it('share one worker, ask it of one source, and answer for themselves', async () => {
    await open(hosts.address('inline', 'shared'), DESKTOP, async (page) => {
      const look = () =>
        page.evaluate(async () => {
          const elements = [...document.querySelectorAll<Elements>('bumpline-car > *')];
          for (const element of elements) await element.settled;
          return elements.map(({ state, answer }) => `${state}: ${JSON.stringify(answer)}`);
        });
      await page.waitForFunction(() =>
        [...document.querySelectorAll<Elements>('bumpline-car > *')].every(({ answer }) => answer),
      );
      const before = await look();
      await page.evaluate(() => {
        document.querySelector<Elements>('bumpline-lowering')!.drop = 33;
      });
      const after = await look();
      expect(after.map((answer, i) => answer === before[i])).toEqual([false, false]);
      for (const answer of [...before, ...after]) expect(answer).toMatch(/^example: {/);
      const { workers, sources } = await page.evaluate(() => {
        const { workers, sources } = globalThis as unknown as { workers(): boolean[]; sources(): number[] };
        return { workers: workers(), sources: sources() };
      });
      expect(workers.filter((isEnded) => !isEnded)).toHaveLength(1);
      expect(sources.length).toBeGreaterThan(2);
      expect(new Set(sources).size).toBe(1);
    });
  });
});

describe('a picture that a reader takes along', () => {
  const FORMS = ['svg', 'png'] as const;

  /** Opens the fold, presses both buttons of the chart, and tells what was saved by each, and what was said. */
  async function taken(page: Page): Promise<{ saved: Record<string, string | undefined>; said: string }> {
    const fold = page.locator('bumpline-lowering .take-along');
    await fold.locator('summary').click();
    const saved: Record<string, string | undefined> = {};
    let said = '';
    for (const form of FORMS) {
      const coming = page.waitForEvent('download', { timeout: 3000 }).catch(() => undefined);
      await fold.locator(`[data-kind=chart] [data-form=${form}]`).click();
      const file = await Promise.race([coming, fold.locator('.svg-instead').waitFor()]);
      saved[form] = file ? readFileSync(await file.path(), 'latin1') : undefined;
      await page.evaluate(
        () => document.querySelector<Element & { settled: Promise<void> }>('bumpline-lowering')!.settled,
      );
      said = ((await fold.locator('[role=status]').textContent()) ?? '').replace(/\s+/g, ' ').trim();
    }
    return { saved, said };
  }

  it('is saved as SVG and PNG where the page allows pictures', async () => {
    await open(hosts.address('open', 'plain'), DESKTOP, async (page) => {
      const { saved, said } = await taken(page);
      expect(saved.svg).toMatch(/^<svg[\s\S]*<\/svg>$/);
      expect(saved.png?.slice(1, 4)).toBe('PNG');
      expect(said).toBe('Saved as bumpline-lowering-chart-front-left.png.');
    });
  });

  it('is no PNG where the policy takes no picture made of a text: that is said, and the SVG is the same and stands there', async () => {
    await open(hosts.address('strict', 'strict'), DESKTOP, async (page) => {
      const { saved, said } = await taken(page);
      expect(saved.svg).toMatch(/^<svg[\s\S]*Source: http[\s\S]*<\/svg>$/);
      expect(saved.png).toBeUndefined();
      expect(said).toContain('let no PNG be made');
      const coming = page.waitForEvent('download');
      await page.locator('bumpline-lowering .svg-instead').click();
      expect(readFileSync(await (await coming).path(), 'latin1')).toBe(saved.svg);
    });
  });
});

describe('the small entry', () => {
  const dist = fileURLToPath(new URL('../../dist/cdn', import.meta.url));

  async function withTampered(part: RegExp, look: (page: Page) => Promise<void>) {
    const cdnFolder = mkdtempSync(join(tmpdir(), 'bumpline-cdn-'));
    cpSync(dist, cdnFolder, { recursive: true });
    const [file] = readdirSync(cdnFolder).filter((name) => part.test(name));
    appendFileSync(join(cdnFolder, file!), '\n;globalThis.tampered = true;');
    const tampered = await startHosts({ cdnFolder });
    try {
      await open(tampered.address('open', 'entry'), DESKTOP, look);
    } finally {
      await tampered.close();
      rmSync(cdnFolder, { recursive: true });
    }
  }

  it('never runs an element whose bytes are not the ones that were built, and leaves the author’s text', async () => {
    await withTampered(/^lowering-app-.*\.js$/, async (page) => {
      expect((await failures(page)).map(({ name }) => name)).toContain('the sentence says the independent change');
      expect(await page.evaluate(() => (globalThis as { tampered?: boolean }).tampered)).toBeUndefined();
      expect(await page.getByText('adds about 0.6° of negative camber').isVisible()).toBe(true);
    });
  });

  it('never runs what follows the answer if its bytes are not the ones that were built; the answer stands', async () => {
    await withTampered(/^lowering-body-.*\.js$/, async (page) => {
      const failed = (await failures(page)).map(({ name }) => name);
      expect(failed).toContain('the chart is drawn');
      expect(failed).not.toContain('the sentence says the independent change');
      expect(await page.evaluate(() => (globalThis as { tampered?: boolean }).tampered)).toBeUndefined();
    });
  });
});
