import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createContext, runInContext } from 'node:vm';
import { build, type Rollup } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildCoreFunction } from '../../../core/worker/build-core-function.mjs';

const fixture = fileURLToPath(new URL('../../components/worker/fixture-core.ts', import.meta.url));
let folder: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bumpline-core-function-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

/** Minifies a page that uses the function, as the site's build does, and gives the source the page would make its worker of. */
async function sourceOnMinifiedPage(generated: string): Promise<string> {
  const page = join(folder, 'page.ts');
  await writeFile(
    page,
    `import { coreFactory } from '${generated}';\nexport const source = 'use(' + coreFactory + ')';\n`,
  );
  const result = (await build({
    configFile: false,
    logLevel: 'silent',
    root: folder,
    build: { write: false, minify: true, lib: { entry: page, formats: ['iife'], name: '__page' } },
  })) as Rollup.RollupOutput[];
  const { code } = (result[0] as Rollup.RollupOutput).output[0];
  return runInContext(`${code};__page.source`, createContext({})) as string;
}

describe('the core function', () => {
  it('is the same bytes each time, and its size is told', async () => {
    const paths = ['one.generated.ts', 'two.generated.ts'].map((name) => join(folder, name));
    const sizes = [];
    for (const path of paths) sizes.push(await buildCoreFunction(fixture, path));
    const [one, two] = await Promise.all(paths.map((path) => readFile(path, 'utf8')));
    expect(one).toBe(two);
    expect(sizes[0]).toEqual(sizes[1]);
    expect(sizes[0]?.bytes).toBeGreaterThan(sizes[0]?.brotli as number);
    expect(Buffer.byteLength(one as string) - (sizes[0]?.bytes as number)).toBeLessThan(400);
  });

  it('needs nothing outside itself, after the page around it was minified as well', async () => {
    const generated = join(folder, 'page-core.generated.ts');
    await buildCoreFunction(fixture, generated);
    const source = await sourceOnMinifiedPage(generated);
    const bare = createContext({ MessageChannel, performance, use: (factory: () => unknown) => factory() });
    const reply = runInContext(`(${source}).answer(1, 'sum', { numbers: new Float64Array([1, 2]) })`, bare);
    expect(reply).toMatchObject({ ok: true, value: { sum: 3, turn: 1 } });
    const problems = runInContext(`(${source}).answer(1, 'refuse', { drop: 400 })`, bare);
    expect(problems).toMatchObject({
      ok: false,
      problems: [{ path: 'drop' }, { path: 'lowerArm.ball' }, { path: 'camber' }],
    });
  });

  const refused: [string, string, RegExp][] = [
    ['a module that is not there', "import { gone } from './gone.js'; export const api = gone;", /gone\.js/],
    [
      'a module of Node',
      "import { readFileSync } from 'node:fs'; export const api = { read: readFileSync };",
      /node:fs/,
    ],
    ['an entry without api', 'export const other = 1;', /export `api`/],
    ['code that needs the page as it starts', "document.title = ''; export const api = {};", /document/],
    ['code that asks where its module is', 'export const api = { url: import.meta.url };', /import\.meta/],
  ];
  for (const [name, code, message] of refused)
    it(`refuses ${name}`, async () => {
      const entry = join(folder, 'refused.ts');
      const output = join(folder, 'refused.generated.ts');
      await writeFile(entry, code);
      await expect(buildCoreFunction(entry, output)).rejects.toThrow(message);
      await expect(readFile(output)).rejects.toThrow('ENOENT');
    });
});

describe('the core functions of the elements', () => {
  it('each answer their own questions, and hold nothing of the other’s', async () => {
    const answers = async (name: string) => {
      const output = join(folder, `${name}.generated.ts`);
      await buildCoreFunction(fileURLToPath(new URL(`../../../core/worker/${name}-entry.ts`, import.meta.url)), output);
      const source = await sourceOnMinifiedPage(output);
      const bare = createContext({ MessageChannel, performance, use: (factory: () => unknown) => factory() });
      const ask = (question: string, request: unknown) =>
        (runInContext(source, bare) as { answer: (...call: unknown[]) => { ok: boolean; fault?: string } }).answer(
          1,
          question,
          request,
        );
      const readings = [-20, 0, 20, 40].map((travel) => ({ travel, value: -travel / 50, pass: 'A' }));
      const coefficients = { kind: 'coefficients', coefficients: [0, -0.02], domain: [-20, 40] };
      return [
        ask('lowering', { source: coefficients, drop: 30 }),
        ask('readings', { quantity: 'camber', readings }),
        ask('fitReadings', { kind: 'readings', readings }),
      ].map(({ ok, fault }) => (ok ? 'answered' : fault));
    };
    const none = (question: string) => `RangeError: There is no question "${question}".`;
    expect(await answers('core')).toEqual(['answered', none('readings'), none('fitReadings')]);
    expect(await answers('readings')).toEqual([none('lowering'), 'answered', 'answered']);
  });
});
