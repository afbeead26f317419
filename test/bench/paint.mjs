import { fileURLToPath } from 'node:url';
import { launchAll, loadInWords, PEER, phone, quantile, servePages, TARGETS, threadTime } from './bench-pages.mjs';
import { timeInputs } from './in-page.mjs';

/*
 * What a slow phone sees of the built articles, as ratios to a page with lit, comlink, a worker that knows one formula, one path and a
 * slider. All are opened in turn, again and again, in every browser that there is, so that a machine whose speed drifts slows all alike.
 * Printed, never asserted.
 */
const ROUNDS = Number(process.env.PAINT_ROUNDS ?? 7);
const KEYS_A_ROUND = 12;
/** A browser tells of no shorter task, ms: where there was none, the ratio is to this, and at least that. */
const SHORTEST_TOLD = 50;
/** 150 ms there and back, 1.6 Mbit/s down, 0.75 Mbit/s up. */
const SLOW_LINE = { latency: 150, downloadThroughput: 200_000, uploadThroughput: 93_750 };

const MODES = [
  { name: 'worker', isMainThread: false },
  { name: 'main thread', isMainThread: true },
];

/** @returns what one opening of a page, and some arrow keys on its slider, took: ms */
async function round(browser, origin, target, { isMainThread }) {
  const { page, session, close } = await phone(browser, { isMainThread });
  try {
    await page.goto(`${origin}/${target.url}`);
    await page.waitForFunction(() => globalThis.seen.first > 0);
    await page.evaluate((tag) => document.querySelector(tag).settled, target.tag);
    await page.waitForTimeout(800);
    const { first, tasks, shift } = await page.evaluate(() => globalThis.seen);
    const found = { first: [first], longest: [Math.max(SHORTEST_TOLD, ...tasks)], shift: [shift], delays: [], key: [] };
    if (!target.isDragged) return found;
    if (target.prepare) await page.evaluate(target.prepare);
    await page.evaluate(timeInputs, target.tag);
    const before = await threadTime(session);
    for (let i = 0; i < KEYS_A_ROUND; i++) {
      await page.keyboard.press(i < KEYS_A_ROUND / 2 ? 'ArrowRight' : 'ArrowLeft');
      await page.waitForTimeout(90);
    }
    found.key.push(((await threadTime(session)) - before) * (1000 / KEYS_A_ROUND));
    found.delays = await page.evaluate(() => globalThis.delays);
    return found;
  } finally {
    await close();
  }
}

/** @returns ms to the first painted answer of a cold page on a slow line */
async function slowLoad(browser, origin, target) {
  const { page, close } = await phone(browser, { throttle: 1, line: SLOW_LINE });
  try {
    await page.goto(`${origin}/${target.url}`);
    await page.waitForFunction(() => globalThis.seen.first > 0);
    return await page.evaluate(() => globalThis.seen.first);
  } finally {
    await close();
  }
}

const FIGURES = [
  ['first answer', ({ first }) => quantile(first, 0.5)],
  ['longest task', ({ longest }) => quantile(longest, 0.5)],
  ['input → painted p50', ({ delays }) => quantile(delays, 0.5)],
  ['p95', ({ delays }) => quantile(delays, 0.95)],
  ['thread a key', ({ key }) => quantile(key, 0.5)],
];

export async function paint() {
  const site = await servePages();
  const browsers = await launchAll();
  const all = TARGETS.flatMap((target) =>
    MODES.flatMap((mode) => browsers.map(({ browser }) => ({ browser, target, mode, found: {}, slow: [] }))),
  );
  const before = loadInWords();
  try {
    // A browser's first page is slow whatever it shows.
    for (const { browser } of browsers) await round(browser, site.origin, PEER, MODES[0]);
    for (let i = 0; i < ROUNDS; i++) {
      for (const one of i % 2 ? all.toReversed() : all) {
        const found = await round(one.browser, site.origin, one.target, one.mode);
        for (const [name, values] of Object.entries(found)) one.found[name] = [...(one.found[name] ?? []), ...values];
        if (!one.mode.isMainThread) one.slow.push(await slowLoad(one.browser, site.origin, one.target));
      }
    }
  } finally {
    for (const { browser } of browsers) await browser.close();
    await site.close();
  }
  console.log(`360 × 780, thread slowed 4 times, ${ROUNDS} rounds; × is against the bare peer with its worker`);
  console.log(`Before: ${before}. After: ${loadInWords()}.`);
  for (const { browser, name } of browsers) {
    console.log(`\nIn ${name}:`);
    print(all.filter((one) => one.browser === browser));
  }
}

function print(all) {
  const peer = all.find(({ target, mode }) => target === PEER && !mode.isMainThread);
  for (const { target, mode, found, slow } of all) {
    const says = ([name, of]) => {
      const value = of(found);
      if (!Number.isFinite(value)) return '';
      const base = of(peer.found);
      const isFloor = name === 'longest task' && base === SHORTEST_TOLD;
      return `${name} ${value.toFixed(0)} ms ${isFloor ? '≥ ' : ''}${(value / base).toFixed(2)}×`;
    };
    const line = slow.length
      ? `slow line ${quantile(slow, 0.5).toFixed(0)} ms ${(quantile(slow, 0.5) / quantile(peer.slow, 0.5)).toFixed(2)}×`
      : '';
    const shift = `shift ${Math.max(...found.shift).toFixed(4)}`;
    console.log(
      [`${target.name.padEnd(20)}${mode.name.padEnd(12)}`, ...FIGURES.map(says), line, shift]
        .filter(Boolean)
        .join('  '),
    );
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await paint();
