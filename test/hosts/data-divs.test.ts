import { fileURLToPath } from 'node:url';
import { type DefaultTreeAdapterTypes, parseFragment, serialize } from 'parse5';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import elements from '../../components/elements.json' with { type: 'json' };
import { browser as findBrowser } from '../browser.mjs';
import { serve } from '../serve.mjs';
import { DROP_MM, EXPECTED_CHANGE_DEG, rows } from './host-server.js';

/*
 * A system that keeps what its authors write, but for scripts and for tags and attributes it does not know. What is left of a div with
 * data-bumpline becomes the element, on a page that has the script once for all.
 */

type Node = DefaultTreeAdapterTypes.ChildNode;
const KNOWN_TAGS = /^(?:div|p|table|caption|thead|tbody|tr|th|td|strong|em|a|ul|li|figure)$/;
const KNOWN_ATTRIBUTES = /^(?:data-[\w-]+|class|id|lang|style|href)$/;

/** What such a system publishes. */
function sanitised(html: string): string {
  const kept = (nodes: Node[]): Node[] =>
    nodes.flatMap((node) => {
      if (!('tagName' in node)) return node.nodeName === '#text' ? [node] : [];
      if (/^(?:script|style)$/.test(node.tagName)) return [];
      const childNodes = kept(node.childNodes);
      if (!KNOWN_TAGS.test(node.tagName)) return childNodes;
      const attrs = node.attrs.filter(({ name }) => KNOWN_ATTRIBUTES.test(name));
      return [{ ...node, attrs, childNodes }];
    });
  const fragment = parseFragment(html);
  return serialize({ ...fragment, childNodes: kept(fragment.childNodes) });
}

const TABLE = `<table lang="en"><caption>Hard points of an invented corner</caption>
<thead><tr><th>Point</th><th>x (mm)</th><th>y (mm)</th><th>z (mm)</th></tr></thead><tbody>${rows()}</tbody></table>`;
const WORDS = '<p>Lowering this car by 40 mm adds about 0.6° of negative camber.</p>';
const DIV = `<div class="wide" data-bumpline="lowering" data-drop="${DROP_MM}" data-bump-travel="62" data-onclick="alert(1)" data-block="7" onclick="alert(1)" style="min-height: 500px">${TABLE}${WORDS}</div>`;

const FILES = {
  standalone: '/standalone/bumpline-standalone.js',
  cdn: '/cdn/bumpline.js',
};
const script = (file: string, more = '') => `<script type="module" src="${file}" ${more}></script>`;

let browser: Browser;
let host: Awaited<ReturnType<typeof serve>>;
let html = '';
beforeAll(async () => {
  const top = fileURLToPath(new URL('../../', import.meta.url));
  const folders = {
    '/standalone/': `${top}dist/standalone`,
    '/cdn/': `${top}dist/cdn`,
    '/': `${top}test/hosts`,
  };
  [browser, host] = await Promise.all([chromium.launch(await findBrowser()), serve({ folders, fill: () => html })]);
});
afterAll(() => Promise.all([browser?.close(), host?.close()]));

/** @param look gets what the page has warned of so far */
async function open(head: string, body: string, look: (page: Page, warned: string[]) => Promise<void>): Promise<void> {
  html = `<!doctype html><html lang="en"><head><meta charset="utf-8">${head}</head><body>${sanitised(body)}</body></html>`;
  const page = await browser.newPage();
  const warned: string[] = [];
  page.on('console', (message) => message.type() === 'warning' && warned.push(message.text()));
  try {
    await page.goto(`${host.origin}/plain.html`);
    await look(page, warned);
  } finally {
    await page.close();
  }
}

type Answering = HTMLElement & { settled: Promise<void>; answer?: { change: { value: number } }; car?: object };

/** What the elements of a kind answer, in the order of the page. */
const answers = async (page: Page, count = 1) => {
  await page.waitForFunction(
    (least) => {
      const found = [...document.querySelectorAll<Answering>('bumpline-lowering')];
      return found.length >= least && found.every(({ answer }) => answer);
    },
    count,
    { polling: 50 },
  );
  return page.evaluate(async () => {
    const found = [...document.querySelectorAll<Answering>('bumpline-lowering')];
    await Promise.all(found.map((one) => one.settled));
    return found.map(({ answer }) => answer!.change.value);
  });
};

/** Of each div: how many elements, tables in them, and things beside them. */
const insideDivs = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('[data-bumpline]')].map((div) => [
      div.querySelectorAll('bumpline-lowering').length,
      div.querySelectorAll('bumpline-lowering > table').length,
      div.childNodes.length,
    ]),
  );

