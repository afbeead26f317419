/*
 * The manifest of the published elements, made from their sources. The analyzer knows neither this project's way of registering
 * nor which members are nobody else's business: the plugins below tell it.
 */

import { readFileSync } from 'node:fs';
import { authorInterface } from './manifest/author-interface.mjs';

const SHELL = 'components/element/sheet-element.ts';
const ELEMENTS = JSON.parse(readFileSync(new URL('elements.json', import.meta.url), 'utf8'));

/** `<bumpline-x>` is the class in bumpline-x.ts. */
const tagOf = (path) => /(bumpline-[a-z-]+)\.ts$/.exec(path)?.[1];

/** Names of `static properties` entries that are internal state: `name: { state: true }`. */
function stateNames(ts, node) {
  const properties = node.members.find(
    (member) => ts.isPropertyDeclaration(member) && member.name.getText() === 'properties',
  );
  const entries = properties?.initializer?.properties ?? [];
  return entries
    .filter((entry) => /\bstate\s*:\s*true\b/.test(entry.initializer?.getText() ?? ''))
    .map((entry) => entry.name.getText());
}

const stateByClass = new Map();

const publicMembersOnly = {
  name: 'public-members-only',
  analyzePhase({ ts, node }) {
    if (ts.isClassDeclaration(node) && node.name) stateByClass.set(node.name.getText(), new Set(stateNames(ts, node)));
  },
  moduleLinkPhase({ moduleDoc }) {
    for (const declaration of moduleDoc.declarations ?? []) {
      if (declaration.kind !== 'class') continue;
      const state = stateByClass.get(declaration.name) ?? new Set();
      const hidden = ({ name, privacy }) =>
        name?.startsWith('#') ||
        name?.startsWith('_') ||
        privacy === 'private' ||
        privacy === 'protected' ||
        state.has(name);
      // What every Lit element has is not this element's interface.
      const lifecycle = new Set([
        'styles',
        'properties',
        'render',
        'willUpdate',
        'firstUpdated',
        'updated',
        'updateComplete',
        'addEventListener',
      ]);
      const members = declaration.members?.filter((member) => !hidden(member) && !lifecycle.has(member.name));
      const attributes = declaration.attributes?.filter(({ name, fieldName }) => !state.has(fieldName ?? name));
      // The analyzer takes what an event is made with for its name.
      const events = declaration.events?.filter(({ name }) => name.startsWith('bumpline-'));
      if (members) declaration.members = members;
      if (events) declaration.events = events;
      if (attributes) declaration.attributes = attributes;
    }
  },
  packageLinkPhase({ customElementsManifest }) {
    const published = (path) => `dist/npm/${path.replace(/^\//, '').replace(/\.ts$/, '.js')}`;
    const walk = (value) => {
      if (Array.isArray(value)) value.forEach(walk);
      else if (value && typeof value === 'object') {
        for (const [key, inner] of Object.entries(value)) {
          if ((key === 'path' || key === 'module') && /\.ts$/.test(inner)) value[key] = published(inner);
          else walk(inner);
        }
      }
    };
    // Elements have by now what they inherit; the shell they have in common is none.
    customElementsManifest.modules = customElementsManifest.modules.filter(({ path }) => path !== SHELL);
    const definitions = customElementsManifest.modules.map((module) => {
      const element = module.declarations.find(({ customElement }) => customElement);
      const name = tagOf(module.path);
      if (!element || !name) throw new Error(`${module.path} holds no element.`);
      element.tagName = name;
      const declaration = { name: element.name, module: module.path };
      return {
        kind: 'javascript-module',
        path: module.path.replace(/\.ts$/, '.define.ts'),
        declarations: [],
        exports: [{ kind: 'custom-element-definition', name, declaration }],
      };
    });
    customElementsManifest.modules.push(...definitions);
    walk(customElementsManifest.modules);
  },
};

export default {
  globs: [...ELEMENTS.map(({ tag }) => `components/${tag}/${tag}.ts`), SHELL],
  outdir: 'dist/npm',
  litelement: true,
  packagejson: false,
  plugins: [publicMembersOnly, await authorInterface(ELEMENTS)],
};
