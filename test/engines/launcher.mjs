import { startEngine } from './engines.mjs';

/** What a driver cannot have an engine do. Tests that need it are counted apart: see wtr.config.mjs. */
export const CANNOT = 'The driver of this engine cannot';

/** Runs the test runner's sessions in an engine, one page after another; the runner's commands find what they know of a page. */
export function engineLauncher(name) {
  let engine;
  let current;
  /** A page with the names that the runner's commands use; setting back what was never set is no harm. */
  const commanded = (page) => ({
    keyboard: page.keyboard,
    mouse: page.mouse,
    setViewport: (size) => page.setViewport(size),
    async emulateMediaFeatures(features) {
      if (features.length) throw new Error(`${CANNOT} emulate ${features.map(({ name }) => name)}.`);
    },
    async emulateMediaType(type) {
      if (type !== 'screen') throw new Error(`${CANNOT} emulate ${type}.`);
    },
  });
  return {
    name,
    // What the runner's commands call a page with these methods.
    type: 'puppeteer',
    concurrency: 1,
    async startSession(id, url) {
      engine ??= await startEngine(name);
      const page = await engine.page({ width: 800, height: 600 });
      current = { id, url, page };
      await page.goto(url);
    },
    isActive: (id) => current?.id === id,
    getBrowserUrl: () => current?.url,
    getPage: () => commanded(current.page),
    async stopSession() {
      const { page } = current;
      current = undefined;
      await page.done();
      return {};
    },
    async startDebugSession() {
      throw new Error('Engines are not debugged from here: open the page in the browser itself.');
    },
    async stop() {
      await engine?.close();
      engine = undefined;
    },
  };
}
