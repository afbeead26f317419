/**
 * What no linter knows: the rules this project makes for itself. Each rule is given all files and says where they break it and why.
 * From the command line: `node test/house-rules.mjs`.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { repeats } from './repeats.mjs';
import { unsafeWords } from './safe-words.mjs';

/** @typedef {{ path: string, text: string }} File  path from the top folder, with slashes */
/** @typedef {{ path: string, line: number, why: string }} Finding */

const MOST_LINES = 320;
/** Tokens that may stand twice, about seven lines: what an interface asks of each of several. */
const LONGEST_REPEAT = 55;
/** Put together, so that this file may pass its own rule. */
const UNDONE = new RegExp(`\\b(?:TO${'DO'}|FIX${'ME'})\\b`, 'g');

const isCode = ({ path }) => /\.(tsx?|mjs|js|vue|svelte)$/.test(path);
const isMarkup = ({ path }) => /\.(html|css|svg)$/.test(path);
const inFolder =
  (folder) =>
  ({ path }) =>
    path.startsWith(`${folder}/`);
const isShipped = (file) => ['core', 'components', 'site'].some((folder) => inFolder(folder)(file));

/**
 * Blanks comments out, keeping every line where it is. `//` inside a string is no comment.
 *
 * @param {File} file
 * @returns {string}
 */
