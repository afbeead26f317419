import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { FIRST_CAUTIONS, GENERAL_CAUTIONS } from '../../components/element/first-cautions.js';
import { browser as findBrowser } from '../browser.mjs';
import { LATE_PARTS } from '../components/contract/late-parts.js';
import { serve } from '../serve.mjs';

/* Each element's caution comes with its first answer, in every form it is delivered in: with all that comes later taken away it is there. */

const dist = fileURLToPath(new URL('../../dist', import.meta.url));
const names = Object.keys(LATE_PARTS) as (keyof typeof LATE_PARTS)[];

let browser: Browser;
let server: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  [browser, server] = await Promise.all([
    chromium.launch(await findBrowser()),
    serve({ folders: { '/': `${dist}/` } }),
  ]);
});
afterAll(() => Promise.all([browser?.close(), server?.close()]));

/** A page of ours with some of its files refused, by what `isLate` says of their names. */
async function without(
  address: string,
  isLate: (file: string) => boolean,
  body: string | undefined,
  look: (page: Page) => Promise<void>,
) {
  const page = await browser.newPage({ viewport: { width: 360, height: 780 } });
  const refused: string[] = [];
  try {
    await page.route('**/*', (route) => {
      const url = new URL(route.request().url());
      if (url.pathname === '/host.html') return route.fulfill({ contentType: 'text/html', body: body! });
      const file = url.pathname.split('/').at(-1)!;
      if (!file.endsWith('.js') || !isLate(file)) return route.continue();
      refused.push(file);
      return route.abort();
    });
    await page.goto(`${server.origin}${address}`);
    await look(page);
    // A busy machine may be slow to ask for what comes later.
    await expect.poll(() => refused.length, { timeout: 5000 }).toBeGreaterThan(0);
  } finally {
    await page.close();
  }
}

async function expectCaution(page: Page, name: keyof typeof LATE_PARTS): Promise<void> {
  const element = page.locator(name).first();
  await element.locator('.sentence b').first().waitFor();
  expect(await element.locator('.cautions.first').textContent()).toBe(FIRST_CAUTIONS[LATE_PARTS[name].caution]);
  expect(await element.locator('.cautions.first').isVisible()).toBe(true);
  // Its own hazards and, as the page's first, what holds everywhere, wherever its body is.
  const said = (await element.locator('.sheet > aside.cautions').textContent())!;
  for (const words of [...LATE_PARTS[name].hazards, ...GENERAL_CAUTIONS]) expect(said).toContain(words);
  expect(await element.locator('.sheet > aside.cautions').isVisible()).toBe(true);
  expect(await element.locator('.body').count()).toBe(0);
}

describe('without anything that comes later', () => {
  it.each(names)('the small entry’s %s has its caution under its sentence', async (name) => {
    const { entry, needs } = JSON.parse(readFileSync(`${dist}/cdn/chunks.json`, 'utf8')) as {
      entry: string;
      needs: Record<string, string[]>;
    };
    const wanted = new Set([entry, ...needs[LATE_PARTS[name].app]!]);
    // The core of readings is what answers readings and compared sets.
    for (const file of needs['readings-bridge'] ?? []) wanted.add(file);
    const body = `<!doctype html><html lang="en"><body><${name}></${name}><script type="module" src="/cdn/${entry}"></script></body></html>`;
    await without(
      '/host.html',
      (file) => !wanted.has(file),
      body,
      (page) => expectCaution(page, name),
    );
  });

  it.each(names.map((name) => [LATE_PARTS[name].page, name] as const))(
    'the site’s page %s has the caution of %s',
    async (folder, name) => {
      await without(
        `/site/${folder}/`,
        (file) => /-body-/.test(file),
        undefined,
        (page) => expectCaution(page, name),
      );
    },
  );
});

describe('the npm package', () => {
  /** Everything that a module imports at once, dynamic imports left aside. */
  const closure = (file: string, seen = new Set<string>()): Set<string> => {
    if (seen.has(file) || !existsSync(file)) return seen;
    seen.add(file);
    for (const [, specifier] of readFileSync(file, 'utf8').matchAll(/\b(?:from|import)\s*['"](\.[^'"]+)['"]/g)) {
      closure(join(dirname(file), specifier!), seen);
    }
    return seen;
  };
  it.each(names)('%s imports its caution with its first answer', (name) => {
    const folder = join(dist, 'npm/components', name);
    expect(readdirSync(folder)).toContain(`${LATE_PARTS[name].app}.js`);
    const files = [...closure(join(folder, `${LATE_PARTS[name].app}.js`))].map((file) => file.split('/').at(-1));
    expect(files).toContain('first-cautions.js');
    expect(files.filter((file) => /-body\.js$/.test(file!))).toEqual([]);
  });
});
