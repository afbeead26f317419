/** What is needed of W3C WebDriver (https://www.w3.org/TR/webdriver2/) to show pages in an engine whose driver is a program of its own. */
import { spawn } from 'node:child_process';
import { createServer } from 'node:net';

const WAIT_MS = 20_000;

const sleep = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

/** A port that nobody has at the moment. */
export function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.on('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });
}

/** Has a program that was started here as the head of a group end with this one, however that ends. */
export function tied(child) {
  const last = () => {
    if (child.pid !== undefined && child.exitCode === null && child.signalCode === null) process.kill(-child.pid);
  };
  process.once('exit', last);
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.once(signal, () => process.exit(1));
  child.once('exit', () => process.off('exit', last));
  return child;
}

/** Ends a program that was started here as the head of a group, with all that it started, and waits for its end. */
export function end(child) {
  if (child.pid === undefined || child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((resolve) => {
    child.once('exit', resolve);
    process.kill(-child.pid);
    const last = setTimeout(() => process.kill(-child.pid, 'SIGKILL'), 3000);
    child.once('exit', () => clearTimeout(last));
  });
}

/**
 * Starts a driver program.
 *
 * @returns `send(method, path, body)`: its answer's value, or an Error with the driver's own words
 */
export async function startDriver(program, portArgument, env) {
  const port = await freePort();
  const child = tied(spawn(program, [`${portArgument}${port}`], { env, stdio: 'ignore', detached: true }));
  let failure;
  child.on('error', (error) => {
    failure = error;
  });
  const send = async (method, path, body, ms = 180_000) => {
    const response = await fetch(`http://127.0.0.1:${port}${path}`, {
      method,
      headers: { 'Content-Type': 'application/json' },
      ...(body && { body: JSON.stringify(body) }),
      // A driver that says nothing at all has lost its browser.
      signal: AbortSignal.timeout(ms),
    });
    const { value } = await response.json();
    if (!response.ok) throw new Error(`${method} ${path}: ${value?.error}: ${value?.message}`);
    return value;
  };
  for (const until = Date.now() + WAIT_MS; ; await sleep(50)) {
    if (failure) throw failure;
    if (await send('GET', '/status').catch(() => undefined)) break;
    if (Date.now() > until) throw new Error(`${program} did not answer within ${WAIT_MS} ms.`);
  }
  return { send, close: () => end(child) };
}

/** Names of keys as the tests write them: https://www.w3.org/TR/webdriver2/#keyboard-actions */
const KEYS = {
  Backspace: '\uE003',
  Tab: '\uE004',
  Enter: '\uE006',
  Shift: '\uE008',
  Control: '\uE009',
  Alt: '\uE00A',
  Escape: '\uE00C',
  PageUp: '\uE00E',
  PageDown: '\uE00F',
  End: '\uE010',
  Home: '\uE011',
  ArrowLeft: '\uE012',
  ArrowUp: '\uE013',
  ArrowRight: '\uE014',
  ArrowDown: '\uE015',
  Delete: '\uE017',
  Meta: '\uE03D',
};
const BUTTONS = { left: 0, middle: 1, right: 2 };

/** A window of a session, with the names that other drivers' pages have for the same. */
export class WebDriverPage {
  #send;

  constructor(driver, session) {
    this.#send = (method, path, body) => driver.send(method, `/session/${session}${path}`, body);
  }

  goto(url) {
    return this.#send('POST', '/url', { url });
  }

  async reload() {
    await this.#send('POST', '/refresh', {});
  }

  url() {
    return this.#send('GET', '/url');
  }

  /** Calls a function in the page and waits for what it gives; an error there is one here. */
  async evaluate(work, argument = null) {
    const script = `
      const [argument, done] = arguments;
      (async () => (${work})(argument))().then(
        (value) => done({ value }),
        (error) => done({ error: String(error?.stack ?? error) }));`;
    const { value, error } = await this.#send('POST', '/execute/async', { script, args: [argument] });
    if (error !== undefined) throw new Error(error);
    return value;
  }

  /** The page's own width and height, CSS px: the window is larger by what the browser puts around it. */
  async setViewport({ width, height }) {
    const inner = () => this.evaluate(() => [innerWidth, innerHeight]);
    for (let [wide, high] = [width, height], tries = 0; tries < 3; tries++) {
      await this.#send('POST', '/window/rect', { width: wide, height: high });
      // A window takes its time.
      for (let i = 0; i < 10; i++) {
        const [w, h] = await inner();
        if (w === width && h === height) return;
        await sleep(30);
      }
      const [w, h] = await inner();
      [wide, high] = [wide + width - w, high + height - h];
    }
  }

  #act(id, type, actions) {
    return this.#send('POST', '/actions', { actions: [{ id, type, actions }] });
  }

  #key = (type, name) => ({ type, value: KEYS[name] ?? name });

  keyboard = {
    down: (name) => this.#act('keys', 'key', [this.#key('keyDown', name)]),
    up: (name) => this.#act('keys', 'key', [this.#key('keyUp', name)]),
    press: (name) => this.#act('keys', 'key', [this.#key('keyDown', name), this.#key('keyUp', name)]),
    type: (text) =>
      this.#act(
        'keys',
        'key',
        [...text].flatMap((letter) => [this.#key('keyDown', letter), this.#key('keyUp', letter)]),
      ),
  };

  #mouse(...actions) {
    return this.#act('mouse', 'pointer', actions);
  }

  mouse = {
    move: (x, y) => this.#mouse({ type: 'pointerMove', x, y, duration: 0 }),
    down: ({ button = 'left' } = {}) => this.#mouse({ type: 'pointerDown', button: BUTTONS[button] }),
    up: ({ button = 'left' } = {}) => this.#mouse({ type: 'pointerUp', button: BUTTONS[button] }),
    click: (x, y, { button = 'left' } = {}) =>
      this.#mouse(
        { type: 'pointerMove', x, y, duration: 0 },
        { type: 'pointerDown', button: BUTTONS[button] },
        { type: 'pointerUp', button: BUTTONS[button] },
      ),
    reset: () => this.#send('DELETE', '/actions'),
  };
}
