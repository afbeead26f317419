/** Engines other than the one all tests run in: where they are installed, their version, and pages in them. */
import { spawn } from 'node:child_process';
import { accessSync, constants, existsSync, readdirSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { env, platform } from 'node:process';
import { chromium } from 'playwright-core';
import { launch } from 'puppeteer-core';
import { browser as findChromium } from '../browser.mjs';
import { end, startDriver, tied, WebDriverPage } from './webdriver.mjs';

const runs = (program) => {
  try {
    accessSync(program, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};
/** The first of these names that is a program on the path, or the first of these files that is one. */
function find(variable, names, files = []) {
  const onPath = names.flatMap((name) => (env.PATH ?? '').split(delimiter).map((folder) => join(folder, name)));
  return [env[variable], ...onPath, ...files].filter(Boolean).find(runs);
}

/** Linux without a screen: one that nobody sees. Its number is the first that is free. */
async function screen() {
  if (platform !== 'linux' || env.DISPLAY || env.WAYLAND_DISPLAY) return { env, close: () => {} };
  const program = find('XVFB_PATH', ['Xvfb']);
  if (!program) throw new Error('no screen, and no Xvfb to stand in for one');
  let number = 99;
  while (existsSync(`/tmp/.X11-unix/X${number}`)) number++;
  const screen = [`:${number}`, '-screen', '0', '800x1200x24', '-nolisten', 'tcp'];
  const child = tied(spawn(program, screen, { stdio: 'ignore', detached: true }));
  for (let i = 0; i < 100 && !existsSync(`/tmp/.X11-unix/X${number}`); i++) {
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  return { env: { ...env, DISPLAY: `:${number}` }, close: () => end(child) };
}

async function startChromium() {
  const browser = await chromium.launch(await findChromium());
  return {
    version: `Chromium ${browser.version()}`,
    async page({ width, height }) {
      const context = await browser.newContext({ viewport: { width, height } });
      const page = await context.newPage();
      return Object.assign(page, { setViewport: (size) => page.setViewportSize(size), done: () => context.close() });
    },
    close: () => browser.close(),
  };
}

const firefoxProgram = () =>
  find('FIREFOX_PATH', ['firefox-esr', 'firefox'], ['/Applications/Firefox.app/Contents/MacOS/firefox']);

async function startFirefox() {
  const browser = await launch({ browser: 'firefox', executablePath: firefoxProgram(), headless: true });
  return {
    version: (await browser.version()).replace('/', ' '),
    browser,
    async page({ width, height }) {
      const context = await browser.createBrowserContext();
      const page = await context.newPage();
      await page.setViewport({ width, height });
      return Object.assign(page, { done: () => context.close() });
    },
    close: () => browser.close(),
  };
}

const webkitProgram = () => find('WEBKIT_DRIVER_PATH', ['WebKitWebDriver']);
/** The browser that comes with the engine, made to be driven. */
const miniBrowser = () => {
  const folders = ['/usr/lib', '/usr/libexec'].filter(existsSync);
  const inside = folders.flatMap((folder) => readdirSync(folder).map((name) => join(folder, name)));
  const places = [...folders, ...inside].flatMap((folder) =>
    ['4.1', '6.0', '4.0'].map((v) => `${folder}/webkit2gtk-${v}/MiniBrowser`),
  );
  return find('MINIBROWSER_PATH', ['MiniBrowser'], places);
};

/** A driver has one session at a time, and takes long to begin one: every page is the same window, told apart by its origin. */
async function startWebKit() {
  const shown = await screen();
  const driver = await startDriver(webkitProgram(), '--port=', shown.env);
  const close = async () => {
    await driver.close();
    await shown.close();
  };
  const browser = { binary: miniBrowser(), args: ['--automation'] };
  const always = { 'webkitgtk:browserOptions': browser, timeouts: { script: 120_000 } };
  const { sessionId, capabilities } = await driver
    .send('POST', '/session', { capabilities: { alwaysMatch: always } }, 30_000)
    .catch(async (error) => {
      await close();
      throw error;
    });
  const opened = new WebDriverPage(driver, sessionId);
  return {
    version: `WebKitGTK ${capabilities.browserVersion}`,
    async page(size) {
      await opened.setViewport(size);
      return Object.assign(opened, { done: () => opened.goto('about:blank') });
    },
    async close() {
      await driver.send('DELETE', `/session/${sessionId}`, undefined, 10_000).catch(() => {});
      await close();
    },
  };
}

const ENGINES = {
  chromium: { isThere: () => true, start: startChromium },
  firefox: { isThere: () => firefoxProgram() !== undefined, start: startFirefox },
  webkit: { isThere: () => webkitProgram() !== undefined && miniBrowser() !== undefined, start: startWebKit },
};

export const isInstalled = (name) => ENGINES[name].isThere();
export async function startEngine(name) {
  try {
    return await ENGINES[name].start();
  } catch {
    // Programs on a busy machine are slow to find each other: once more.
    return ENGINES[name].start();
  }
}
/** The one a test file is asked to use, by the environment's `ENGINE`; Chromium if none. */
export const askedEngine = () => startEngine(env.ENGINE ?? 'chromium');
