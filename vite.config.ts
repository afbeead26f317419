import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin, type Rollup, type UserConfig } from 'vite';
import { listedPages, pages } from './site/partials/pages.js';

/*
 * One mode a form of delivery:
 *   standalone  one file with everything in it, and its hash           dist/standalone/
 *   cdn         one small entry and chunks that it checks by hash      dist/cdn/
 *   site        the pages, and a copy of the standalone file to embed  dist/site/    (needs standalone)
 * npm is not built here but by tsc: see components/tsconfig.npm.json.
 */

const here = dirname(fileURLToPath(import.meta.url));
const path = (...parts: string[]) => resolve(here, ...parts);
const { version } = JSON.parse(readFileSync(path('package.json'), 'utf8')) as { version: string };
const integrityOf = (code: string | Uint8Array, hash = 'sha384') =>
  `${hash}-${createHash(hash).update(code).digest('base64')}`;

const STANDALONE = 'bumpline-standalone.js';

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

/**
 * Files of the cdn build that sheets share: few, because each costs a request, a hash in the entry and some compression. By name,
 * what is too small for a file of its own; besides, what first answers and what bodies have in common, apart by whether readings,
 * which know no linkage, are among those who want it.
 */
const SHARED = {
  first:
    /\/core\/(?:driveway\/driveway|linkage\/corner|math\/(?:angle|vector)|readings\/reading|quantity\/number-problem|travel\/travel-limits|wheel\/place)\.ts$/,
  // What reads text that was typed, or stands in a table: asked for by a page's table before any body.
  typed:
    /\/(?:core\/(?:quantity\/parse|readings\/instruments)|components\/page-data\/(?:cell-text|data-text|table-grid))\.ts$/,
  // What reads headings and cells, of points as of readings.
  tables: /\/core\/readings\/table\/(?:heading|cell-kind|cell-units|metric-names|units-in-words)\.ts$/,
  linked: /\/components\/(?:element\/limits\.words|page-data\/limits-attribute)\.ts$/,
  fitment: /\/core\/document\/(?:limits-in-use|example-fitment)\.ts$/,
  body: /\/components\/controls\/choices\.ts$/,
};

const SHEETS = ['lowering', 'readings', 'clearance'];

function sharedFile(id: string, graph: Pick<Rollup.PluginContext, 'getModuleInfo'>): string | null {
  const reaches = (from: string, seen = new Set<string>()): Set<string> => {
    if (!seen.has(from)) {
      seen.add(from);
      for (const next of graph.getModuleInfo(from)?.importedIds ?? []) reaches(next, seen);
    }
    return seen;
  };
  const isIn = (module: string) => reaches(path('components', `${module}.ts`)).has(id);
  // Layers of the core that some cars need and some do not are files of their own.
  if (isIn('delivery/register') || /\/core\/worker\/layers\/(?!base)\w+\.generated\.ts$/.test(id)) return null;
  const named = Object.entries(SHARED).find(([, modules]) => modules.test(id));
  if (named) return named[0];
  const among = (part: string) => SHEETS.filter((sheet) => isIn(`bumpline-${sheet}/${sheet}-${part}`));
  const [firsts, bodies] = [among('app'), among('body')];
  // A body may want what another sheet's first answer holds: it must not wait for that sheet, nor that answer for a body.
  const isElsewhere = firsts.length === 1 && bodies.some((sheet) => sheet !== firsts[0]);
  if (firsts.length > 1 || isElsewhere) return firsts.includes('readings') ? 'first' : 'linked';
  // Curves are compared on the page's thread, so that the first answer wants the mathematics that elsewhere only bodies want.
  if (firsts.length === 0 && bodies.length > 0 && isIn('bumpline-compare/compare-app')) return 'compared';
  if (bodies.length > 1) return bodies.includes('readings') ? 'body' : 'sheets';
  return null;
}

