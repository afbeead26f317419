/**
 * Builds the core as one self-contained function and writes it as a module:
 *
 *     node core/worker/build-core-function.mjs [entry output]      all of the project's without arguments
 *
 * The entry exports `api`; the output exports `coreFactory(): typeof api`. The worker is made from the function's own source, so nothing
 * outside it may be needed: whatever would leave something outside is an error here.
 */
import { mkdir, writeFile } from 'node:fs/promises';
import { basename, dirname, relative, resolve, sep } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { createContext, runInContext } from 'node:vm';
import { brotliCompressSync } from 'node:zlib';
import { build } from 'vite';

const here = dirname(fileURLToPath(import.meta.url));

/** What is asked of a linkage, of readings, and of wheels in their arches. */
const CORE_FUNCTIONS = [
  ['core-entry.ts', 'core-function.generated.ts'],
  ['readings-entry.ts', 'readings-function.generated.ts'],
  ['clearance-entry.ts', 'clearance-function.generated.ts'],
].map((names) => names.map((name) => resolve(here, name)));

/**
 * @param {string} [entry] module that exports `api`
 * @param {string} [output] file to write
 * @returns {Promise<{ bytes: number, brotli: number }>} size of the function's body
 */
export async function buildCoreFunction(entry = CORE_FUNCTIONS[0][0], output = CORE_FUNCTIONS[0][1]) {
  const warnings = [];
  const results = await build({
    configFile: false,
    envFile: false,
    publicDir: false,
    root: dirname(entry),
    logLevel: 'silent',
    mode: 'production',
    build: {
      write: false,
      target: 'es2022',
      minify: true,
      modulePreload: false,
      reportCompressedSize: false,
      lib: { entry, formats: ['iife'], name: '__core', fileName: 'core' },
      rolldownOptions: {
        onLog: (level, log) => level === 'warn' && warnings.push(log.message),
        output: { codeSplitting: false },
      },
    },
  });
  const files = [results].flat().flatMap((result) => result.output);
  const [file] = files;
  if (files.length !== 1 || file?.type !== 'chunk')
    throw new Error(`The core must be one script, but is: ${files.map((f) => f.fileName).join(', ')}`);
  if (warnings.length) throw new Error(`The core does not build cleanly:\n${warnings.join('\n')}`);
  const outside = [...file.imports, ...file.dynamicImports];
  if (outside.length) throw new Error(`The core needs what is not in it: ${outside.join(', ')}`);

  const body = file.code.trim();
  check(body);

  let module = relative(dirname(output), entry).split(sep).join('/').replace(/\.ts$/, '.js');
  if (!module.startsWith('.')) module = `./${module}`;
  await mkdir(dirname(output), { recursive: true });
  await writeFile(
    output,
    `// @ts-nocheck: written by build-core-function.mjs\nimport type { api } from '${module}';\n` +
      `export function coreFactory(): typeof api {\n${body}\nreturn __core.api;\n}\n`,
  );
  return { bytes: Buffer.byteLength(body), brotli: brotliCompressSync(body).length };
}

/** Runs the function where there is nothing but the language and what workers and pages both have. */
function check(body) {
  const context = createContext({ MessageChannel, performance, structuredClone });
  const kinds = runInContext(
    `(function () {${body}\nconst api = __core.api; return [api?.answer, api?.cancel, api?.serve].map((f) => typeof f).join();})()`,
    context,
  );
  if (kinds !== 'function,function,function')
    throw new Error('The entry must export `api` with answer, cancel and serve.');
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const [entry, output] = process.argv.slice(2).map((path) => resolve(path));
  if (entry && !output) throw new Error('Give an entry and an output, or neither.');
  for (const [from, to] of entry ? [[entry, output]] : CORE_FUNCTIONS) {
    const { bytes, brotli } = await buildCoreFunction(from, to);
    console.log(`${basename(to)}: ${bytes} bytes, ${brotli} brotli`);
  }
}
