/**
 * Builds the core as layers, each one self-contained function, and writes each as a module: `node core/worker/build-layers.mjs`.
 *
 * A layer's entry exports what it adds (`MadeLayer`); what several layers have in common stands once, in the nearest layer that all of
 * them need. The worker is made from the functions' own sources, so nothing outside them may be needed: whatever would leave something
 * outside is an error here.
 */
import { createHash } from 'node:crypto';
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { createContext, runInContext } from 'node:vm';
import { brotliCompressSync } from 'node:zlib';
import { build, parseAst } from 'vite';

const here = dirname(fileURLToPath(import.meta.url));

/** The layers of the core, and which layer each one stands on. */
export const LAYERS = {
  base: undefined,
  given: 'base',
  fit: 'base',
  linkage: 'base',
  points: 'linkage',
  setting: 'linkage',
  parts: ['points', 'setting'],
  lowering: 'base',
  clearance: 'linkage',
  geometry: 'setting',
  toe: 'setting',
  cornering: 'setting',
  rolled: 'cornering',
  staticCamber: 'parts',
  alignment: 'staticCamber',
  leastCost: ['staticCamber', 'cornering'],
  learn: ['parts', 'fit'],
};

/** @returns {Record<string, { entry: string, needs?: string | string[] }>} */
const coreLayers = () =>
  Object.fromEntries(
    Object.entries(LAYERS).map(([name, needs]) => [name, { entry: join(here, 'layers', `${name}.ts`), needs }]),
  );

/**
 * @param {Record<string, { entry: string, needs?: string | string[] }>} [layers] by name, those first that others stand on; the first is the base
 * @param {string} [folder] to write to
 * @returns {Promise<Record<string, { bytes: number, brotli: number, modules: string[] }>>} size of each function's body, and what is in it
 */
export async function buildLayers(layers = coreLayers(), folder = join(here, 'layers')) {
  const chunks = await bundle(layers);
  const bodies = Object.fromEntries(chunks.map((chunk) => [chunk.name, bodyOf(chunk, layers)]));
  check(bodies);
  const hash = createHash('sha256').update(JSON.stringify(bodies)).digest('hex').slice(0, 12);
  await mkdir(folder, { recursive: true });
  const layerType = relative(folder, join(here, 'layer.js')).split(sep).join('/');
  for (const [name, { needs }] of Object.entries(layers)) {
    const lines = [
      '// @ts-nocheck: written by build-layers.mjs',
      `import type { Layer } from '${layerType.startsWith('.') ? layerType : `./${layerType}`}';`,
      ...named(needs).map((one) => `import { ${one} } from './${one}.generated.js';`),
      // A declaration: whoever minifies it leaves a function whose source is one.
      `function make(made) {\n${bodies[name]}\n}`,
      `export const ${name}: Layer = { name: '${name}', needs: [${named(needs).join(', ')}], make };`,
      // Copies that were built otherwise cannot share a worker.
      ...(needs ? [] : [`export const BUILD: string = '${hash}';`]),
    ];
    await writeFile(join(folder, `${name}.generated.ts`), `${lines.join('\n')}\n`);
  }
  return Object.fromEntries(
    chunks.map(({ name, modules }) => [
      name,
      {
        bytes: Buffer.byteLength(bodies[name]),
        brotli: brotliCompressSync(bodies[name]).length,
        modules: Object.keys(modules),
      },
    ]),
  );
}

/** A layer and all that it stands on, itself first. */
const standsOn = (name, layers) => [
  ...new Set([name, ...named(layers[name].needs).flatMap((one) => standsOn(one, layers))]),
];

/** @param {string | string[] | undefined} needs @returns {string[]} */
const named = (needs) => [needs ?? []].flat();

