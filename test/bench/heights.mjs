/**
 * How high each element is, by its width and by what of it is shown, as it opens with its example, the whole also with the data of each of
 * the site's pages: the figures that
 * components/delivery/reserved-heights.json keeps and the builds make style sheets of.
 *
 *   node test/bench/heights.mjs [--write] [tag …]      needs dist/standalone (npm run build:standalone)
 *
 * Measured in every browser of this machine that the tests know, because letters differ in width: the highest counts.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { browserInWords, browsers } from '../browser.mjs';

const path = (relative) => fileURLToPath(new URL(`../../${relative}`, import.meta.url));
const FILE = path('components/delivery/reserved-heights.json');

/** px of a column with the usual letters; on both sides of the steps where charts come side by side, and drawing beside chart. */
export const WIDTHS = [280, 320, 360, 400, 480, 639, 640, 735, 736, 759, 760, 920, 1040, 1200];
const EM = 16;
/** For the lines of text that break between the widths measured, em: in the whole there are more of them. */
const roomOf = (show) => (show ? 0.25 : 1.25);

const SHEETS = JSON.parse(readFileSync(path('components/elements.json'), 'utf8'))
  .filter(({ article }) => article !== undefined)
  .map(({ tag }) => tag);

/** Besides English: a file each. */
export const LANGUAGES = readdirSync(path('components/words')).flatMap(
  (file) => /^([a-z]{2,3})\.ts$/.exec(file)?.[1] ?? [],
);

async function serve(language) {
  const script = readFileSync(path('dist/standalone/bumpline-standalone.js'));
  const page = `<!doctype html><html lang="${language}"><meta charset="utf-8"><title>Heights</title><style>body { margin: 0 }</style>
    <script type="module" src="/bumpline.js"></script><main id="column"></main></html>`;
  const server = createServer(({ url }, response) => {
    const isScript = url === '/bumpline.js';
    response.setHeader('content-type', isScript ? 'text/javascript' : 'text/html');
    response.end(isScript ? script : page);
  });
  await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
  return { address: `http://127.0.0.1:${server.address().port}/`, close: () => server.close() };
}

const EXAMPLES = path('site/partials/reference/examples/');

/** The pages of the site, which hold elements with data, and the examples of its reference. */
const articles = () =>
  [
    ...JSON.parse(readFileSync(path('site/pages.json'), 'utf8')).map(({ path: of }) => path(`site/${of}index.html`)),
    ...readdirSync(EXAMPLES).map((file) => `${EXAMPLES}${file}`),
  ].map((file) => readFileSync(file, 'utf8'));

/** In the page: how an element of this kind stands in some pages, its car around it. */
function markupsIn({ tag, pages }) {
  const found = pages.flatMap((html) =>
    [...new DOMParser().parseFromString(html, 'text/html').querySelectorAll(tag)].map(
      (element) => (element.closest('bumpline-car') ?? element).outerHTML,
    ),
  );
  return [...new Set(found)].map((markup) => markup.replaceAll('keep-in-address', ''));
}

/** In the page: the height of one element at each width, px. */
async function heightsHere({ tag, markup, widths }) {
  const column = document.getElementById('column');
  const frame = () => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
  let element;
  const heights = [];
  for (const [i, width] of widths.entries()) {
    column.style.width = `${width}px`;
    // What stands open in two columns is folded in one, as it was when the element came.
    if (i === 0 || (width >= 760 && widths[i - 1] < 760)) {
      column.innerHTML = markup;
      element = column.querySelector(tag);
    }
    await element.settled;
    for (const box of element.shadowRoot.querySelectorAll('.chart-box, .drawing-place, .chart-place')) {
      box.scrollIntoView({ block: 'center' });
      await frame();
      await frame();
    }
    await element.settled;
    await frame();
    await frame();
    heights.push(element.shadowRoot.querySelector('.inside').getBoundingClientRect().height);
  }
  return heights;
}

