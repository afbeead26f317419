import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import elements from '../../components/elements.json' with { type: 'json' };
import { TARGETS as PAINTED } from '../bench/bench-pages.mjs';
import { BUDGETS, firstName, SHEETS as WEIGHED } from '../bench/bytes.mjs';

/*
 * components/elements.json is the list of elements. What cannot be made from it is held against it here, element by element, and
 * what is missing is named.
 */

const top = fileURLToPath(new URL('../../', import.meta.url));
const read = (path: string) => readFileSync(`${top}${path}`, 'utf8');
const { heights } = JSON.parse(read('components/delivery/reserved-heights.json')) as {
  heights: Record<string, Record<string, number[]>>;
};
const rows: { tag: string; article?: string; isDragged?: boolean }[] = elements;
const className = (tag: string) => tag.replace(/(?:^|-)([a-z])/g, (_, letter: string) => letter.toUpperCase());

it('the list holds every folder of an element, by the alphabet, and nothing else', () => {
  const folders = readdirSync(`${top}components`).filter((name) => name.startsWith('bumpline-'));
  expect(rows.map(({ tag }) => tag)).toEqual(folders.sort());
});

describe.each(rows)('$tag of the list', ({ tag, article, isDragged }) => {
  const module = `components/${tag}/${tag}`;

  it('has its class, and a file that registers it under its name', () => {
    expect(read(`${module}.ts`)).toMatch(new RegExp(`export class ${className(tag)}\\b`));
    const define = read(`${module}.define.ts`);
    expect(define).toContain(`export const Registered${className(tag)} = define('${tag}', ${className(tag)})`);
    expect(define, 'its type for document.createElement').toContain(`'${tag}': ${className(tag)};`);
  });

  it('is registered by define.ts and exported by index.ts', () => {
    expect(read('components/define.ts')).toContain(
      `export { Registered${className(tag)} } from './${tag}/${tag}.define.js';`,
    );
    expect(read('components/index.ts')).toMatch(
      new RegExp(`export \\{[^}]*\\b${className(tag)}\\b[^}]*\\} from './${tag}/${tag}\\.js';`),
    );
  });

  it('is named in the README', () => expect(read('README.md')).toContain(`\`<${tag}>\``));

  if (article === undefined) return;

  it('is tested by the contract of all elements', () => {
    for (const file of ['elements.ts', 'late-parts.ts']) {
      expect(read(`test/components/contract/${file}`), `test/components/contract/${file} needs ${tag}`).toContain(
        `'${tag}'`,
      );
    }
  });

  it('has an article that holds it', () => {
    expect(existsSync(`${top}site/${article}/index.html`), `site/${article}/index.html`).toBe(true);
    expect(read(`site/${article}/index.html`)).toContain(`<${tag}`);
  });

  it('has heights kept for it, of the whole and of every part that it can show alone', () => {
    const [, own = "['sentence', 'drawing', 'chart', 'table']"] =
      /static override readonly shows: readonly Shown\[\] = (\[[^\]]*\]);/.exec(read(`${module}.ts`)) ?? [];
    const words: string[] = JSON.parse(own.replaceAll("'", '"'));
    const sets = words
      .slice(1)
      .reduce((found, word) => found.concat(found.map((set) => `${set} ${word}`)), ['sentence']);
    expect(Object.keys(heights[tag] ?? {}).sort(), `npm run heights -- --write ${tag}`).toEqual(['', ...sets].sort());
  });

  it('is weighed: first answer and complete, each with a limit', () => {
    const weighed = WEIGHED.find((one: { tag: string }) => one.tag === tag)!;
    for (const name of [weighed.first, tag]) {
      expect(Object.keys(BUDGETS), `test/bench/bytes.mjs needs a budget of ${name}`).toContain(name);
    }
    expect(existsSync(`${top}components/${tag}/${weighed.app}.ts`), `components/${tag}/${weighed.app}.ts`).toBe(true);
  });

  if (isDragged) {
    it('is dragged in the bench of painting', () =>
      expect(PAINTED).toContainEqual(expect.objectContaining({ tag, url: `${article}/`, isDragged: true })));
  }
});

it('define.ts registers these elements and nothing else, and index.ts exports their classes and no other', () => {
  const files = (path: string, ending: string) =>
    [...read(path).matchAll(/from '\.\/(bumpline-[^']*)'/g)].map(([, file]) => file!.replace(ending, ''));
  const modules = rows.map(({ tag }) => `${tag}/${tag}`);
  expect(files('components/define.ts', '.define.js'), 'components/define.ts').toEqual(modules);
  expect(files('components/index.ts', '.js'), 'components/index.ts').toEqual(modules);
});

it('heights and budgets are of no element that is not in the list', () => {
  const tags = rows.map(({ tag }) => tag);
  expect(Object.keys(heights).filter((tag) => !tags.includes(tag))).toEqual([]);
  expect(Object.keys(BUDGETS).filter((name) => name.startsWith('bumpline-') && !tags.includes(name))).toEqual([]);
});

it('a first answer has a plain name among the sizes, of an element of two words too', () => {
  expect(['lowering', 'readings', 'bump-steer'].map(firstName)).toEqual([
    'firstAnswer',
    'firstReadings',
    'firstBumpSteer',
  ]);
});
