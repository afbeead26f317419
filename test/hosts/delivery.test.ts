import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { askedEngine, type Engine, type EnginePage } from '../engines/engines.mjs';
import { type Policy, startHosts } from './host-server.js';

/*
 * The small entry carries the hash of every other file. Whatever a server sends in a file's place, however often it is asked and
 * whatever it says of keeping: what is not the file that was built never runs, and what is, is fetched once. In each engine, because
 * they differ in what they check: WebKit loads a preload whose hash is wrong.
 */

let engine: Engine;
beforeAll(async () => {
  engine = await askedEngine();
});
afterAll(() => engine?.close());

const { needs } = JSON.parse(readFileSync(new URL('../../dist/cdn/chunks.json', import.meta.url), 'utf8')) as {
  needs: Record<string, string[]>;
};
/** Files of the first answer from a table, those that others import among them, and those that come after it. */
const first = [
  ...new Set(['lowering-app', 'lowering/point-table', 'lowering/points.generated'].flatMap((name) => needs[name]!)),
];
const late = needs['lowering/lowering-body']!.filter((file) => !first.includes(file));
const isOf = (files: string[], path: string) => files.some((file) => path === `/cdn/${file}`);

interface Seen {
  sentence: string | undefined;
  chart: boolean;
  tampered: boolean;
}

interface Server {
  policy?: Policy;
  cache?: string;
  spoil?: (path: string, body: string, time: number) => string | undefined;
}

async function withPage(server: Server, look: (page: EnginePage, asked: () => string[]) => Promise<void>) {
  const hosts = await startHosts(server);
  const page = await engine.page({ width: 1000, height: 800 });
  try {
    await page.goto(hosts.address(server.policy ?? 'open', 'entry'));
    await look(page, () => hosts.cdn.requests.filter((path) => path.startsWith('/cdn/')));
  } finally {
    await page.done();
    await hosts.close();
  }
}

/** Waits until nothing more comes, and says what there is. Scrolled to, so that everything is asked for. */
const seen = (page: EnginePage) =>
  page.evaluate(async (): Promise<Seen> => {
    const element = [...document.querySelectorAll<HTMLElement & { settled?: Promise<void> }>('bumpline-lowering')].at(
      -1,
    )!;
    const root = () => element.shadowRoot;
    const place = () => root()?.querySelector('.chart');
    for (let i = 0; i < 40 && !place()?.querySelector('svg'); i++) {
      await element.settled;
      place()?.scrollIntoView();
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
    return {
      sentence: root()?.querySelector('.sentence')?.textContent?.replace(/\s+/g, ' ').trim(),
      chart: place()?.querySelector('svg') != null,
      tampered: (globalThis as { tampered?: boolean }).tampered === true,
    };
  });

const appendedTo = (body: string) => `globalThis.tampered = true;\n${body}`;
const ANSWER = /adds 0\.\d\d° of negative camber/;

describe.each([['no-store'], ['max-age=600']])('a server that says Cache-Control: %s', (cache) => {
  it('is asked once for every file, and once alone where its second answer would be another file', async () => {
    const spoil = (path: string, body: string, time: number) =>
      path.startsWith('/cdn/') && time > 1 ? appendedTo(body) : body;
    await withPage({ cache, spoil }, async (page, asked) => {
      expect(await seen(page)).toEqual({ sentence: expect.stringMatching(ANSWER), chart: true, tampered: false });
      expect([...asked()].sort()).toEqual([...new Set(asked())].sort());
      expect(asked()).toEqual(expect.arrayContaining([...first, ...late].map((file) => `/cdn/${file}`)));
    });
  });

  it.each(first)('that sends another file for %s has it never run, and nothing is answered', async (file) => {
    const spoil = (path: string, body: string) => (isOf([file], path) ? appendedTo(body) : body);
    await withPage({ cache, spoil }, async (page) => {
      const { tampered, sentence } = await seen(page);
      expect(tampered).toBe(false);
      expect(sentence ?? '').not.toMatch(ANSWER);
      // Where the element itself could not come, the author's text stays.
      const text = () => page.evaluate(() => document.querySelector('bumpline-lowering p')!.checkVisibility());
      if (needs['lowering-app']!.includes(file)) expect(await text()).toBe(true);
    });
  });

  it('that sends other files for what comes after the answer has none of them run, and the answer stands', async () => {
    const spoil = (path: string, body: string) => (isOf(late, path) ? appendedTo(body) : body);
    await withPage({ cache, spoil }, async (page) => {
      expect(await seen(page)).toEqual({ sentence: expect.stringMatching(ANSWER), chart: false, tampered: false });
    });
  });

  it.each([
    ['is not to be had the first time', () => undefined],
    ['sends another file the first time', appendedTo],
  ])(
    'that %s is asked again, although browsers remember what failed: the element has all its files then',
    async (_what, firstTime) => {
      const spoil = (path: string, body: string, time: number) =>
        isOf([...first, ...late], path) && time === 1 ? firstTime(body) : body;
      await withPage({ cache, spoil }, async (page, asked) => {
        let last = await seen(page);
        // Each part fails the first time that it is wanted: the app, what reads the table, what comes after the answer.
        for (let i = 0; i < 5 && !last.chart; i++) {
          await page.evaluate(() => dispatchEvent(new Event('online')));
          last = await seen(page);
        }
        expect(last).toEqual({ sentence: expect.stringMatching(ANSWER), chart: true, tampered: false });
        const times = (file: string) => asked().filter((path) => isOf([file], path)).length;
        expect([...first, ...late].filter((file) => times(file) < 2)).toEqual([]);
      });
    },
  );
});

it('a page that has a file fetched ahead of us has its answer, and the file is asked for once', async () => {
  const [app] = needs['lowering-app']!;
  const ahead = `const link = Object.assign(document.createElement('link'), { rel: 'modulepreload', crossOrigin: 'anonymous' });
    link.href = new URL('${app}', import.meta.url);
    document.head.append(link);
    await new Promise((resolve) => { link.onload = link.onerror = resolve; });`;
  const spoil = (path: string, body: string) => (path === '/cdn/bumpline.js' ? `${ahead}\n${body}` : body);
  await withPage({ spoil }, async (page, asked) => {
    expect(await seen(page)).toEqual({ sentence: expect.stringMatching(ANSWER), chart: true, tampered: false });
    expect(asked().filter((path) => isOf([app!], path))).toHaveLength(1);
  });
});

it('a policy on script addresses (Trusted Types) lets the checked files through, and what is no file of ours does not run', async () => {
  await withPage({ policy: 'trusted-types' }, async (page) => {
    expect(await seen(page)).toEqual({ sentence: expect.stringMatching(ANSWER), chart: true, tampered: false });
  });
  const spoil = (path: string, body: string) => (isOf(first, path) ? appendedTo(body) : body);
  await withPage({ policy: 'trusted-types', spoil }, async (page) => {
    expect((await seen(page)).tampered).toBe(false);
  });
});