/** Every set of the words that an element takes; undefined: the whole of it. */
function showsOf(words) {
  const sets = [[]];
  for (const word of words.filter((one) => one !== 'sentence')) sets.push(...sets.map((set) => [...set, word]));
  return [undefined, ...sets.map((set) => ['sentence', ...set].join(' '))];
}

async function highest(page, tag, show, widths) {
  const alone = `<${tag} ${show ? `show="${show}"` : ''}></${tag}>`;
  const inPages = show ? [] : await page.evaluate(markupsIn, { tag, pages: articles() });
  const rows = [];
  for (const markup of [alone, ...inPages]) rows.push(await page.evaluate(heightsHere, { tag, markup, widths }));
  return widths.map((_, i) => Math.max(...rows.map((row) => row[i])));
}

/** @returns {Promise<Record<string, Record<string, number[]>>>} by tag and `show` (the whole: ''), px at each of `WIDTHS` */
export async function measureHeights(options, tags = SHEETS, shows = undefined, widths = WIDTHS, language = 'en') {
  const server = await serve(language);
  const browser = await chromium.launch(options);
  console.log(`in ${browserInWords(browser, options)}`);
  const found = {};
  try {
    const page = await browser.newPage({ viewport: { width: 1300, height: 2400 } });
    await page.goto(server.address);
    await page.waitForFunction(() => customElements.get('bumpline-toe'));
    for (const tag of tags) {
      found[tag] = {};
      const words = await page.evaluate((name) => [...customElements.get(name).shows], tag);
      for (const show of shows ?? showsOf(words)) found[tag][show ?? ''] = await highest(page, tag, show, widths);
    }
  } finally {
    await browser.close();
    server.close();
  }
  return found;
}

async function report() {
  const tags = SHEETS.filter((tag) => process.argv.length < 4 || process.argv.includes(tag));
  const kept = JSON.parse(readFileSync(FILE, 'utf8'));
  const heights = await heightsIn('en', tags, kept.heights);
  const languages = {};
  for (const language of LANGUAGES) languages[language] = await heightsIn(language, tags, kept.languages?.[language]);
  if (!process.argv.includes('--write')) return;
  const rows = (of, deep) =>
    Object.entries(of)
      .map(([show, row]) => `${deep}  ${JSON.stringify(show)}: ${JSON.stringify(row).replaceAll(',', ', ')}`)
      .join(',\n');
  const tagged = (of, deep) =>
    SHEETS.map((tag) => `${deep}${JSON.stringify(tag)}: {\n${rows(of[tag], deep)}\n${deep}}`).join(',\n');
  const widths = JSON.stringify(WIDTHS.map((width) => width / EM)).replaceAll(',', ', ');
  const others = LANGUAGES.map(
    (language) => `    ${JSON.stringify(language)}: {\n${tagged(languages[language], '      ')}\n    }`,
  ).join(',\n');
  writeFileSync(
    FILE,
    `{\n  "widths": ${widths},\n  "heights": {\n${tagged(heights, '    ')}\n  },\n  "languages": {\n${others}\n  }\n}\n`,
  );
}

/** @returns {Promise<Record<string, Record<string, number[]>>>} em; those that were not asked for as they were */
async function heightsIn(language, tags, kept) {
  console.log(`── ${language} ──`);
  const all = [];
  for (const options of await browsers()) all.push(await measureHeights(options, tags, undefined, WIDTHS, language));
  const heights = { ...kept };
  for (const tag of tags) {
    heights[tag] = Object.fromEntries(
      Object.keys(all[0][tag]).map((show) => [
        show,
        WIDTHS.map(
          (_, i) => Math.ceil((Math.max(...all.map((one) => one[tag][show][i])) / EM + roomOf(show)) * 10) / 10,
        ),
      ]),
    );
    for (const [show, row] of Object.entries(heights[tag]))
      console.log(`${tag} ${show || '(whole)'}`.padEnd(56), row.map((height) => String(height).padStart(6)).join(''));
  }
  return heights;
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) await report();
