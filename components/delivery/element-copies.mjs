/**
 * Part of the builds for cdns and of the site (vite.config.ts): each element gets a copy of its own of every module that the shell does not hold, so that
 * what it needs comes in few files, which compress as one. A bundler puts no module into two files; a copy is another module to it,
 * told apart by the element at the end of its id: `…/sheet-app.ts?of=lowering`.
 */
import { readFileSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import { parseAst, transformWithOxc } from 'vite';

const components = resolve(import.meta.dirname, '..');
const OF = /\?of=([\w-]+)$/;
const APP = /\/bumpline-([\w-]+)\/\1-app\.ts$/;
/** A language is asked for by the shell as an element is, and brings its files by itself. */
const LANGUAGE = /\/components\/words\/([a-z]{2,3})\.ts$/;
const firstOf = (file) => APP.exec(file) ?? LANGUAGE.exec(file);

/** Those that answer. */
const ELEMENTS = JSON.parse(readFileSync(resolve(components, 'elements.json'), 'utf8'))
  .filter(({ article }) => article !== undefined)
  .map(({ tag }) => tag.replace('bumpline-', ''));

const fileOf = (id) => id.replace(OF, '');

/** The page on which a snippet is made holds no element: what it shares with them would bring their shell along, so all of it is a copy. */
const BUILDER = 'builder';
const isBuilders = (id) => /\/site\/builder\/[\w-]+\.ts$/.test(id) || elementOf(id) === BUILDER;

/** The element whose copy a module is. */
export const elementOf = (id) => OF.exec(id)?.[1];

/** A lazy module by the name its files are asked for by: `lowering-app`, and of what that may ask for, `lowering/address`. */
export function lazyName(id) {
  const name = basename(fileOf(id)).replace(/\.[tj]s$/, '');
  return firstOf(fileOf(id)) ? name : [elementOf(id), name].filter(Boolean).join('/');
}

/** The name of what a module imports lazily. */
export function lazyNameFrom(importer, specifier) {
  const file = resolve(dirname(fileOf(importer)), specifier.replace(/\.js$/, '.ts'));
  const element = elementOf(importer);
  return lazyName(element ? `${file}?of=${element}` : file);
}

/** Whether a module is the first of its element, or of a language. */
export const isApp = (id) => firstOf(fileOf(id)) !== null;

/**
 * @param {string[]} entries of the shell, and what the build has it import
 * @param {Map<string, string>} [shared] takes what several of the site's pages need, and the file where it stands: `along` what every
 *   page has, `elements` the shell of the elements, which a page in a frame has alone, and see `neededByAll`
 */
export function copyPerElement(entries, shared) {
  const shell = new Set();
  return {
    name: 'copy-per-element',
    enforce: 'pre',
    async buildStart() {
      const imports = new Map();
      const read = async (id) => {
        // Without its types, which import too.
        const { code } = await transformWithOxc(readFileSync(id, 'utf8'), id);
        const sources = parseAst(code).body.flatMap(({ source }) => source?.value ?? []);
        return Promise.all(sources.map(async (one) => (await this.resolve(one, id, { skipSelf: true })).id));
      };
      /** A module and all that it imports at once. */
      const walk = async (id, into = new Set()) => {
        if (into.has(id)) return into;
        into.add(id);
        if (!imports.has(id)) imports.set(id, await read(id));
        for (const next of imports.get(id)) await walk(next, into);
        return into;
      };
      for (const entry of entries) await walk(entry, shell);
      if (shared) {
        const reaches = await Promise.all(entries.map((entry) => walk(entry)));
        for (const id of shell) if (reaches.every((one) => one.has(id))) shared.set(id, 'along');
        for (const id of await walk(`${components}/define.ts`)) shared.set(id, 'elements');
      }
      if (shared) for (const [id, file] of await neededByAll(shell, imports, walk)) shared.set(id, file);
    },
    async resolveId(source, importer, options) {
      const found = await this.resolve(source, importer && fileOf(importer), { ...options, skipSelf: true });
      const isFile = found && !found.external && !found.id.startsWith('\0');
      if (importer && isBuilders(importer) && isFile && !/\/site\//.test(found.id))
        return { ...found, id: `${found.id}?of=${BUILDER}` };
      // What a plugin makes up has no file to copy.
      const isCopied = isFile && !shell.has(found.id) && !shared?.has(found.id);
      if (!importer || !isCopied) return found;
      const element = elementOf(importer) ?? firstOf(found.id)?.[1];
      return element ? { ...found, id: `${found.id}?of=${element}` } : found;
    },
    load: (id) => (elementOf(id) ? readFileSync(fileOf(id), 'utf8') : undefined),
  };
}

/** In which file of the site's pages a module stands that all of them share; also what the bundler adds to have files come late. */
export const pagesFile = (id, shared) => (id.endsWith('vite/preload-helper.js') ? 'elements' : shared.get(id));

/**
 * What pages of any element need alike, and in which file it stands: `answers` with the first answers of all elements, `bodies` with
 * all their bodies, `early` with the address and those.
 *
 * @param {Set<string>} shell
 * @param {Map<string, string[]>} imports of each module that was walked
 * @param {(id: string) => Promise<Set<string>>} walk
 * @returns {Promise<Map<string, string>>}
 */
async function neededByAll(shell, imports, walk) {
  const all = (part) => Promise.all(ELEMENTS.map((name) => walk(`${components}/bumpline-${name}/${name}-${part}.ts`)));
  const [apps, bodies] = [await all('app'), await all('body')];
  const inEach = (sets) => [...sets[0]].filter((id) => !shell.has(id) && sets.every((set) => set.has(id)));
  const answers = new Set(inEach(apps));
  const address = await walk(`${components}/car/address.ts`);
  // Some elements ask for these before their body: they must not wait for all of it.
  const before = await Promise.all(EARLY_PARTS.map((part) => walk(`${components}/${part}.ts`)));
  const copied = (id) => apps.some((app) => app.has(id)) || (!address.has(id) && before.some((one) => one.has(id)));
  const rest = new Set(inEach(bodies).filter((id) => !answers.has(id) && !copied(id)));
  // None may import what each element has a copy of.
  const isClosed = (id) => imports.get(id).every((one) => shell.has(one) || answers.has(one) || rest.has(one));
  for (let count = 0; count !== rest.size; ) {
    count = rest.size;
    for (const id of rest) if (!isClosed(id)) rest.delete(id);
  }
  return new Map([
    ...[...answers].map((id) => [id, 'answers']),
    ...[...rest].map((id) => [id, address.has(id) ? 'early' : 'bodies']),
  ]);
}

const EARLY_PARTS = [
  'page-data/reading-table',
  'page-data/point-table',
  'bumpline-lowering/travel-ends',
  'bumpline-compare/travel-solid',
];

/** What may be asked for before the body: an address, a page's table, a travel budget. It must not wait for the body. */
const BEFORE_BODY =
  /\/(?:car\/address|page-data\/(?:reading|point)-table|bumpline-\w+\/travel-(?:ends|solid)|layers\/\w+\.generated)\.ts/;

/** Too small for a file of its own, whoever shares it. */
const SMALL = /\/core\/(?:math\/sums|readings\/(?:reading|instruments|over-base)|travel\/travel-limits)\.ts/;

/**
 * In which of its element's files a module stands: with its first answer, with its body, or, shared by the body and what may come before
 * it, between them. Null is wherever the bundler puts it: what one late part alone needs, in its file.
 *
 * @param {string} id
 * @param {{ getModuleInfo(id: string): any }} graph
 */
export function elementFile(id, graph) {
  const element = elementOf(id);
  if (!element) return null;
  if (element === BUILDER) return BUILDER;
  const lazy = lazyOf(element, graph);
  const users = lazy.filter(({ reaches }) => reaches.has(id)).map((one) => one.id);
  if (users.some(isApp)) return `${element}-app`;
  const isBodys = users.some((user) => user.endsWith(`-body.ts?of=${element}`));
  const isShared = users.length > 1 && (SMALL.test(id) || (isBodys && users.some((user) => BEFORE_BODY.test(user))));
  if (isShared) return `${element}-early`;
  return isBodys ? `${element}-body` : null;
}

/** The lazy modules of an element, and what each imports at once. */
const lazyOf = (() => {
  const known = new Map();
  return (element, graph) => {
    if (known.has(element)) return known.get(element);
    const lazy = [];
    const walk = (first) => {
      const reaches = new Set();
      lazy.push({ id: first, reaches });
      const reach = (id) => {
        if (elementOf(id) !== element || reaches.has(id)) return;
        reaches.add(id);
        const { importedIds, dynamicallyImportedIds } = graph.getModuleInfo(id);
        for (const next of dynamicallyImportedIds) if (lazy.every((one) => one.id !== next)) walk(next);
        for (const next of importedIds) reach(next);
      };
      reach(first);
    };
    const first = ELEMENTS.includes(element) ? `bumpline-${element}/${element}-app` : `words/${element}`;
    walk(`${components}/${first}.ts?of=${element}`);
    known.set(element, lazy);
    return lazy;
  };
})();
