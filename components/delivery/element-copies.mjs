/**
 * Part of the cdn build (vite.config.ts): each element gets a copy of its own of every module that the shell does not hold, so that
 * what it needs comes in few files, which compress as one. A bundler puts no module into two files; a copy is another module to it,
 * told apart by the element at the end of its id: `…/sheet-app.ts?of=lowering`.
 */
import { readFileSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import { parseAst, transformWithOxc } from 'vite';

const components = resolve(import.meta.dirname, '..');
const OF = /\?of=([\w-]+)$/;
const APP = /\/bumpline-([\w-]+)\/\1-app\.ts$/;

const fileOf = (id) => id.replace(OF, '');

/** The element whose copy a module is. */
export const elementOf = (id) => OF.exec(id)?.[1];

/** A lazy module by the name its files are asked for by: `lowering-app`, and of what that may ask for, `lowering/address`. */
export function lazyName(id) {
  const name = basename(fileOf(id)).replace(/\.[tj]s$/, '');
  return APP.test(fileOf(id)) ? name : [elementOf(id), name].filter(Boolean).join('/');
}

/** The name of what a module imports lazily. */
export function lazyNameFrom(importer, specifier) {
  const file = resolve(dirname(fileOf(importer)), specifier.replace(/\.js$/, '.ts'));
  const element = elementOf(importer);
  return lazyName(element ? `${file}?of=${element}` : file);
}

/** Whether a module is the first of its element. */
export const isApp = (id) => APP.test(fileOf(id));

/** @param {string[]} entries of the shell, and what the build has it import */
export function copyPerElement(entries) {
  const shell = new Set();
  return {
    name: 'copy-per-element',
    enforce: 'pre',
    async buildStart() {
      const walk = async (id) => {
        if (shell.has(id)) return;
        shell.add(id);
        // Without its types, which import too.
        const { code } = await transformWithOxc(readFileSync(id, 'utf8'), id);
        for (const { source } of parseAst(code).body) {
          if (source) await walk((await this.resolve(source.value, id, { skipSelf: true })).id);
        }
      };
      for (const entry of entries) await walk(entry);
    },
    async resolveId(source, importer, options) {
      const found = await this.resolve(source, importer && fileOf(importer), { ...options, skipSelf: true });
      if (!importer || !found || found.external || shell.has(found.id)) return found;
      const element = elementOf(importer) ?? APP.exec(found.id)?.[1];
      return element ? { ...found, id: `${found.id}?of=${element}` } : found;
    },
    load: (id) => (elementOf(id) ? readFileSync(fileOf(id), 'utf8') : undefined),
  };
}

/** What may be asked for before the body: an address, a page's table, a travel budget. It must not wait for the body. */
const BEFORE_BODY =
  /\/(?:car\/address|page-data\/(?:reading|point)-table|bumpline-\w+\/travel-(?:ends|solid)|layers\/\w+\.generated)\.ts/;

/** Too small for a file of its own, whoever shares it. */
const SMALL = /\/core\/(?:math\/sums|readings\/(?:reading|instruments)|travel\/travel-limits)\.ts/;

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
    walk(`${components}/bumpline-${element}/${element}-app.ts?of=${element}`);
    known.set(element, lazy);
    return lazy;
  };
})();
