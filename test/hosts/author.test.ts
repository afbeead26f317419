import { fileURLToPath } from 'node:url';
import markdownIt from 'markdown-it';
import { marked } from 'marked';
import { type Browser, chromium, type Frame, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { CarDocument } from '../../core/document/car.js';
import { EMPTY_CAR } from '../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../core/document/example-corner.js';
import { EXAMPLE_SETUPS } from '../../core/document/example-setups.js';
import { carToLink } from '../../core/document/link.js';
import { byUser } from '../../core/document/own-car.js';
import { takeCorner } from '../../core/document/take-corner.js';
import { browser as findBrowser } from '../browser.mjs';
import { serve } from '../serve.mjs';

/*
 * An author, from a car in the address through the builder to a page of their own on another origin, in every form: what the element
 * says there is what it said in the builder. The cars are invented.
 */

const top = fileURLToPath(new URL('../../', import.meta.url));

const CORNER = { ...EXAMPLE_CORNER, lowerArm: { ...EXAMPLE_CORNER.lowerArm, ball: [0, 694, 181] } };
const POINTS = byUser({ ...EMPTY_CAR, by: 'points', ...takeCorner(CORNER), drop: 24, bumpTravel: 61 });
const READ = byUser({ ...EMPTY_CAR, by: 'readings', setups: EXAMPLE_SETUPS, drop: 20 });

let browser: Browser;
let site: Awaited<ReturnType<typeof serve>>;
let host: Awaited<ReturnType<typeof serve>>;
/** What the author's page is, as it is asked for. */
let served = '';

beforeAll(async () => {
  [browser, site, host] = await Promise.all([
    chromium.launch(await findBrowser()),
    serve({ folders: { '/bumpline/': `${top}dist/site` }, headers: () => ({ 'Access-Control-Allow-Origin': '*' }) }),
    serve({ folders: { '/': `${top}dist/site/embed/lowering` }, fill: () => served }),
  ]);
});
afterAll(() => Promise.all([browser?.close(), site?.close(), host?.close()]));

const at = () => `${site.origin}/bumpline/embed/`;

/** What an element on a page, or in a frame, says. */
const said = (page: Page | Frame, tag: string): Promise<string> =>
  page.evaluate(async (name) => {
    type Sheet = HTMLElement & { settled: Promise<void> };
    await customElements.whenDefined(name);
    let element = document.querySelector<Sheet>(name);
    for (let i = 0; !element && i < 100; i++) {
      await new Promise((resolve) => setTimeout(resolve, 20));
      element = document.querySelector<Sheet>(name);
    }
    await element!.settled;
    return element!.shadowRoot!.querySelector('.sentence')!.textContent.replace(/\s+/g, ' ').trim();
  }, tag);

/** The numbers in a sentence. A frame's car is its reader's own, of whose camber the sentence says where it ends up too. */
const numbersIn = (sentence: string): string[] => sentence.match(/[+−]?\d+(?:\.\d+)?/g)!;
const inFrame = (sentence: string): string[] => numbersIn(sentence.replace(/, to [−+]\d+\.\d+°/, ''));

interface Made {
  text: string;
  sentence: string;
}

/** What the builder makes of a car, and what its preview says of it. */
async function make(name: string, car: CarDocument, choices: Record<string, string> = {}): Promise<Made> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
  try {
    const page = await context.newPage();
    // Of a frame it is the site that has an address.
    const where = choices.form === 'frame' ? `${site.origin}/bumpline/` : at();
    const query = new URLSearchParams({ element: name, at: where, ...choices });
    await page.goto(`${site.origin}/bumpline/snippet-builder/?${query}#${carToLink(car)}`);
    const frame = (await (await page.waitForSelector('.stage iframe')).contentFrame())!;
    await frame.waitForSelector('#here > *');
    const sentence = await said(frame, `bumpline-${name}`);
    // With the sentence of the preview in it, for readers without scripts.
    await page.waitForFunction(
      (form) => form === 'frame' || /<p>[^<]*\d/.test(document.querySelector('#snippet-made')!.textContent),
      choices.form,
    );
    return { text: await page.locator('#snippet-made code').evaluate((code) => code.textContent), sentence };
  } finally {
    await context.close();
  }
}

