import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createContext, runInContext } from 'node:vm';
import { build, type Rollup } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildLayers, LAYERS } from '../../../core/worker/build-layers.mjs';

const path = (name: string) => fileURLToPath(new URL(`../../../${name}`, import.meta.url));
const FIXTURE = {
  base: { entry: path('core/worker/layers/base.ts') },
  fixture: { entry: path('test/components/worker/fixture-core.ts'), needs: 'base' },
};
let folder: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bumpline-layers-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

/** Minifies a page that uses layers, as the site's build does, and gives the script the page would start its worker from. */
async function scriptOnMinifiedPage(from: string, ...names: string[]): Promise<string> {
  const page = join(from, `${names.join('-')}-page.ts`);
  await writeFile(
    page,
    `import { JoinedLayers } from '${path('core/worker/layer.ts')}';
    ${names.map((name) => `import { ${name} } from './${name}.generated.js';`).join('\n')}
    const layers = new JoinedLayers();
    layers.join([${names}]);
    export const script = layers.script;`,
  );
  const result = (await build({
    configFile: false,
    logLevel: 'silent',
    root: from,
    build: { write: false, minify: true, lib: { entry: page, formats: ['iife'], name: '__page' } },
  })) as Rollup.RollupOutput[];
  const { code } = (result[0] as Rollup.RollupOutput).output[0];
  return runInContext(`${code};__page.script`, createContext({})) as string;
}

type Asked = { answer: (...call: unknown[]) => { ok: boolean; value?: unknown; problems?: unknown; fault?: string } };

/** What a script is as a worker with nothing but the language and what workers have: the core that it serves. */
function coreOf(script: string): Asked {
  const bare = createContext({ MessageChannel, performance, structuredClone });
  return runInContext(`${script.replace(/\.serve\(self\)$/, '')}`, bare) as Asked;
}

describe('the layers of the core', () => {
  it('are the same bytes each time, and their sizes are told', async () => {
    const folders = ['one', 'two'].map((name) => join(folder, name));
    const sizes = [];
    for (const into of folders) sizes.push(await buildLayers(FIXTURE, into));
    for (const name of ['base', 'fixture']) {
      const [one, two] = await Promise.all(folders.map((from) => readFile(join(from, `${name}.generated.ts`), 'utf8')));
      expect(one).toBe(two);
      expect(sizes[0]![name]).toEqual(sizes[1]![name]);
      expect(sizes[0]![name]!.bytes).toBeGreaterThan(sizes[0]![name]!.brotli);
      expect(Buffer.byteLength(one!) - sizes[0]![name]!.bytes).toBeLessThan(400);
    }
  });

  it('need nothing outside themselves, after the page around them was minified as well', async () => {
    const into = join(folder, 'minified');
    await buildLayers(FIXTURE, into);
    const core = coreOf(await scriptOnMinifiedPage(into, 'fixture'));
    expect(core.answer(1, 'sum', { numbers: new Float64Array([1, 2]) })).toMatchObject({
      ok: true,
      value: { sum: 3, turn: 1 },
    });
    expect(core.answer(1, 'refuse', { drop: 400 })).toMatchObject({
      ok: false,
      problems: [{ path: 'drop' }, { path: 'lowerArm.ball' }, { path: 'camber' }],
    });
  });

  it('each answer their own questions and those of the layers they stand on, and hold each module once', async () => {
    const into = join(folder, 'core');
    const sizes = await buildLayers(undefined, into);
    const readings = [-20, 0, 20, 40].map((travel) => ({ travel, value: -travel / 50, pass: 'A' }));
    const source = { kind: 'coefficients', coefficients: [0, -0.02], domain: [-20, 40] };
    const asked = {
      solved: { source },
      readings: { quantity: 'camber', readings },
      lowering: { source, drop: 30 },
    };
    const answered = async (name: string) => {
      const core = coreOf(await scriptOnMinifiedPage(into, 'given', name));
      return Object.entries(asked).flatMap(([question, request]) => {
        const { ok, fault } = core.answer(1, question, request);
        if (!ok) expect(fault).toBe(`RangeError: There is no question "${question}".`);
        return ok ? [question] : [];
      });
    };
    expect(await answered('fit')).toEqual(['solved', 'readings']);
    expect(await answered('linkage')).toEqual(['solved']);
    expect(await answered('lowering')).toEqual(['solved', 'lowering']);
    const modules = Object.values(sizes).flatMap((layer) => layer.modules);
    expect(new Set(modules).size).toBe(modules.length);
  });

  it('keep what checks a curve that is given from who gives none', async () => {
    const sizes = await buildLayers(undefined, join(folder, 'given'));
    const checks = Object.entries(sizes).filter(([, { modules }]) =>
      modules.some((module) => /curve\/(?:check-curve-data|from-coefficients)/.test(module)),
    );
    expect(checks.map(([name]) => name)).toEqual(['given']);
  });

  it('keep the linkage from who fits readings, and the schema from who measured in a driveway', async () => {
    const sizes = await buildLayers(undefined, join(folder, 'apart'));
    const carries = (name: keyof typeof LAYERS): string[] => {
      const needs = [LAYERS[name] ?? []].flat() as (keyof typeof LAYERS)[];
      return [...sizes[name]!.modules, ...needs.flatMap(carries)];
    };
    const has = (name: keyof typeof LAYERS, part: RegExp) => carries(name).some((module) => part.test(module));
    for (const name of ['fit', 'lowering'] as const) expect(has(name, /linkage\/(?!causes)|driveway\//)).toBe(false);
    expect(has('linkage', /linkage\/solver/)).toBe(true);
    expect(has('linkage', /valibot|curve\/fit/)).toBe(false);
    expect(has('points', /valibot/)).toBe(true);
    expect(has('clearance', /curve\/fit|valibot/)).toBe(false);
    // What two layers share that stand on different ones stays where the nearest of both has it.
    expect(has('linkage', /cornering|corner-at/)).toBe(false);
    expect(has('staticCamber', /cornering/)).toBe(false);
    for (const part of [/cornering-links/, /corner-at/, /linkage\/parts/]) expect(has('leastCost', part)).toBe(true);
  });

  const refused: [string, string, RegExp][] = [
    ['a module that is not there', "import { gone } from './gone.js'; export const questions = gone;", /gone\.js/],
    [
      'a module of Node',
      "import { readFileSync } from 'node:fs'; export const questions = { read: readFileSync };",
      /node:fs/,
    ],
    ['an entry that adds nothing', 'export const other = 1;', /`questions` or `solvers`/],
    ['code that needs the page as it starts', "document.title = ''; export const questions = {};", /document/],
    ['code that asks where its module is', 'export const questions = { url: () => import.meta.url };', /import\.meta/],
  ];
  for (const [name, code, message] of refused)
    it(`refuse ${name}`, async () => {
      const entry = join(folder, 'refused.ts');
      const into = join(folder, 'refused');
      await writeFile(entry, code);
      await expect(buildLayers({ ...FIXTURE, fixture: { entry, needs: 'base' } }, into)).rejects.toThrow(message);
      await expect(readFile(join(into, 'fixture.generated.ts'))).rejects.toThrow('ENOENT');
    });
});
