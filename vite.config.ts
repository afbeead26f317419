import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin, type UserConfig } from 'vite';

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
const integrityOf = (code: string | Uint8Array) => `sha384-${createHash('sha384').update(code).digest('base64')}`;

const STANDALONE = 'bumpline-standalone.js';

/** Modules the cdn entry fetches when they are needed, by the name that components/delivery/checked-import.ts asks for. */
const LAZY = {
  'bumpline-lowering': 'components/delivery/lowering.ts',
  plot: 'components/shared/chart/plot.ts',
};

const common: UserConfig = { publicDir: false, envDir: false, clearScreen: false };
const build = { target: 'es2022', emptyOutDir: true, reportCompressedSize: false };

/** The library build of Vite leaves modules unminified unless told, and does not wrap dynamic imports in its own preloading. */
function library(entry: string, outDir: string, fileName: string, plugins: Plugin[], lazy: boolean): UserConfig {
  return {
    ...common,
    plugins,
    build: {
      ...build,
      outDir: path(outDir),
      lib: { entry: path(entry), formats: ['es'], fileName: () => fileName },
      rolldownOptions: {
        output: { minify: true, ...(lazy ? { chunkFileNames: '[name]-[hash].js' } : { codeSplitting: false }) },
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

/** Writes each lazy module's files and hashes into the entry: the module's own chunk and all that it imports statically. */
function embedChunkHashes(): Plugin {
  const placeholder = /(["'`])__BUMPLINE_CHUNKS__\1/;
  return {
    name: 'embed-chunk-hashes',
    generateBundle(_options, bundle) {
      const chunks = Object.values(bundle).filter((file) => file.type === 'chunk');
      const entry = chunks.find(({ isEntry }) => isEntry)!;
      if (!placeholder.test(entry.code)) throw new Error('The cdn entry has no place for the hashes of its chunks.');
      if (entry.imports.length > 0) throw new Error(`The cdn entry must stand alone, but imports ${entry.imports}`);
      const closure = (fileName: string, seen = new Set<string>()): Set<string> => {
        const chunk = chunks.find((one) => one.fileName === fileName)!;
        // The table is in the entry: a chunk that imports the entry would have to contain its own hash.
        if (chunk === entry) throw new Error('A chunk imports the cdn entry, which only the page may do.');
        if (!seen.has(fileName)) {
          seen.add(fileName);
          for (const imported of chunk.imports) closure(imported, seen);
        }
        return seen;
      };
      const table = Object.fromEntries(
        Object.entries(LAZY).map(([name, module]) => {
          const chunk = chunks.find(({ facadeModuleId }) => facadeModuleId === path(module));
          if (!chunk) throw new Error(`${module} has no chunk of its own in the cdn build.`);
          const files = [...closure(chunk.fileName)];
          return [name, files.map((file) => [file, integrityOf((bundle[file] as typeof chunk).code)])];
        }),
      );
      entry.code = entry.code.replace(placeholder, () => JSON.stringify(JSON.stringify(table)));
      this.emitFile({ type: 'asset', fileName: 'chunks.json', source: `${JSON.stringify(table, null, 1)}\n` });
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
  const files = readdirSync(path('site'), { recursive: true, encoding: 'utf8' });
  const pages = files.filter((file) => file.endsWith('.html')).map((file) => path('site', file));
  return {
    ...common,
    root: path('site'),
    // Relative, so that the site works from any sub-path.
    base: './',
    // A page that does not exist is not the start page.
    appType: 'mpa',
    plugins: preview ? [] : [withStandalone()],
    build: {
      ...build,
      outDir: path('dist/site'),
      modulePreload: { polyfill: false },
      rolldownOptions: { input: pages },
    },
  };
}

export default defineConfig(({ mode, isPreview }) => {
  switch (mode) {
    case 'standalone': {
      const outDir = 'dist/standalone';
      return library('components/delivery/standalone.ts', outDir, STANDALONE, [announceIntegrity(outDir)], false);
    }
    case 'cdn':
      return library('components/delivery/cdn.ts', 'dist/cdn', 'bumpline.js', [embedChunkHashes()], true);
    case 'site':
      return site(isPreview === true);
    default:
      throw new Error(`There is no mode "${mode}": use --mode standalone, cdn or site.`);
  }
});
