import { readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type MinifyOptions, minify } from 'terser';
import { defineConfig, type Plugin, type Rollup, type UserConfig } from 'vite';
import {
  copyPerElement,
  elementFile,
  elementOf,
  isApp,
  lazyName,
  lazyNameFrom,
  pagesFile,
} from './components/delivery/element-copies.mjs';
import { announceIntegrity, integrityOf, oneFile } from './components/delivery/integrity.mjs';
import { reservingStyles } from './components/delivery/reserved-heights.mjs';
import { embedFiles } from './site/partials/embed-files.js';
import { frameFiles, frames } from './site/partials/frames.js';
import { pageFiles, pages } from './site/partials/pages.js';
import { siteAddress } from './site/partials/site-address.js';

/*
 * One mode a form of delivery:
 *   standalone  one file with everything in it, and its hash           dist/standalone/
 *   cdn         one small entry and chunks that it checks by hash      dist/cdn/
 *   site        the pages, those in frames, and what authors take      dist/site/    (needs standalone)
 * npm is not built here but by tsc: see components/tsconfig.npm.json.
 */

const here = dirname(fileURLToPath(import.meta.url));
const path = (...parts: string[]) => resolve(here, ...parts);
const { version } = JSON.parse(readFileSync(path('package.json'), 'utf8')) as { version: string };
const { version: terserVersion } = JSON.parse(readFileSync(path('node_modules/terser/package.json'), 'utf8'));

const ENTRY = path('components/delivery/register.ts');
const CHECKED_IMPORT = path('components/delivery/checked-import.ts');
const SITE_ENTRIES = ['site/site.ts', 'site/home.ts'].map((file) => path(file));
/** What keeps the room of elements before the script has come, for a page that links it. */
const STYLES = 'bumpline.css';
const STANDALONE = 'bumpline-standalone.js';
/** Written as it is sent: authors read it before they put it on their pages. */
const FRAMES = 'bumpline-frames.js';
const read = (...parts: string[]) => readFileSync(path(...parts), 'utf8');
const framesCode = () => read('components/delivery', FRAMES);

const TEMPLATE_TAGS = new Set(['css', 'html', 'svg']);