describe.each(Object.entries(FILES))('a page with the %s file', (_name, file) => {
  it('has the element in its place inside the div, with its attributes, its table and its number', async () => {
    await open(script(file), `<bumpline-lowering>lost</bumpline-lowering>${DIV}`, async (page, warned) => {
      const [answer] = await answers(page);
      expect(answer).toBeCloseTo(EXPECTED_CHANGE_DEG, 5);
      const found = await page.evaluate(() => {
        const div = document.querySelector<HTMLElement>('[data-bumpline]')!;
        const element = div.querySelector('bumpline-lowering')!;
        return {
          around: `${div.className}, ${div.style.minHeight}`,
          beside: div.childNodes.length,
          inside: [...element.children].map(({ localName }) => localName),
          attributes: Object.fromEntries([...element.attributes].map(({ name, value }) => [name, value])),
        };
      });
      expect(found).toEqual({
        around: 'wide, 500px',
        beside: 1,
        inside: ['table', 'p'],
        // Nothing of the system's own, and nothing that its filter would not have let through.
        attributes: { drop: String(DROP_MM), 'bump-travel': '62' },
      });
      expect(warned).toEqual([]);
    });
  });

  it('has it of a div that comes later, wherever it comes, and of those in a car, which share it', async () => {
    const car = `<div data-bumpline="car"><div data-bumpline="lowering" data-drop="${DROP_MM}">${TABLE}</div>
      <p>And once more:</p><div data-bumpline="lowering"></div></div>`;
    await open(script(file), '<ul></ul>', async (page) => {
      await page.waitForFunction(() => customElements.get('bumpline-lowering'));
      await page.evaluate(
        ([one, several]) => {
          const item = document.createElement('li');
          item.innerHTML = one!;
          document.querySelector('ul')!.append(item);
          document.body.insertAdjacentHTML('beforeend', several!);
        },
        [sanitised(DIV), sanitised(car)],
      );
      // The last has neither a table nor a drop of its own.
      for (const answer of await answers(page, 3)) expect(answer).toBeCloseTo(EXPECTED_CHANGE_DEG, 5);
      const nested = await page.evaluate(() =>
        [...document.querySelectorAll('bumpline-car > div > bumpline-lowering')].map(
          (one) => one.closest('bumpline-car')!.parentElement!.dataset.bumpline,
        ),
      );
      expect(nested).toEqual(['car', 'car']);
    });
  });

  it('is told once of a name that no element has, with those there are, and what stands in the div stays', async () => {
    const wrong = `<div data-bumpline="nosuch">${WORDS}</div>`;
    await open(script(file), wrong + wrong + DIV, async (page, warned) => {
      await answers(page);
      expect(warned).toHaveLength(1);
      expect(warned[0]).toContain(`data-bumpline="nosuch"`);
      for (const { tag } of elements) expect(warned[0]).toContain(tag.replace('bumpline-', ''));
      expect(await page.locator(`[data-bumpline=nosuch] > p`).count()).toBe(2);
    });
  });
});

it('a page with both files, one of them twice, has one element in each div', async () => {
  const head = script(FILES.standalone) + script(`${FILES.standalone}?again`) + script(FILES.cdn);
  await open(head, DIV + DIV, async (page) => {
    for (const answer of await answers(page, 2)) expect(answer).toBeCloseTo(EXPECTED_CHANGE_DEG, 5);
    await page.waitForFunction(() => performance.getEntriesByType('resource').length >= 3);
    await page.waitForTimeout(200);
    expect(await insideDivs(page)).toEqual([
      [1, 1, 1],
      [1, 1, 1],
    ]);
  });
});

it('a script that runs before the page is whole waits for what stands in a div', async () => {
  let release = () => {};
  const isWanted = new Promise<void>((resolve) => {
    release = resolve;
  });
  const page = await browser.newPage();
  await page.route('**/slow.js', async (route) => {
    await isWanted;
    await route.fulfill({ contentType: 'text/javascript', body: '' });
  });
  html = `<!doctype html><html lang="en"><head>${script(FILES.standalone, 'async')}</head><body>${DIV.replace('<tr>', '<tr><script src="/slow.js"></script>')}</body></html>`;
  await page.goto(`${host.origin}/plain.html`, { waitUntil: 'commit' });
  await page.waitForFunction(() => customElements.get('bumpline-lowering'));
  expect(await page.evaluate(() => [document.readyState, document.querySelectorAll('th').length])).toEqual([
    'loading',
    0,
  ]);
  release();
  const [answer] = await answers(page);
  expect(answer).toBeCloseTo(EXPECTED_CHANGE_DEG, 5);
  expect(await insideDivs(page)).toEqual([[1, 1, 1]]);
  await page.close();
});
