import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';
import { launch, phone, servePages } from './bench-pages.mjs';

/*
 * What a slow phone shows of the built lowering article, every 50 ms: a cold load, the same by a friend's link, and a drag of the
 * drop. Each is a page of stills to look at, in test/.screenshots/. Nothing is asserted: `test/pages/linked.test.ts` reads the texts.
 */
const STEP_MS = 50;
const ARTICLE = 'what-lowering-does-to-camber/';
const TAG = 'bumpline-lowering';
const path = (relative) => fileURLToPath(new URL(`../../${relative}`, import.meta.url));
const folder = path('test/.screenshots');

/** A car that shares no figure with the example. */
async function friendsLink() {
  const load = async (file) => (await runnerImport(path(file))).module;
  const [{ EMPTY_CAR }, { carToLink }, { byUser }] = await Promise.all(
    ['core/document/car.ts', 'core/document/link.ts', 'core/document/own-car.ts'].map(load),
  );
  const measures = Object.entries({
    armLength: [309, 2],
    pivotHeight: [171, 2],
    ballHeight: [187, 2],
    wheelCentreHeight: [288, 2],
    damperLean: [11.5, 0.4],
    topHeight: [776, 2],
  }).map(([key, [value, plusMinus]]) => [key, { value, plusMinus }]);
  return carToLink(
    byUser({ ...EMPTY_CAR, drop: 41, given: { ...EMPTY_CAR.given, measures: Object.fromEntries(measures) } }),
  );
}

/** @returns every frame that was painted while `run` ran, and 600 ms longer: ms since its start, and the picture */
async function filmed(session, run) {
  const frames = [];
  const started = Date.now() / 1000;
  const keep = ({ data, metadata, sessionId }) => {
    frames.push({ at: (metadata.timestamp - started) * 1000, data });
    session.send('Page.screencastFrameAck', { sessionId }).catch(() => {});
  };
  session.on('Page.screencastFrame', keep);
  await session.send('Page.startScreencast', { format: 'jpeg', quality: 70, everyNthFrame: 1 });
  await run();
  await new Promise((done) => setTimeout(done, 600));
  await session.send('Page.stopScreencast');
  session.off('Page.screencastFrame', keep);
  return { frames, length: (Date.now() / 1000 - started) * 1000 };
}

/** What stood on the screen every 50 ms, one still below its time; a still that is the one before is left pale. */
function sheetOf(title, { frames, length }) {
  const stills = Array.from({ length: Math.ceil(length / STEP_MS) }, (_, i) => ({
    at: i * STEP_MS,
    frame: frames.findLast(({ at }) => at <= i * STEP_MS),
  }));
  const cells = stills.map(({ at, frame }, i) => {
    const isSame = i > 0 && frame === stills[i - 1].frame;
    const picture = frame ? `<img src="data:image/jpeg;base64,${frame.data}">` : '<i></i>';
    return `<figure class="${isSame ? 'same' : ''}"><figcaption>${at} ms</figcaption>${picture}</figure>`;
  });
  return `<!doctype html><html lang="en"><meta charset="utf-8"><title>${title}</title><style>
body { margin: 8px; font: 13px system-ui; display: flex; flex-wrap: wrap; gap: 6px; background: #888 }
h1 { inline-size: 100%; margin: 0; font-size: 16px }
figure { margin: 0 } img, i { display: block; inline-size: 180px; block-size: 390px; background: #c0c }
.same img { opacity: 0.35 }
</style><h1>${title}, ${frames.length} frames painted</h1>${cells.join('\n')}</html>`;
}

async function load(browser, address, title) {
  const { page, session, close } = await phone(browser);
  const film = await filmed(session, async () => {
    await page.goto(address);
    await page.waitForFunction(() => globalThis.seen.first > 0);
    await page.evaluate((tag) => document.querySelector(tag).settled, TAG);
  });
  await close();
  return [title, film];
}

async function drag(browser, address, title) {
  const { page, session, close } = await phone(browser);
  await page.goto(address);
  await page.waitForFunction(() => globalThis.seen.first > 0);
  const box = await page.evaluate(async (tag) => {
    const element = document.querySelector(tag);
    await element.settled;
    const slider = element.shadowRoot.querySelector('input[type=range]');
    slider.scrollIntoView({ block: 'center' });
    const { x, y, width, height } = slider.getBoundingClientRect();
    return { from: x + width * ((slider.valueAsNumber - slider.min) / (slider.max - slider.min)), y: y + height / 2 };
  }, TAG);
  await page.waitForTimeout(400);
  const touch = (type, x) =>
    session.send('Input.dispatchTouchEvent', { type, touchPoints: x === undefined ? [] : [{ x, y: box.y }] });
  const film = await filmed(session, async () => {
    await touch('touchStart', box.from);
    for (let i = 1; i <= 40; i++) {
      await Promise.all([touch('touchMove', box.from + i * 3), new Promise((done) => setTimeout(done, 25))]);
    }
    await touch('touchEnd');
  });
  await close();
  return [title, film];
}

export async function film() {
  const site = await servePages();
  const browser = await launch();
  const address = `${site.origin}/${ARTICLE}`;
  mkdirSync(folder, { recursive: true });
  try {
    const films = {
      cold: await load(browser, address, 'A cold load'),
      link: await load(browser, `${address}#${await friendsLink()}`, 'A cold load by a friend’s link'),
      drag: await drag(browser, address, 'A drag of the drop'),
    };
    const page = await browser.newPage({ viewport: { width: 1880, height: 900 } });
    for (const [name, [title, one]] of Object.entries(films)) {
      const file = `${folder}/film-${name}`;
      writeFileSync(`${file}.html`, sheetOf(title, one));
      await page.goto(`file://${file}.html`);
      await page.screenshot({ path: `${file}.png`, fullPage: true });
      console.log(`${title}: ${one.frames.length} frames in ${one.length.toFixed(0)} ms, ${file}.png`);
    }
  } finally {
    await browser.close();
    await site.close();
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await film();