/** The library build of Vite leaves modules unminified unless told, and does not wrap dynamic imports in its own preloading. */
function library(outDir: string, fileName: string, plugin: Plugin, lazy: boolean): UserConfig {
  return {
    ...common,
    plugins: [tightenTemplates(), plugin],
    build: {
      ...build,
      outDir: path(outDir),
      lib: { entry: path('components/delivery/register.ts'), formats: ['es'], fileName: () => fileName },
      rolldownOptions: {
        // The entry may export what its chunks need of it, so that it can hold it itself.
        preserveEntrySignatures: 'allow-extension',
        output: {
          minify: true,
          ...(lazy
            ? {
                chunkFileNames: '[name]-[hash:6].js',
                codeSplitting: {
                  includeDependenciesRecursively: false,
                  groups: [{ debugName: 'shared', name: sharedFile }],
                },
              }
            : { codeSplitting: false }),
        },
      },
    },
  };
}

/** Prints the file's hash and writes it where the site's build and the tests find it. */
function announceIntegrity(outDir: string): Plugin {
  return {
    name: 'announce-integrity',
    writeBundle(_options, bundle) {
      const files = Object.values(bundle);
      const [file] = files;
      if (files.length !== 1 || file?.type !== 'chunk') {
        throw new Error(`Standalone must be one file, but is: ${files.map(({ fileName }) => fileName).join(', ')}`);
      }
      const integrity = integrityOf(file.code);
      mkdirSync(path(outDir), { recursive: true });
      writeFileSync(path(outDir, 'integrity.json'), `${JSON.stringify({ file: file.fileName, version, integrity })}\n`);
      console.log(`${file.fileName}  integrity="${integrity}"`);
    },
  };
}

/** Name of a lazy module in the cdn build. */
const lazyName = (module: string) => basename(module).replace(/\.[tj]s$/, '');

/**
 * Has every lazy import go through components/delivery/checked-import.ts, which says by what address, and writes into the entry
 * the hash of each file, the files that it imports, and the file of each lazy module.
 */
