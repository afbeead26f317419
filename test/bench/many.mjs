import { fileURLToPath } from 'node:url';
import { launch, phone, quantile, servePages, threadTime } from './bench-pages.mjs';

/*
 * A page with 1, 5 and 30 elements, each with a car of its own and all with one, as the cdn build gives them: what the page's thread
 * works a key on the first one's slider, as a ratio to as many peers; and whether memory levels off over inputs, and comes back when
 * elements are taken out. Printed, never asserted.
 */
const COUNTS = [1, 5, 30];
const KEYS = 20;
const ROUNDS = 3;
const INPUTS = 2000;
const REMOVALS = 200;

const CDN = '<script type="module" src="/cdn/bumpline.js"></script>';
const PEER = '<script type="module" src="/peer/reference-peer.js"></script>';
const times = (count, text) => Array.from({ length: count }, () => text).join('\n');
const lowering = '<bumpline-lowering></bumpline-lowering>';

const PAGES = COUNTS.flatMap((count) => [
  { kind: 'peer', count, tag: 'reference-peer', body: PEER + times(count, '<reference-peer></reference-peer>') },
  { kind: 'own cars', count, tag: 'bumpline-lowering', body: CDN + times(count, lowering) },
  {
    kind: 'one car',
    count,
    tag: 'bumpline-lowering',
    body: `${CDN}<bumpline-car>${times(count, lowering)}</bumpline-car>`,
  },
]).map((page) => ({ ...page, name: `${page.kind}-${page.count}`.replace(' ', '-'), keys: [] }));

const settled = (tag) => Promise.all([...document.querySelectorAll(tag)].map((element) => element.settled));

async function open(browser, origin, { name, tag }) {
  const opened = await phone(browser, { throttle: 1 });
  await opened.page.goto(`${origin}/peer/${name}.html`);
  await opened.page.waitForFunction((name) => customElements.get(name), tag);
  await opened.page.evaluate(settled, tag);
  await opened.page.waitForTimeout(500);
  return opened;
}

async function aKey(browser, origin, target) {
  const { page, session, close } = await open(browser, origin, target);
  await page.evaluate((tag) => {
    document.querySelector(tag).shadowRoot.querySelector('input[type=range]').focus();
  }, target.tag);
  const before = await threadTime(session);
  for (let i = 0; i < KEYS; i++) {
    await page.keyboard.press(i < KEYS / 2 ? 'ArrowRight' : 'ArrowLeft');
    await page.waitForTimeout(120);
  }
  const taken = ((await threadTime(session)) - before) * (1000 / KEYS);
  await close();
  return taken;
}

/** Bytes of the page's heap after a collection. */
async function heap(session) {
  await session.send('HeapProfiler.collectGarbage');
  return (await session.send('Runtime.getHeapUsage')).usedSize;
}

async function memory(browser, origin) {
  const { page, session, close } = await open(browser, origin, { name: 'own-cars-1', tag: 'bumpline-lowering' });
  const move = (from, to) =>
    page.evaluate(
      async ([from, to]) => {
        const element = document.querySelector('bumpline-lowering');
        const slider = element.shadowRoot.querySelector('input[type=range]');
        for (let i = from; i < to; i++) {
          slider.valueAsNumber = i % 60;
          slider.dispatchEvent(new InputEvent('input', { bubbles: true }));
          slider.dispatchEvent(new Event('change', { bubbles: true }));
          if (i % 10 === 0) await element.settled;
        }
      },
      [from, to],
    );
  await move(0, INPUTS / 2);
  const half = await heap(session);
  await move(INPUTS / 2, INPUTS);
  console.log(`memory: ${INPUTS} inputs end at ${((await heap(session)) / half).toFixed(3)} of what half of them took`);
  const addAndRemove = (count) =>
    page.evaluate(async (count) => {
      for (let i = 0; i < count; i++) {
        const element = document.createElement('bumpline-lowering');
        document.body.append(element);
        await element.settled;
        element.remove();
      }
    }, count);
  await addAndRemove(REMOVALS / 10);
  const few = await heap(session);
  await addAndRemove(REMOVALS);
  const more = (await heap(session)) - few;
  console.log(`memory: ${REMOVALS} elements added and removed leave ${(more / REMOVALS / 1024).toFixed(2)} kB each`);
  await close();
}

export async function many() {
  const site = await servePages(Object.fromEntries(PAGES.map(({ name, body }) => [name, body])));
  const browser = await launch();
  try {
    for (let i = 0; i < ROUNDS; i++) {
      for (const page of PAGES) page.keys.push(await aKey(browser, site.origin, page));
    }
    for (const { kind, count, keys } of PAGES) {
      const peers = PAGES.find((one) => one.kind === 'peer' && one.count === count);
      const value = quantile(keys, 0.5);
      const ratio = value / quantile(peers.keys, 0.5);
      console.log(
        `${String(count).padStart(2)} × ${kind.padEnd(9)} ${value.toFixed(1)} ms a key  ${ratio.toFixed(2)}×`,
      );
    }
    await memory(browser, site.origin);
  } finally {
    await browser.close();
    await site.close();
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await many();