/** The author's page with something in it. */
async function publish<T>(body: string, look: (page: Page) => Promise<T>): Promise<T> {
  served = `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
    <title>What I did to my car</title><link rel="icon" href="data:,"></head><body><h1>What I did to my car</h1>${body}</body></html>`;
  const context = await browser.newContext({ viewport: { width: 900, height: 900 } });
  const complaints: string[] = [];
  try {
    const page = await context.newPage();
    page.on('console', (message) => {
      if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
    });
    await page.goto(`${host.origin.replace('127.0.0.1', 'localhost')}/`);
    const found = await look(page);
    expect(complaints).toEqual([]);
    return found;
  } finally {
    await context.close();
  }
}

const article = (snippet: string) => `Some words before it.\n\n${snippet}\n\nSome *words* after it.\n`;

/* What differs between elements is what they read, and that is the same in all forms. */
describe('an author', () => {
  it.each([
    ['lowering', POINTS],
    ['readings', READ],
    ['compare', READ],
  ] as const)(
    'with %s pastes the element into a page, and into two kinds of Markdown: each says what the builder said',
    async (name, car) => {
      const tag = `bumpline-${name}`;
      const { text, sentence } = await make(name, car);
      expect(sentence).toMatch(/\d/);
      const renderers: [string, (source: string) => string][] = [
        ['HTML', (source) => source],
        ['marked', (source) => marked.parse(article(source), { async: false })],
        ['markdown-it', (source) => markdownIt({ html: true }).render(article(source))],
      ];
      for (const [kind, render] of renderers)
        expect(await publish(render(text), (page) => said(page, tag)), kind).toBe(sentence);
    },
  );

  it('pastes a frame into a page that has no script: it says the same, as high as its snippet said', async () => {
    const tag = 'bumpline-lowering';
    const { text, sentence } = await make('lowering', POINTS, { form: 'frame' });
    const [frame] = /<iframe[^>]*><\/iframe>/.exec(text)!;
    const height = Number(/height="(\d+)"/.exec(frame)![1]);
    await publish(frame, async (page) => {
      const inside = (await (await page.waitForSelector('iframe')).contentFrame())!;
      await inside.waitForSelector(tag);
      expect(inFrame(await said(inside, tag))).toEqual(numbersIn(sentence));
      expect(await page.locator('iframe').evaluate((one) => one.clientHeight)).toBe(height);
    });
    expect(height).toBeGreaterThan(300);
  });

  it.each([
    ['lowering', POINTS],
    ['compare', READ],
  ] as const)('with %s pastes a div: where only that and tables are left, it says the same', async (name, car) => {
    const tag = `bumpline-${name}`;
    const { text, sentence } = await make(name, car, { form: 'div' });
    const [head, div] = [text.slice(0, text.indexOf('<div')), text.slice(text.indexOf('<div'))];
    expect(div).not.toMatch(/<(?!\/?(?:div|p|data|table|caption|thead|tbody|tr|th|td)\b)/);
    expect(await publish(`${head}${div}`, (page) => said(page, tag))).toBe(sentence);
  });
});

describe('what is shown', () => {
  it.each([
    ['sentence', []],
    ['sentence drawing', ['drawing']],
    ['sentence chart', ['chart']],
    ['sentence table', ['table']],
    ['sentence drawing chart', ['drawing', 'chart']],
  ] as const)(
    '"%s" stands on the author’s page with the builder’s number, as an element, one of them in a frame too',
    async (show, parts) => {
      const shown = (page: Page | Frame) =>
        page.evaluate(async () => {
          const root = document.querySelector<HTMLElement & { settled: Promise<void> }>('bumpline-lowering')!
            .shadowRoot!;
          const is = (part: string) => {
            const found = root.querySelector(`[part~=${part}]`);
            return found?.checkVisibility() === true && found.getBoundingClientRect().height > 20;
          };
          return ['drawing', 'chart', 'table'].filter(is);
        });
      for (const form of show === 'sentence chart' ? ['element', 'frame'] : ['element']) {
        const { text, sentence } = await make('lowering', POINTS, { show, form });
        await publish(text, async (page) => {
          const place = form === 'frame' ? (await (await page.waitForSelector('iframe')).contentFrame())! : page;
          await place.waitForSelector('bumpline-lowering');
          expect(inFrame(await said(place, 'bumpline-lowering')), form).toEqual(numbersIn(sentence));
          expect(await shown(place), form).toEqual(parts);
        });
      }
    },
  );
});
