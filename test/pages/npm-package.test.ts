import { execFileSync, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import elements from '../../components/elements.json' with { type: 'json' };
import { browser as findBrowser } from '../browser.mjs';
import { startHosts } from '../hosts/host-server.js';
import { importsOf } from '../house-rules.mjs';

const top = fileURLToPath(new URL('../../', import.meta.url));
/** In dist/, which git does not see, and where the package's own dependencies are found further up. */
const consumer = join(top, 'dist/consumer');
const installed = join(consumer, 'node_modules/bumpline');
const { exports, dependencies, peerDependencies, peerDependenciesMeta, version } = JSON.parse(
  readFileSync(join(top, 'package.json'), 'utf8'),
) as {
  version: string;
  exports: Record<string, string | { types: string; default: string }>;
  dependencies: Record<string, string>;
  peerDependencies: Record<string, string>;
  peerDependenciesMeta: Record<string, { optional: boolean }>;
};

/** Every export by its name: what stands for all elements, for each of the list. */
const named = Object.entries(exports).flatMap(([name, target]) =>
  elements
    .map(({ tag }) => tag.replace('bumpline-', ''))
    .slice(0, name.includes('*') ? undefined : 1)
    .map((element) => ({
      name: name.replace('*', element),
      files: (typeof target === 'string' ? [target] : Object.values(target)).map((file) =>
        file.replaceAll('*', element),
      ),
    })),
);

/** Types alone, by framework. */
const TYPES_ALONE = ['./react', './react-18', './vue', './svelte'];

/** Whole files for pages: Node has none of what they need. */
const FOR_PAGES = ['./standalone', './cdn', './frames'];

/** What a consumer gets: the packed package, unpacked where a package manager would put it. */
beforeAll(() => {
  rmSync(consumer, { recursive: true, force: true });
  mkdirSync(installed, { recursive: true });
  const npm = process.env.npm_execpath;
  const pack = ['pack', '--json', '--ignore-scripts', '--pack-destination', consumer];
  const said = npm
    ? execFileSync(process.execPath, [npm, ...pack], { cwd: top })
    : execFileSync('npm', pack, { cwd: top });
  const [file] = readdirSync(consumer).filter((name) => name.endsWith('.tgz'));
  expect(String(said)).toContain(file);
  execFileSync('tar', ['-xzf', join(consumer, file!), '-C', installed, '--strip-components=1']);
  writeFileSync(join(consumer, 'package.json'), JSON.stringify({ private: true, type: 'module' }));
});

/** Runs a module in the consumer's folder and gives back what it prints, as JSON. */
function run(source: string): unknown {
  const file = join(consumer, 'run.mjs');
  writeFileSync(file, source);
  return JSON.parse(execFileSync(process.execPath, [file], { encoding: 'utf8' }));
}

/** Lit's stand-ins for the browser's classes come with its build for Node. */
const isDefined = "Boolean(globalThis.customElements?.get('bumpline-lowering'))";

describe('the npm package', () => {
  it('holds every file its exports name', () => {
    expect(named.flatMap(({ files }) => files).filter((file) => !existsSync(join(installed, file)))).toEqual([]);
    expect(named.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['./bumpline-lowering/define', ...TYPES_ALONE]),
    );
  });

  it('holds nothing but the build, its readme and its licence', () => {
    const unasked = readdirSync(installed).filter((name) => !/^(dist|package\.json|README\.md|LICENSE.*)$/.test(name));
    expect(unasked).toEqual([]);
    expect(readdirSync(join(installed, 'dist'))).toEqual(['cdn', 'npm', 'standalone']);
    expect(readdirSync(join(installed, 'dist/standalone'))).toEqual([
      'bumpline-frames.js',
      'bumpline-standalone.js',
      'bumpline.css',
      'integrity.json',
    ]);
    const others = readdirSync(join(installed, 'dist/cdn')).filter((name) => !name.endsWith('.js'));
    expect(others).toEqual(['bumpline.css', 'integrity.json']);
    // What is written for contributors stands beside the code, and stays there.
    const all = readdirSync(installed, { recursive: true, encoding: 'utf8' });
    expect(all.filter((file) => file.endsWith('.md'))).toEqual(['README.md']);
  });

  it.each(named.map(({ name }) => name).filter((name) => ![...FOR_PAGES, ...TYPES_ALONE].includes(name)))(
    'export "%s" can be imported',
    (name) => {
      const specifier = name.replace(/^\./, 'bumpline');
      const options = name.endsWith('.json') ? ", { with: { type: 'json' } }" : '';
      const keys = run(
        `const all = await import('${specifier}'${options});\nconsole.log(JSON.stringify(Object.keys(all)));`,
      );
      expect(keys).not.toEqual([]);
    },
  );

  it.each(TYPES_ALONE)('export "%s" is types of every element, and nothing at run time', (name) => {
    const { types, default: module } = exports[name] as { types: string; default: string };
    expect(readFileSync(join(installed, module), 'utf8')).toBe('export {};\n');
    const text = readFileSync(join(installed, types), 'utf8');
    expect(elements.filter(({ tag }) => !text.includes(`'${tag}': `))).toEqual([]);
    for (const { to } of importsOf({ path: types.slice(2), text })) {
      const file = to.replace(/\.js$/, '.d.ts');
      expect(existsSync(join(installed, file)) || /^(?:react|vue|svelte\/elements)$/.test(to), to).toBe(true);
    }
    expect(run(`console.log(JSON.stringify(Object.keys(await import('${name.replace('.', 'bumpline')}'))));`)).toEqual(
      [],
    );
  });

  it('needs no package that it does not name', () => {
    const files = readdirSync(installed, { recursive: true, encoding: 'utf8' }).filter((file) =>
      /^dist\/npm\/.*\.(?:js|d\.ts)$/.test(file),
    );
    const needed = new Set(
      files
        .flatMap((file) => importsOf({ path: file, text: readFileSync(join(installed, file), 'utf8') }))
        .map(({ to }) => to)
        .filter((to) => !to.startsWith('dist/')),
    );
    expect(needed).toContain('lit');
    const allowed = { ...dependencies, ...peerDependencies, react: 'by its types' };
    expect([...needed].filter((name) => !(name.split('/')[0]! in allowed))).toEqual([]);
  });

  it('asks for no framework: each is for its types alone, in whatever version there is', () => {
    expect(Object.keys(peerDependencies)).toEqual(['@types/react', 'svelte', 'vue']);
    expect(new Set(Object.values(peerDependencies))).toEqual(new Set(['*']));
    expect(peerDependenciesMeta).toEqual(
      Object.fromEntries(Object.keys(peerDependencies).map((name) => [name, { optional: true }])),
    );
  });

  it.each(['bumpline', 'bumpline/bumpline-lowering', 'bumpline/core'])('importing "%s" registers nothing', (name) => {
    expect(run(`await import('${name}');\nconsole.log(JSON.stringify(${isDefined}));`)).toBe(false);
  });

  it.each(['bumpline/define', 'bumpline/bumpline-lowering/define'])('importing "%s" registers the element', (name) => {
    expect(run(`await import('${name}');\nconsole.log(JSON.stringify(${isDefined}));`)).toBe(true);
  });

  it('registers once: a second time gives back the class that has the name', () => {
    const same = run(`
      import { BumplineLowering, define } from 'bumpline';
      import 'bumpline/define';
      const registered = customElements.get('bumpline-lowering');
      class Other extends BumplineLowering {}
      console.log(JSON.stringify([registered === BumplineLowering,
        define('bumpline-lowering', BumplineLowering) === registered,
        define('bumpline-lowering', Other) === registered]));`);
    expect(same).toEqual([true, true, true]);
  });

  it('computes in Node, without a browser', () => {
    const change = run(`
      import { EXAMPLE_CORNER, lowering } from 'bumpline/core';
      const { change } = lowering({ source: { kind: 'corner', corner: EXAMPLE_CORNER }, drop: 30 });
      console.log(JSON.stringify(change.value));`);
    expect(change).toBeLessThan(0);
  });

  it.each(['nodenext', 'bundler'])('has types under moduleResolution %s', (resolution) => {
    writeFileSync(
      join(consumer, 'use.ts'),
      `import { BumplineLowering, type BumplineAnswerEvent } from 'bumpline';
import { BumplineLowering as Same } from 'bumpline/bumpline-lowering';
import { buildLinkage, EXAMPLE_CORNER, InputError, lowering, type LoweringAnswer, readCorner, sweepTravel } from 'bumpline/core';
import 'bumpline/define';
import 'bumpline/bumpline-lowering/define';

const element: BumplineLowering = document.createElement('bumpline-lowering');
element.drop = 30;
const settled: Promise<void> = element.settled;
const change: number | undefined = element.answer?.change.value;
const camber: Float64Array = sweepTravel(buildLinkage(readCorner(EXAMPLE_CORNER)), [0, 10]).camber;
const same: typeof BumplineLowering = Same;
function heard(event: BumplineAnswerEvent<LoweringAnswer>): Event { return event; }
// @ts-expect-error: a drop is a number of millimetres or a text
element.drop = {};
// @ts-expect-error: the source is missing
lowering({ drop: 30 });
console.log(settled, change, camber, same, heard, InputError);
`,
    );
    writeFileSync(
      join(consumer, 'tsconfig.json'),
      JSON.stringify({
        compilerOptions: {
          target: 'es2022',
          module: resolution === 'nodenext' ? 'nodenext' : 'esnext',
          moduleResolution: resolution,
          lib: ['es2022', 'DOM', 'DOM.Iterable'],
          types: [],
          strict: true,
          noEmit: true,
          // The package's own types are checked too, as far as they are its own.
          skipLibCheck: false,
        },
        files: ['use.ts'],
      }),
    );
    const tsc = join(top, 'node_modules/typescript/bin/tsc');
    const { stdout } = spawnSync(process.execPath, [tsc, '-p', consumer], { encoding: 'utf8' });
    expect(stdout).toBe('');
  });

  it('describes its elements for editors: attributes and properties, nothing internal', () => {
    const manifest = JSON.parse(readFileSync(join(installed, 'dist/npm/custom-elements.json'), 'utf8')) as {
      modules: {
        path: string;
        declarations: ({ tagName?: string } & Partial<
          Record<'attributes' | 'members' | 'events' | 'cssParts' | 'cssStates' | 'cssProperties', { name: string }[]>
        >)[];
        exports: { kind: string; name: string }[];
      }[];
    };
    for (const { path } of manifest.modules) expect(existsSync(join(installed, path)), path).toBe(true);
    const element = manifest.modules
      .flatMap(({ declarations }) => declarations)
      .find(({ tagName }) => tagName === 'bumpline-lowering')!;
    const attributes = element.attributes!.map(({ name }) => name);
    expect(attributes).toEqual(
      expect.arrayContaining([
        'drop',
        'bump-travel',
        'units',
        'angles',
        'theme',
        'coefficients',
        'domain',
        'car-id',
        'keep-in-address',
      ]),
    );
    const members = element.members!.map(({ name }) => name);
    expect(members).toEqual(expect.arrayContaining(['answer', 'settled', 'corner']));
    expect([...attributes, ...members].filter((name) => /^[#_]/.test(name))).toEqual([]);
    expect(members).not.toContain('render');
    expect(element.events!.map(({ name }) => name).sort()).toEqual([
      'bumpline-answer',
      'bumpline-change',
      'bumpline-problem',
    ]);
    for (const { tagName, cssParts, cssStates, cssProperties } of manifest.modules.flatMap(
      ({ declarations }) => declarations,
    )) {
      if (!elements.some(({ tag, article }) => article && tag === tagName)) continue;
      expect(
        cssParts!.map(({ name }) => name),
        tagName,
      ).toEqual(expect.arrayContaining(['sentence', 'drawing', 'chart', 'table']));
      expect(
        cssStates!.map(({ name }) => name),
        tagName,
      ).toEqual(expect.arrayContaining(['waiting', 'problem', 'fault']));
      expect(
        cssProperties!.map(({ name }) => name),
        tagName,
      ).toContain('--bumpline-paper');
    }
    const defined = manifest.modules
      .flatMap(({ exports: all }) => all)
      .filter(({ kind }) => kind === 'custom-element-definition');
    expect(defined.map(({ name }) => name).sort()).toEqual(elements.map(({ tag }) => tag).sort());
  });
});

describe('the files for pages in the npm package', () => {
  const hashes = (folder: string) =>
    JSON.parse(readFileSync(join(installed, folder, 'integrity.json'), 'utf8')) as {
      version: string;
      files: Record<string, string>;
    };

  it.each([
    ['dist/standalone', ['bumpline-standalone.js', 'bumpline-frames.js', 'bumpline.css']],
    ['dist/cdn', ['bumpline.js', 'bumpline.css']],
  ])('%s have their hashes and their version beside them', (folder, names) => {
    const told = hashes(folder);
    expect(told.version).toBe(version);
    expect(Object.keys(told.files)).toEqual(names);
    for (const name of names) {
      const hash = createHash('sha384')
        .update(readFileSync(join(installed, folder, name)))
        .digest('base64');
      expect(told.files[name], name).toBe(`sha384-${hash}`);
    }
  });

  it.each(FOR_PAGES)('export "%s" is one of those that have a hash', (name) => {
    const file = exports[name] as string;
    const [, folder, base] = /^\.\/(dist\/\w+)\/([\w-]+\.js)$/.exec(file)!;
    expect(hashes(folder!).files).toHaveProperty([base!]);
  });

  describe('at an address with their version, on a host of npm files', () => {
    const under = `/bumpline@${version}/dist/`;
    let browser: Browser;
    beforeAll(async () => {
      browser = await chromium.launch(await findBrowser());
    });
    afterAll(() => browser?.close());

    /** Failed checks of the page's own, and what it asked of the host. */
    async function opened(page: string, spoil?: (path: string, body: string) => string) {
      const hosts = await startHosts({ packed: installed, ...(spoil && { spoil }) });
      const context = await browser.newContext({ viewport: { width: 1000, height: 800 } });
      try {
        const opened = await context.newPage();
        await opened.goto(hosts.address('open', page));
        const tags = await opened.evaluate(() =>
          [...document.querySelectorAll<HTMLScriptElement>('script[type=module]')].map(
            ({ src, integrity }) => [new URL(src).pathname, integrity] as const,
          ),
        );
        const found = await opened.waitForFunction(() => Reflect.get(globalThis, 'result'));
        const { checks } = (await found.jsonValue()) as { checks: { name: string; ok: boolean }[] };
        const failed = checks.filter(({ ok }) => !ok);
        const asked = hosts.cdn.requests.filter((path) => !path.startsWith('/hosts/'));
        return { tags, failed, asked };
      } finally {
        await context.close();
        await hosts.close();
      }
    }

    it.each([
      ['plain', 'standalone/bumpline-standalone.js', 1],
      ['entry', 'cdn/bumpline.js', 4],
    ])(
      'a page elsewhere (%s) has its answer from %s, checked by the hash, and asks for nothing else',
      async (page, file, least) => {
        const { tags, failed, asked } = await opened(page);
        const [folder, name] = file.split('/') as [string, string];
        expect(tags[0]).toEqual([`${under}${file}`, hashes(`dist/${folder}`).files[name]]);
        expect(failed).toEqual([]);
        expect(asked.length).toBeGreaterThanOrEqual(least);
        expect(asked.filter((path) => !path.startsWith(`${under}${folder}/`))).toEqual([]);
      },
    );

    it('a page elsewhere runs no other file in the entry’s place', async () => {
      const spoil = (path: string, body: string) => (path.endsWith('/bumpline.js') ? `${body}\n` : body);
      const { failed } = await opened('entry', spoil);
      expect(failed.map(({ name }) => name)).toEqual(['the element comes alive']);
    });
  });
});