export function withoutComments({ path, text }) {
  const blank = (found) => found.replace(/[^\n]/g, ' ');
  if (path.endsWith('.html') || path.endsWith('.svg')) return text.replace(/<!--[\s\S]*?-->/g, blank);
  const pattern = /("(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])*'|`(?:\\.|[^`\\])*`)|(\/\*[\s\S]*?\*\/)|(\/\/[^\n]*)/g;
  return text.replace(pattern, (found, string) => (string === undefined ? blank(found) : found));
}

const lineAt = (text, index) => text.slice(0, index).split('\n').length;

/** Every match of a pattern outside comments. */
function matches(file, pattern, why) {
  const text = withoutComments(file);
  return [...text.matchAll(pattern)].map((match) => ({ path: file.path, line: lineAt(text, match.index), why }));
}

/**
 * What a file imports: relative ones as paths from the top folder, others as written.
 *
 * @param {File} file
 * @returns {{ line: number, to: string }[]}
 */
export function importsOf(file) {
  const text = withoutComments(file);
  const pattern = /(?:(?<!['"])\bfrom\s*|\bimport\s*\(?\s*)(['"])([^'"\s]+)\1/g;
  return [...text.matchAll(pattern)].map((match) => ({
    line: lineAt(text, match.index),
    to: match[2].startsWith('.') ? posix.join(posix.dirname(file.path), match[2]) : match[2],
  }));
}

function eachImport(files, judge) {
  return files.filter(isCode).flatMap((file) =>
    importsOf(file).flatMap(({ line, to }) => {
      const why = judge(file.path, to);
      return why ? [{ path: file.path, line, why }] : [];
    }),
  );
}

/** Imports may only go to the same number or a lower one. */
const LAYERS = [
  ['the rest of core', 0, (path) => path.startsWith('core/')],
  ['core/answers', 1, (path) => path.startsWith('core/answers/')],
  ['core/index', 2, (path) => /^core\/index\.[tj]s$/.test(path)],
  ['core/worker', 3, (path) => path.startsWith('core/worker/')],
  ['components', 4, (path) => path.startsWith('components/')],
  ['site', 5, (path) => path.startsWith('site/')],
];

function layerOf(path) {
  const [name, rank] = LAYERS.findLast(([, , holds]) => holds(path)) ?? [];
  return name === undefined ? undefined : { name, rank };
}

/**
 * Files that reach themselves by what they import, types too: Tarjan's strongly connected components (SIAM J. Comput. 1, 1972).
 *
 * @param {Map<string, string[]>} imports  from each file to others
 * @returns {string[][]} each circle, its files in order
 */
function circlesIn(imports) {
  const circles = [];
  const seen = new Map();
  const open = [];
  const visit = (file) => {
    const mine = seen.size;
    seen.set(file, mine);
    open.push(file);
    let lowest = mine;
    for (const to of imports.get(file) ?? []) {
      if (!imports.has(to)) continue;
      if (!seen.has(to)) lowest = Math.min(lowest, visit(to));
      else if (open.includes(to)) lowest = Math.min(lowest, seen.get(to));
    }
    if (lowest === mine) {
      const circle = open.splice(open.indexOf(file));
      if (circle.length > 1 || imports.get(file).includes(file)) circles.push(circle.sort());
    }
    return lowest;
  };
  for (const file of imports.keys()) if (!seen.has(file)) visit(file);
  return circles;
}

/** @type {Record<string, (files: File[]) => Finding[]>} */
export const rules = {
  'imports run one way: site, components, core/worker, core/answers, rest of core': (files) =>
    eachImport(files, (from, to) => {
      const [above, below] = [layerOf(from), layerOf(to)];
      return above && below && below.rank > above.rank && `${above.name} must not know ${below.name}: ${to}`;
    }),

  'nothing imports itself by way of others, not even a type': (files) => {
    const modules = files.filter((file) => isShipped(file) && isCode(file));
    const paths = new Map(modules.map(({ path }) => [path.replace(/\.ts$/, '.js'), path]));
    const imports = new Map(
      modules.map((file) => [
        file.path,
        importsOf(file).flatMap(({ to }) => paths.get(to.replace(/\.ts$/, '.js')) ?? []),
      ]),
    );
    return circlesIn(imports).map((circle) => {
      const [path] = circle;
      const file = modules.find((one) => one.path === path);
      const { line } = importsOf(file).find(({ to }) => circle.includes(paths.get(to.replace(/\.ts$/, '.js'))));
      return { path, line, why: `a circle of ${circle.join(', ')}: what they share belongs into a file of its own` };
    });
  },

  'nothing imports test/ or site/ from outside': (files) =>
    eachImport(files, (from, to) => {
      if (to.startsWith('test/') && !from.startsWith('test/')) return `test/ is for tests only: ${to}`;
      // The build puts the pages together.
      if (from === 'vite.config.ts' && to.startsWith('site/partials/')) return undefined;
      return to.startsWith('site/') && !/^(site|test)\//.test(from) && `only the site itself uses ${to}`;
    }),

  'a calculation that calls itself independent imports nothing from core/': (files) =>
    eachImport(files, (from, to) => {
      const independent = from.startsWith('test/reference/') || /independent/i.test(posix.basename(from));
      return independent && to.startsWith('core/') && `it checks core/, so it must share nothing with it: ${to}`;
    }),

  'no rem in components': (files) =>
    files
      .filter(inFolder('components'))
      .flatMap((file) => matches(file, /[\d.]rem\b/g, 'rem follows the host page’s root font size: use px or em')),

  'what people type is read and written in core/quantity only': (files) =>
    files
      .filter((file) => isShipped(file) && isCode(file) && !inFolder('core/quantity')(file))
      .flatMap((file) =>
        matches(
          file,
          /\bparseFloat\b|\bIntl\s*\.\s*NumberFormat\b|\btoLocaleString\b/g,
          'it guesses at units, signs and decimal marks: use core/quantity',
        ),
      ),

  'the computation knows no clock and no chance': (files) =>
    files
      .filter((file) => inFolder('core')(file) && isCode(file) && !inFolder('core/worker')(file))
      .flatMap((file) =>
        matches(
          file,
          /\bnew Date\b|\bDate\.now\b|\bMath\.random\b|\bperformance\.now\b/g,
          'the same question must have the same answer',
        ),
      ),

  'files are short': (files) =>
    files
      .filter((file) => isCode(file) && !inFolder('test')(file))
      .flatMap(({ path, text }) => {
        const lines = text.trimEnd().split('\n').length;
        const why = `${lines} lines, at most ${MOST_LINES}: a file that long holds two concepts`;
        return lines > MOST_LINES ? [{ path, line: MOST_LINES + 1, why }] : [];
      }),

  'no run of logic stands twice': (files) =>
    repeats(
      files
        .filter((file) => isCode(file) && (inFolder('core')(file) || inFolder('components')(file)))
        // Another language says the same by the same logic.
        .filter(({ path }) => !path.endsWith('.generated.ts') && !/^components\/words\/[a-z]{2,3}\//.test(path))
        .map((file) => ({ path: file.path, text: withoutComments(file) })),
      LONGEST_REPEAT + 1,
    ).map(({ path, line, other }) => ({ path, line, why: `stands at ${other} as well: write it once` })),

  'no decorator registers an element': (files) =>
    files
      .filter(isCode)
      .flatMap((file) =>
        matches(file, /@?\bcustomElement\s*\(/g, 'it throws when the name is taken: register in a define file'),
      ),

  'nothing is left undone': (files) =>
    files.flatMap((file) =>
      [...file.text.matchAll(UNDONE)].map((match) => ({
        path: file.path,
        line: lineAt(file.text, match.index),
        why: 'do it, or say in DEVELOPERS.md why not',
      })),
    ),

  'no words ask for a corner to be jacked into its bump stop': (files) =>
    files
      .filter((file) => isShipped(file) || /\.md$/.test(file.path))
      .flatMap((file) => {
        const text = withoutComments(file);
        return unsafeWords({ path: file.path, text }).map(({ at, why }) => ({
          path: file.path,
          line: lineAt(text, at),
          why,
        }));
      }),

  'shipped code speaks to no other origin': (files) =>
    files
      .filter((file) => isShipped(file) && (isCode(file) || isMarkup(file)))
      .flatMap((file) => {
        // A reader may follow a link in an article, and copy a snippet; the page itself must not fetch from elsewhere.
        const pattern = file.path.endsWith('.html')
          ? /<[a-z][^>]*\s(?:src|srcset|action)\s*=\s*["']?(?:https?:)?\/\/|<link\b[^>]*\bhref\s*=\s*["']?(?:https?:)?\/\//g
          : /\bhttps?:\/\/(?!www\.w3\.org\/(?:2000\/svg|1999\/xlink|1999\/xhtml|XML\/1998\/namespace)\b)/g;
        return matches(file, pattern, 'everything that is needed comes with the package');
      }),
};

const SKIPPED = /^(?:node_modules|dist|\.git|\.cache|\.counts|\.screenshots|\.bundled)$/;
const READ = /\.(?:tsx?|mjs|js|vue|svelte|html|css|svg|md)$/;

/** All files the rules are about. @returns {File[]} */
export function projectFiles(root = fileURLToPath(new URL('..', import.meta.url))) {
  const found = [];
  const walk = (folder) => {
    for (const entry of readdirSync(join(root, folder), { withFileTypes: true })) {
      if (SKIPPED.test(entry.name)) continue;
      const path = folder ? `${folder}/${entry.name}` : entry.name;
      if (entry.isDirectory()) walk(path);
      else if (READ.test(entry.name) && !/\.generated\.ts$/.test(entry.name)) {
        found.push({ path, text: readFileSync(join(root, path), 'utf8') });
      }
    }
  };
  walk('');
  return found;
}

/** @returns {{ rule: string, findings: Finding[] }[]} one a rule, in order */
export function checkHouse(files = projectFiles()) {
  return Object.entries(rules).map(([rule, check]) => ({ rule, findings: check(files) }));
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  for (const { rule, findings } of checkHouse()) {
    console.log(`${findings.length ? '✗' : '✓'} ${rule}`);
    for (const { path, line, why } of findings) console.log(`    ${path}:${line}  ${why}`);
    if (findings.length) process.exitCode = 1;
  }
}