/** White space that nobody sees: a run of it is one space, and none stands beside a brace or semicolon of a style sheet. */
const tightened = (tag: string, text: string): string =>
  tag === 'css'
    ? text
        .replace(/\/\*[\s\S]*?\*\//g, '')
        .replace(/\s+/g, ' ')
        .replace(/ ?([{};]) ?/g, '$1')
    : text.replace(/\s+/g, ' ');

/** Minifiers leave the text of template literals alone; those of our elements are markup and style sheets. */
function tightenTemplates(): Plugin {
  return {
    name: 'tighten-templates',
    enforce: 'post',
    transform(code, id) {
      if (!id.startsWith(path('components')) || !/\b(?:css|html|svg)`/.test(code)) return undefined;
      const edits: { start: number; end: number; text: string }[] = [];
      const walk = (node: unknown): void => {
        if (typeof node !== 'object' || node === null) return;
        const { type, tag, quasi } = node as {
          type?: string;
          tag?: { name?: string };
          quasi?: { quasis: { start: number; end: number }[] };
        };
        if (type === 'TaggedTemplateExpression' && tag?.name && quasi && TEMPLATE_TAGS.has(tag.name)) {
          for (const { start, end } of quasi.quasis) {
            edits.push({ start, end, text: tightened(tag.name, code.slice(start, end)) });
          }
        }
        Object.values(node).forEach(walk);
      };
      walk(this.parse(code));
      let tight = code;
      for (const { start, end, text } of edits.sort((a, b) => b.start - a.start)) {
        tight = tight.slice(0, start) + text + tight.slice(end);
      }
      return { code: tight, map: null };
    },
  };
}

const common: UserConfig = { publicDir: false, envDir: false, clearScreen: false };
const build = { target: 'es2022', emptyOutDir: true, reportCompressedSize: false };

const MINIFY: MinifyOptions = { module: true, ecma: 2020, compress: { passes: 2, keep_fargs: false } };

/** Minifies what the bundler has minified once more, which finds a little that it does not. */
function minifyAgain(): Plugin {
  return {
    name: 'minify-again',
    // The files' names are made before: they must change with what makes the code.
    augmentChunkHash: () => JSON.stringify([terserVersion, MINIFY]),
    async generateBundle(_options, bundle) {
      const chunks = Object.values(bundle).filter((file) => file.type === 'chunk');
      const runtime = chunks.find(({ name }) => name === 'rolldown-runtime');
      for (const chunk of chunks.filter((one) => one !== runtime)) {
        const code = withRuntime(chunk.code, runtime?.code);
        if (runtime && code.includes(runtime.fileName))
          throw new Error(`${chunk.fileName} waits for ${runtime.fileName}.`);
        chunk.code = (await minify(code, MINIFY)).code!;
      }
      // A file that every other would have to wait for, with a line or two for each.
      if (runtime) delete bundle[runtime.fileName];
    },
  };
}

/** What a file imports of the bundler's runtime is written into it. */
const withRuntime = (code: string, runtime = ''): string =>
  code.replace(/import\{([^{}]+)\}from"\.\/rolldown-runtime-[^"]+";/, (_, names: string) => {
    const [, body, exported] = /^([\s\S]*)export\{([^{}]+)\};?\s*$/.exec(runtime)!;
    const inside = new Map(exported!.split(',').map((one) => one.split(' as ').reverse() as [string, string]));
    return names
      .split(',')
      .map((one) => one.split(' as '))
      .map(([name, local = name]) => `const ${local}=(()=>{${body};return ${inside.get(name!) ?? name}})();`)
      .join('');
  });

/** Few files an element: components/delivery/decisions.md. */
const codeSplitting = (name: typeof elementFile) => ({
  includeDependenciesRecursively: false,
  groups: [{ debugName: 'element', name }],
});

/** The library build of Vite leaves modules unminified unless told, and does not wrap dynamic imports in its own preloading. */
function library(outDir: string, fileName: string, added: Plugin[], lazy: boolean): UserConfig {
  return {
    ...common,
    plugins: [...(lazy ? [copyPerElement([ENTRY, CHECKED_IMPORT])] : []), tightenTemplates(), minifyAgain(), ...added],
    build: {
      ...build,
      outDir: path(outDir),
      lib: { entry: ENTRY, formats: ['es'], fileName: () => fileName },
      rolldownOptions: {
        // The entry may export what its chunks need of it, so that it can hold it itself.
        preserveEntrySignatures: 'allow-extension',
        // A layer that one element brings at once, and another when it is wanted, is no mistake; minifying takes its time.
        checks: { ineffectiveDynamicImport: false, pluginTimings: false },
        output: {
          minify: true,
          ...(lazy
            ? { chunkFileNames: '[name]-[hash:7].js', codeSplitting: codeSplitting(elementFile) }
            : { codeSplitting: false }),
        },
      },
    },
  };
}

/**
 * Has every lazy import go through components/delivery/checked-import.ts, which says by what address, and writes down the file of each
 * lazy module, and of each file its hash and the files that it imports: those of the elements' first files in the shell, those of all
 * others in the first file of their element, which the shell has checked.
 */
function checkChunks(): Plugin {
  const placeholder = /(["'`])__BUMPLINE_CHUNKS__\1/;
  return {
    name: 'check-chunks',
    // After the types are gone, which hold imports too.
    enforce: 'post',
    transform(code, id) {
      const lazy = /\bimport\(\s*(["'])(\.[^"']+)\1\s*\)/g;
      if (!id.startsWith(path('components')) || id === CHECKED_IMPORT || !(lazy.test(code) || isApp(id)))
        return undefined;
      const wrapped = code.replace(
        lazy,
        (found, _quote, module) => `__checked("${lazyNameFrom(id, module)}", () => ${found})`,
      );
      const further = isApp(id) ? '\n__further("__BUMPLINE_CHUNKS__");' : '';
      const from = JSON.stringify(CHECKED_IMPORT);
      return {
        code: `import { checkedImport as __checked, addChunks as __further } from ${from};\n${wrapped}${further}`,
        map: null,
      };
    },
    generateBundle(_options, bundle) {
      const chunks = Object.values(bundle).filter((file) => file.type === 'chunk');
      const entry = chunks.find(({ isEntry }) => isEntry)!;
      const lazyIn = ({ moduleIds }: Rollup.OutputChunk) =>
        moduleIds.filter((id) => this.getModuleInfo(id)!.dynamicImporters.length > 0);
      const table = { integrity: {} as Record<string, string>, needs: {} as Record<string, string[]> };
      /** Writes what is known of some files into the one that asks for them; what stands in that one already needs none. */
      const tell = (into: Rollup.OutputChunk, files: readonly Rollup.OutputChunk[]) => {
        // Each file waits until those that it imports have passed their check.
        const closure = (chunk: Rollup.OutputChunk, seen = new Set<string>(), above = ''): Set<string> => {
          if (above.includes(chunk.fileName)) throw new Error(`Files import one another: ${above}${chunk.fileName}`);
          for (const one of files)
            if (chunk.imports.includes(one.fileName)) closure(one, seen, `${above}${chunk.fileName} `);
          return files.includes(chunk) ? seen.add(chunk.fileName) : seen;
        };
        const lazy = [into, ...files].flatMap((chunk) => lazyIn(chunk).map((id) => [chunk, id] as const));
        const asked = lazy.filter(([, id]) => isApp(id) === (into === entry));
        const told = {
          // The shortest that browsers check.
          integrity: Object.fromEntries(files.map(({ fileName, code }) => [fileName, integrityOf(code, 'sha256')])),
          needs: Object.fromEntries(asked.map(([chunk, id]) => [lazyName(id), [...closure(chunk)]])),
        };
        const written = {
          files: Object.fromEntries(
            files.map((chunk) => [
              chunk.fileName,
              [
                told.integrity[chunk.fileName],
                ...chunk.imports.filter((file) => file !== entry.fileName && file in bundle),
              ],
            ]),
          ),
          lazy: Object.fromEntries(asked.map(([chunk, id]) => [lazyName(id), chunk.fileName])),
        };
        if (!placeholder.test(into.code)) throw new Error(`${into.fileName} has no place for the hashes of its files.`);
        into.code = into.code.replace(placeholder, () => JSON.stringify(JSON.stringify(written)));
        Object.assign(table.integrity, told.integrity);
        Object.assign(table.needs, told.needs);
      };
      for (const chunk of chunks) {
        chunk.code = chunk.code.replace(/\(\)=>import\((["'`])\.\/[\w.-]+\1\)/g, '$$=>import($$)');
        if (/\bimport\(["'`]/.test(chunk.code))
          throw new Error(`${chunk.fileName} imports a file that nothing checks.`);
      }
      const firsts = chunks.filter((chunk) => lazyIn(chunk).some(isApp));
      const others = chunks.filter((chunk) => chunk !== entry && !firsts.includes(chunk));
      const elementIn = ({ moduleIds }: Rollup.OutputChunk) => elementOf(moduleIds[0]!);
      for (const first of firsts) {
        tell(
          first,
          others.filter((chunk) => elementIn(chunk) === elementIn(first)),
        );
      }
      tell(entry, firsts);
      const lost = chunks.filter((chunk) => chunk !== entry && !(chunk.fileName in table.integrity));
      if (lost.length > 0) throw new Error(`Nobody asks for ${lost.map(({ fileName }) => fileName)}`);
      const lazyNames = chunks.flatMap(lazyIn).map(lazyName);
      if (new Set(lazyNames).size !== lazyNames.length) throw new Error('Two lazy modules have the same name.');
      // What an entry imports statically, no hash of ours can check.
      if (entry.imports.length > 0) throw new Error(`The cdn entry must come alone, but imports ${entry.imports}`);
      // For who counts the bytes: which lazy modules each file may still fetch.
      const lazyFrom = (file: string) => lazyIn(chunks.find(({ fileName }) => fileName === file)!).map(lazyName);
      const fetches = Object.fromEntries(
        chunks.map((chunk) => [chunk.fileName, chunk.dynamicImports.flatMap(lazyFrom)]),
      );
      const source = `${JSON.stringify({ entry: entry.fileName, ...table, fetches }, null, 1)}\n`;
      this.emitFile({ type: 'asset', fileName: 'chunks.json', source });
    },
  };
}

function site(preview: boolean): UserConfig {
  const address = preview ? undefined : siteAddress();
  // Readers walk from page to page: what every page needs they fetch once.
  const shared = new Map<string, string>();
  return {
    ...common,
    root: path('site'),
    // Relative, so that the site works from any sub-path.
    base: './',
    // A page that does not exist is not the start page.
    appType: 'mpa',
    plugins: preview
      ? []
      : [
          pages(address),
          frames(address),
          copyPerElement(SITE_ENTRIES, shared),
          tightenTemplates(),
          minifyAgain(),
          embedFiles(
            {
              version,
              standalone: read('dist/standalone', STANDALONE),
              frames: framesCode(),
              styles: reservingStyles(),
              integrityOf,
            },
            address,
          ),
        ],
    build: {
      ...build,
      outDir: path('dist/site'),
      modulePreload: { polyfill: false },
      rolldownOptions: {
        input: [...pageFiles(), ...frameFiles()],
        checks: { ineffectiveDynamicImport: false, pluginTimings: false },
        output: { codeSplitting: codeSplitting((id, graph) => pagesFile(id, shared) ?? elementFile(id, graph)) },
      },
    },
  };
}

export default defineConfig(({ mode, isPreview }) => {
  switch (mode) {
    case 'standalone':
      return library(
        'dist/standalone',
        STANDALONE,
        [oneFile(), announceIntegrity(version, { [FRAMES]: framesCode(), [STYLES]: reservingStyles() })],
        false,
      );
    case 'cdn':
      return library(
        'dist/cdn',
        'bumpline.js',
        [checkChunks(), announceIntegrity(version, { [STYLES]: reservingStyles() })],
        true,
      );
    case 'site':
      return site(isPreview === true);
    default:
      throw new Error(`There is no mode "${mode}": use --mode standalone, cdn or site.`);
  }
});
