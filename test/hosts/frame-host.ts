import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type BrowserContextOptions, chromium, type Frame, type Page } from 'playwright-core';
import { browser as findBrowser } from '../browser.mjs';
import { serve } from '../serve.mjs';

/* Somebody's page with frames of the built site, which another server has, and a stranger's third. */

const top = fileURLToPath(new URL('../../', import.meta.url));

export const PHONE: BrowserContextOptions = { viewport: { width: 360, height: 780 } };
export const DESKTOP: BrowserContextOptions = { viewport: { width: 1280, height: 900 } };

export interface Host {
  body: string;
  head?: string;
  headers?: Record<string, string>;
  /** What the stranger's pages hold. */
  stranger?: string;
  options?: BrowserContextOptions;
}

type Answering = HTMLElement & { settled: Promise<void>; answer?: { change?: { value: number } } };

export async function startFrameHost(folder = `${top}dist/site`) {
  const browser = await chromium.launch(await findBrowser());
  // No header that lets other origins read: a frame must do without it.
  const site = await serve({ folders: { '/bumpline/': folder } });
  const at = `${site.origin}/bumpline/`;
  const script = `<script src="${at}embed/bumpline-frames.js" async></script>`;
  let served = { html: '', headers: {} as Record<string, string>, stranger: '' };
  // A file for every address that is asked for, with something else in it.
  const any = `${top}dist/site/embed/lowering`;
  const [page, others] = await Promise.all([
    serve({ folders: { '/': any }, fill: () => served.html, headers: () => served.headers }),
    serve({ folders: { '/': any, '/embed/lowering/': any }, fill: () => served.stranger }),
  ]);
  // Another site than that of the frames, as a browser counts them.
  const home = page.origin.replace('127.0.0.1', 'localhost');

  async function open(
    { body, head = '', headers = {}, stranger = '', options = PHONE }: Host,
    look: (page: Page) => Promise<void>,
  ) {
    const context = await browser.newContext(options);
    try {
      const html = `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
        <link rel="icon" href="data:,">${head}</head><body>${body}</body></html>`;
      served = { html, headers, stranger };
      const opened = await context.newPage();
      await opened.goto(`${home}/`);
      await look(opened);
    } finally {
      await context.close();
    }
  }

  return {
    at,
    home: `${home}/`,
    stranger: `${others.origin}/`,
    script,
    open,
    /** As an author writes it. @param query after `embed/` */
    frame: (query: string, more = '', height = 1000) =>
      `<iframe src="${at}embed/${query}" width="100%" height="${height}" style="border: 0" ${more}></iframe>`,
    close: () => Promise.all([browser, site, page, others].map((one) => one.close())),
  };
}

/** A frame of the page, when its element is settled. */
export async function settled(page: Page, index = 0): Promise<Frame> {
  const handle = await page.locator('iframe').nth(index).elementHandle();
  const frame = (await handle!.contentFrame())!;
  // Not frame by frame: what is far from the window is not painted.
  await frame.waitForFunction(() => document.querySelector<Answering>('[keep-in-address]')?.answer, undefined, {
    polling: 50,
  });
  await frame.evaluate(() => document.querySelector<Answering>('[keep-in-address]')!.settled);
  return frame;
}

export const sentenceIn = (frame: Frame): Promise<string> =>
  frame.evaluate(() =>
    document
      .querySelector('[keep-in-address]')!
      .shadowRoot!.querySelector('.sentence')!
      .textContent!.replace(/\s+/g, ' ')
      .trim(),
  );

export const changeIn = (frame: Frame): Promise<number | undefined> =>
  frame.evaluate(() => document.querySelector<Answering>('[keep-in-address]')!.answer?.change?.value);

/** How high what a frame shows is, px. */
export const contentHeight = (frame: Frame): Promise<number> =>
  frame.evaluate(() => Math.ceil(document.documentElement.getBoundingClientRect().height));

export const frameHeights = (page: Page): Promise<number[]> =>
  page.evaluate(() => [...document.querySelectorAll('iframe')].map(({ clientHeight }) => clientHeight));

/** Waits until a frame is as high as what it shows. */
export async function fitted(page: Page, frame: Frame, index = 0): Promise<number> {
  for (let i = 0; i < 100; i++) {
    const [height, content] = [(await frameHeights(page))[index]!, await contentHeight(frame)];
    if (height === content) return height;
    await page.waitForTimeout(50);
  }
  throw new Error(
    `The frame is ${(await frameHeights(page))[index]} px high, what it shows ${await contentHeight(frame)} px.`,
  );
}

export const framesScript = readFileSync(`${top}dist/site/embed/bumpline-frames.js`, 'utf8');