/** One chunk a layer. */
async function bundle(layers) {
  const warnings = [];
  const names = Object.keys(layers);
  const entries = new Map(Object.entries(layers).map(([name, { entry }]) => [resolve(entry), name]));
  let reached;
  const home = (id, graph) => {
    reached ??= reachedBy(entries, graph);
    const users = [...(reached.get(id) ?? [])];
    const shared = standsOn(users[0], layers).filter((one) =>
      users.every((user) => standsOn(user, layers).includes(one)),
    );
    // The nearest layer that all of them stand on: it stands on most itself.
    const height = (one) => standsOn(one, layers).length;
    return shared.reduce((a, b) => (height(b) > height(a) ? b : a), shared[0]) ?? null;
  };
  const results = await build({
    configFile: false,
    envFile: false,
    publicDir: false,
    root: here,
    logLevel: 'silent',
    mode: 'production',
    build: {
      write: false,
      target: 'es2022',
      minify: true,
      modulePreload: false,
      reportCompressedSize: false,
      lib: { entry: Object.fromEntries(names.map((name) => [name, layers[name].entry])), formats: ['es'] },
      rolldownOptions: {
        onLog: (level, log) => level === 'warn' && warnings.push(log.message),
        preserveEntrySignatures: 'allow-extension',
        output: {
          minify: true,
          entryFileNames: '[name].js',
          chunkFileNames: '[name].js',
          codeSplitting: { includeDependenciesRecursively: false, groups: [{ debugName: 'layers', name: home }] },
        },
      },
    },
  });
  if (warnings.length) throw new Error(`The core does not build cleanly:\n${warnings.join('\n')}`);
  const files = [results].flat().flatMap((result) => result.output);
  const chunks = names.map((name) => files.find((file) => file.type === 'chunk' && file.fileName === `${name}.js`));
  if (files.length !== names.length || chunks.includes(undefined)) {
    throw new Error(`Each layer must be one script, but they are: ${files.map((file) => file.fileName).join(', ')}`);
  }
  return chunks;
}

/** Which entries reach each module. */
function reachedBy(entries, graph) {
  const reached = new Map();
  for (const [entry, name] of entries) {
    const walk = (id) => {
      const users = reached.get(id) ?? new Set();
      if (users.has(name)) return;
      reached.set(id, users.add(name));
      for (const next of graph.getModuleInfo(id)?.importedIds ?? []) walk(next);
    };
    walk(entry);
  }
  return reached;
}

/** A chunk as the body of a function: what it imports, it takes out of `made`; what it exports, it returns. */
function bodyOf({ name, code, imports, dynamicImports }, layers) {
  const below = standsOn(name, layers)
    .slice(1)
    .map((one) => `${one}.js`);
  const outside = [...imports, ...dynamicImports].filter((file) => !below.includes(file));
  if (outside.length) throw new Error(`The core needs what is not in it: ${outside.join(', ')}`);
  const pairs = (specifiers, [from, to]) =>
    specifiers.map((one) => (one[from].name === one[to].name ? one[to].name : `${one[from].name}:${one[to].name}`));
  const edits = parseAst(code).body.flatMap(({ type, start, end, specifiers, source, declaration }) => {
    if (type === 'ImportDeclaration') {
      const taken = pairs(specifiers, ['imported', 'local']).join();
      return [{ start, end, text: taken && `const{${taken}}=made.${source.value.slice(2, -3)};` }];
    }
    if (!type.startsWith('Export')) return [];
    if (type !== 'ExportNamedDeclaration' || declaration || source) throw new Error(`A layer cannot hold an ${type}.`);
    return [{ start, end, text: `return{${pairs(specifiers, ['exported', 'local']).join()}};` }];
  });
  return edits.reduceRight((body, { start, end, text }) => body.slice(0, start) + text + body.slice(end), code).trim();
}

/** Runs the layers where there is nothing but the language and what workers and pages both have. */
function check(bodies) {
  const context = createContext({ MessageChannel, performance, structuredClone });
  const made = Object.entries(bodies).map(([name, body]) => `made.${name}=(function(made){${body}\n})(made);`);
  const kinds = runInContext(
    `const made={};${made.join('')}const core=made[${JSON.stringify(Object.keys(bodies)[0])}].createCore?.(made);
    [core?.answer, core?.cancel, core?.serve].map((one) => typeof one).join()`,
    context,
  );
  if (kinds !== 'function,function,function') throw new Error('The base must export `createCore`.');
  const empty = Object.entries(runInContext('made', context)).filter(
    ([, { questions, solvers }]) => !questions && !solvers,
  );
  if (empty.length) throw new Error(`A layer must export \`questions\` or \`solvers\`: ${empty.map(([name]) => name)}`);
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  for (const [name, { bytes, brotli }] of Object.entries(await buildLayers())) {
    console.log(`${name}: ${bytes} bytes, ${brotli} brotli`);
  }
}
