import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { browser as findBrowser } from '../browser.mjs';
import { serve } from '../serve.mjs';

/*
 * One question, two ways to answer it: six measurements with a tape read as a strut plane in front view, and eight hard points. Their answers
 * need not agree in the second decimal place, so each says which it is where it stands.
 */

const dist = fileURLToPath(new URL('../../dist/site', import.meta.url));
const PAGES = [
  '',
  'what-lowering-does-to-camber/',
  'how-much-bump-is-left/',
  'height-or-part/',
  'measure-your-own-camber-curve/',
  'will-it-clear-at-full-bump/',
  'put-it-in-your-article/',
];
/** What a number is called in `data-name`, and the words that say where it comes from. */
const WAYS = [
  [/^(?:change-30|reversal-change)$/, /hard points/i],
  [/^tape-(?:change-30|reversal-change)$/, /six (?:figures|measurements)|with a tape/i],
] as const;

const plain = (html: string) =>
  html
    .replace(/<svg[\s\S]*?<\/svg>/g, '')
    .replace(/<[^>]+>/g, '')
    .replace(/&nbsp;/g, ' ')
    .replace(/\s+/g, ' ');

/** The paragraph, list item or captioned table that a place in a page lies in; an element's sentence with the tables below it. */
function blockAt(html: string, at: number): string {
  const answer = html.lastIndexOf('<p class="answer">', at);
  if (answer >= 0 && html.indexOf('</p>', answer) > at) return html.slice(answer, html.indexOf('</bumpline-', answer));
  const starts = [...html.slice(0, at).matchAll(/<(p|li|table|figcaption)\b[^>]*>/g)];
  for (const start of starts.reverse()) {
    const end = html.indexOf(`</${start[1]}>`, start.index);
    if (end > at) return html.slice(start.index, end);
  }
  throw new Error('A number outside every block.');
}

describe('what lowering the example by 30 mm does', () => {
  for (const folder of PAGES) {
    const html = readFileSync(`${dist}/${folder}index.html`, 'utf8');
    for (const found of html.matchAll(/<data\b[^>]*data-name="([^"]+)"[^>]*>/g)) {
      const words = WAYS.find(([names]) => names.test(found[1]!))?.[1];
      if (!words) continue;
      it(`/${folder} says beside ${found[1]} where it comes from, at ${found.index}`, () => {
        expect(plain(blockAt(html, found.index))).toMatch(words);
      });
    }
  }

  it('has one number a way on all pages', () => {
    const shown = new Map<string, Set<string>>();
    for (const folder of PAGES) {
      const html = readFileSync(`${dist}/${folder}index.html`, 'utf8');
      for (const [, name, text] of html.matchAll(/<data\b[^>]*data-name="([^"]+)"[^>]*>([\s\S]*?)<\/data>/g)) {
        if (!WAYS.some(([names]) => names.test(name!))) continue;
        const numbers = shown.get(name!) ?? new Set();
        shown.set(name!, numbers.add(plain(text!).replace('−', '')));
      }
    }
    expect(Object.fromEntries([...shown].map(([name, numbers]) => [name, [...numbers]]))).toEqual({
      'change-30': ['0.39°'],
      'tape-change-30': ['0.39°'],
      'reversal-change': ['0.56°'],
      'tape-reversal-change': ['0.59°'],
    });
  });
});

describe('the calculator on the page', () => {
  let browser: Browser;
  let site: Awaited<ReturnType<typeof serve>>;
  beforeAll(async () => {
    [browser, site] = await Promise.all([chromium.launch(await findBrowser()), serve({ folders: { '/': dist } })]);
  });
  afterAll(() => Promise.all([browser?.close(), site?.close()]));

  it('gives the numbers that the text says are of six measurements', async () => {
    const page = await browser.newPage({ viewport: { width: 360, height: 780 } });
    try {
      await page.goto(`${site.origin}/what-lowering-does-to-camber/`);
      const element = page.locator('bumpline-lowering').first();
      await element.evaluate((one) => (one as HTMLElement & { settled: Promise<void> }).settled);
      await element.locator('.why summary').click();
      const numbers = await element.evaluate((one) => {
        const { answer } = one as HTMLElement & { answer: { change: { value: number }; reversal: { change: number } } };
        const text = (selector: string) => one.shadowRoot!.querySelector(selector)!.textContent!;
        return {
          change: answer.change.value,
          turn: answer.reversal.change,
          sentence: text('.sentence'),
          why: text('.why'),
        };
      });
      const inText = async (name: string) =>
        Number(await page.locator(`section data[data-name="${name}"]`).first().getAttribute('value'));
      expect(numbers.change).toBeCloseTo(await inText('tape-change-30'), 3);
      expect(numbers.turn).toBeCloseTo(await inText('tape-reversal-change'), 3);
      expect(numbers.sentence).toContain('0.39°');
      expect(numbers.why).toContain('0.59°');
    } finally {
      await page.close();
    }
  });
});
