import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isLookedAt } from '../pages/site-source.js';
import { serve } from '../serve.mjs';
import { askedEngine, type Engine } from './engines.mjs';

interface Facts {
  overflow(): string[];
  nameless(): string[];
  besideOthers(): string[];
  settled(): Promise<number>;
}
type WithFacts = typeof globalThis & { pageFacts: Facts; complaints: string[] };

const path = (relative: string) => fileURLToPath(new URL(relative, import.meta.url));
const dist = path('../../dist/site');
const facts = readFileSync(path('../pages/page-facts.js'), 'utf8');
const pages = readdirSync(dist, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.html'))
  .map((file) => file.replace(/index\.html$/, ''))
  .filter(isLookedAt)
  .sort();

/** First in every page, so that it hears of everything: not every driver tells of it. */
const LISTENING = `<script>
globalThis.complaints = [];
addEventListener('error', ({ message, target }) => {
  // Firefox calls a preload of what is loaded already an error.
  if (target.rel !== 'modulepreload') complaints.push(message ?? 'not loaded: ' + (target.src ?? target.href));
}, true);
addEventListener('unhandledrejection', ({ reason }) => complaints.push(String(reason)));
for (const level of ['error', 'warn']) console[level] = (...words) => complaints.push(level + ': ' + words.join(' '));
${facts}
</script>`;

let engine: Engine;
let site: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  const fill = (_path: string, html: string) => html.replace(/<head>/i, (head) => `${head}${LISTENING}`);
  [engine, site] = await Promise.all([askedEngine(), serve({ folders: { '/': dist }, fill })]);
});
afterAll(() => Promise.all([engine?.close(), site?.close()]));

it('the site has pages', () => {
  expect(pages.length).toBeGreaterThan(1);
});

/** A window that cannot be made as narrow as a phone (WebKitGTK's: 447 px) is shown as narrow as it goes. Overlaps of text depend on fonts: see layout.test.ts. */
describe.each([360, 760, 1280])('in a window %i px wide', (width) => {
  it.each(pages)(
    'page "%s" has its answers, no error, and nothing too wide, over another or without a name',
    async (name) => {
      const page = await engine.page({ width, height: 900 });
      await page.goto(`${site.origin}/${name}`);
      const found = await page.evaluate(async () => {
        const { pageFacts, complaints } = globalThis as WithFacts;
        await document.fonts.ready;
        await pageFacts.settled();
        type Sheet = HTMLElement & { state?: string };
        const sheets = [...document.querySelectorAll<Sheet>('main *')].filter((one) => one.state !== undefined);
        const sentence = (sheet: Sheet) => sheet.shadowRoot!.querySelector('.sentence')?.textContent ?? '';
        return {
          unanswered: sheets
            .filter((one) => !/\d/.test(sentence(one)))
            .map((one) => `${one.localName}: ${sentence(one)}`),
          overflow: pageFacts.overflow(),
          nameless: pageFacts.nameless(),
          besideOthers: pageFacts.besideOthers(),
          complaints,
        };
      });
      await page.done();
      expect(found).toEqual({
        unanswered: [],
        overflow: [],
        nameless: [],
        besideOthers: [],
        complaints: [],
      });
    },
  );
});