function checkChunks(): Plugin {
  const checkedImport = path('components/delivery/checked-import.ts');
  const placeholder = /(["'`])__BUMPLINE_CHUNKS__\1/;
  return {
    name: 'check-chunks',
    // After the types are gone, which hold imports too.
    enforce: 'post',
    transform(code, id) {
      const lazy = /\bimport\(\s*(["'])(\.[^"']+)\1\s*\)/g;
      if (!id.startsWith(path('components')) || id === checkedImport || !lazy.test(code)) return undefined;
      const wrapped = code.replace(lazy, (found, _quote, module) => `__checked("${lazyName(module)}", () => ${found})`);
      return {
        code: `import { checkedImport as __checked } from ${JSON.stringify(checkedImport)};\n${wrapped}`,
        map: null,
      };
    },
    generateBundle(_options, bundle) {
      const chunks = Object.values(bundle).filter((file) => file.type === 'chunk');
      const entry = chunks.find(({ isEntry }) => isEntry)!;
      if (!placeholder.test(entry.code)) throw new Error('The cdn entry has no place for the hashes of its chunks.');
      // What an entry imports statically, no hash of ours can check.
      if (entry.imports.length > 0) throw new Error(`The cdn entry must come alone, but imports ${entry.imports}`);
      /** What a file imports besides the entry, which is there already. */
      const importsOf = (fileName: string) =>
        chunks.find((chunk) => chunk.fileName === fileName)!.imports.filter((imported) => imported !== entry.fileName);
      // Each file waits until those that it imports have passed their check.
      const closure = (fileName: string, seen = new Set<string>(), above: string[] = []): Set<string> => {
        if (above.includes(fileName)) throw new Error(`Files import one another: ${above} ${fileName}`);
        for (const imported of importsOf(fileName)) closure(imported, seen, [...above, fileName]);
        return seen.add(fileName);
      };
      for (const chunk of chunks) {
        chunk.code = chunk.code.replace(/\(\)=>import\((["'`])\.\/[\w.-]+\1\)/g, '$$=>import($$)');
        if (/\bimport\(["'`]/.test(chunk.code))
          throw new Error(`${chunk.fileName} imports a file that nothing checks.`);
      }
      // A layer that some import at once, and others late, is no entry by its type.
      const moduleOf = ({ facadeModuleId, moduleIds }: Rollup.OutputChunk) => facadeModuleId ?? moduleIds[0]!;
      const lazy = chunks.filter(({ fileName }) =>
        chunks.some(({ dynamicImports }) => dynamicImports.includes(fileName)),
      );
      const table = {
        integrity: Object.fromEntries(
          chunks
            .filter((chunk) => chunk !== entry)
            .map(({ fileName, code }) => [
              fileName,
              // The shell carries them all: the shortest that browsers check.
              integrityOf(code, 'sha256'),
            ]),
        ),
        needs: Object.fromEntries(lazy.map((chunk) => [lazyName(moduleOf(chunk)), [...closure(chunk.fileName)]])),
      };
      if (Object.keys(table.needs).length !== lazy.length) throw new Error('Two lazy modules have the same file name.');
      const names = Object.keys(table.integrity);
      const files = names.map((name) => [
        name,
        table.integrity[name],
        ...importsOf(name).map((one) => names.indexOf(one)),
      ]);
      const lazyFiles = Object.fromEntries(
        lazy.map((chunk) => [lazyName(moduleOf(chunk)), names.indexOf(chunk.fileName)]),
      );
      entry.code = entry.code.replace(placeholder, () => JSON.stringify(JSON.stringify({ files, lazy: lazyFiles })));
      // For who counts the bytes: which lazy modules each file may still fetch.
      const nameOf = (fileName: string) => lazyName(moduleOf(lazy.find((chunk) => chunk.fileName === fileName)!));
      const fetches = Object.fromEntries(chunks.map((chunk) => [chunk.fileName, chunk.dynamicImports.map(nameOf)]));
      const source = `${JSON.stringify({ entry: entry.fileName, ...table, fetches }, null, 1)}\n`;
      this.emitFile({ type: 'asset', fileName: 'chunks.json', source });
    },
  };
}

/** Fills in version and hash in the pages, and puts the file they speak of beside them. */
function withStandalone(): Plugin {
  const code = readFileSync(path('dist/standalone', STANDALONE));
  return {
    name: 'with-standalone',
    transformIndexHtml: {
      order: 'pre',
      handler: (html) => html.replaceAll('%VERSION%', version).replaceAll('%STANDALONE_INTEGRITY%', integrityOf(code)),
    },
    generateBundle() {
      for (const name of [STANDALONE, `bumpline-${version}.js`]) {
        this.emitFile({ type: 'asset', fileName: `embed/${name}`, source: code });
      }
    },
  };
}

function site(preview: boolean): UserConfig {
  return {
    ...common,
    root: path('site'),
    // Relative, so that the site works from any sub-path.
    base: './',
    // A page that does not exist is not the start page.
    appType: 'mpa',
    plugins: preview ? [] : [pages(), tightenTemplates(), withStandalone()],
    build: {
      ...build,
      outDir: path('dist/site'),
      modulePreload: { polyfill: false },
      rolldownOptions: { input: listedPages().map((page) => path('site', page.path, 'index.html')) },
    },
  };
}

export default defineConfig(({ mode, isPreview }) => {
  switch (mode) {
    case 'standalone':
      return library('dist/standalone', STANDALONE, announceIntegrity('dist/standalone'), false);
    case 'cdn':
      return library('dist/cdn', 'bumpline.js', checkChunks(), true);
    case 'site':
      return site(isPreview === true);
    default:
      throw new Error(`There is no mode "${mode}": use --mode standalone, cdn or site.`);
  }
});
