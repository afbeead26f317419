// biome-ignore-all lint/suspicious/noTemplateCurlyInString: samples of code are what this reads
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { wordsIn } from '../../stray-words.mjs';

const FOLDER = fileURLToPath(new URL('../../../components/', import.meta.url));
const FILES = readdirSync(FOLDER, { recursive: true, encoding: 'utf8' })
  .map((path) => path.replaceAll('\\', '/'))
  // Other languages are no English.
  .filter((path) => /\.ts$/.test(path) && !/\.d\.ts$|[.-]styles\.ts$|\.generated\.ts$|^words\//.test(path))
  .map((path) => ({ path, words: wordsIn(path, readFileSync(FOLDER + path, 'utf8')) }));

const isOfWords = (path: string): boolean => /\.(?:words|labels)\.ts$/.test(path);

/** Records that stand beside what draws them. */
const BESIDE: readonly string[] = [
  'element/cautions.ts',
  'element/first-cautions.ts',
  'element/part-cautions.ts',
  'element/travel-cautions.ts',
  'element/wheel-cautions.ts',
];

/** What is no word of ours to translate, and why. */
const NO_WORDS: Readonly<Record<string, readonly [why: string, texts: RegExp]>> = {
  'bumpline-clearance/place-sheet.ts': ['the name of a place is data: it stands in links', /^[a-z -]+$/],
  'bumpline-clearance/section-view.ts': ['the name of a place is data: it stands in links', /^[a-z ]+$/],
  'bumpline-compare/page-setups.ts': ['the name of a corner is data', /^Front left$/],
  'bumpline-readings/page-readings.ts': ['the name of a corner is data', /^Front left$/],
  'controls/slider.ts': ['a style', /text-align/],
  'controls/unit-tools.ts': ['signs of units', /^(?:mm|in)$/],
  'drawing/layout.ts': ['classes of lines', /narrow|wide/],
  'drawing/render.ts': ['classes of lines', /ring/],
  'element/enumerated.ts': ['said in the console', /^It takes/],
  'page-data/cell-text.ts': ['tags of formulas', /^msup/],
  'publish/picture-key.ts': ['classes of a sample', /^wash now$/],
  'publish/frame-snippet.ts': ['a style', /^display: block/],
  'paste/paste-take.ts': ['classes of buttons', /^main wide$/],
};

describe('English that a reader sees', () => {
  const strays = FILES.flatMap(({ path, words }) => {
    const isRecord = isOfWords(path) || BESIDE.includes(path);
    return words.filter(({ record }) => !isRecord || record === undefined).map((one) => ({ path, ...one }));
  });
  const isNoWord = ({ path, text }: { path: string; text: string }) => NO_WORDS[path]?.[1].test(text) === true;

  it('stands in records, and in no function or template', () => {
    expect(
      strays.filter((one) => !isNoWord(one)).map(({ path, line, text }) => `components/${path}:${line}  ${text}`),
    ).toEqual([]);
  });
  it('stands in one record a file', () => {
    const counts = FILES.map(({ path, words }) => ({ path, records: [...new Set(words.map(({ record }) => record))] }));
    expect(counts.filter(({ records }) => records.filter((record) => record !== undefined).length > 1)).toEqual([]);
    // The rule looks at something.
    expect(counts.filter(({ path, records }) => isOfWords(path) && records.length === 1).length).toBeGreaterThan(12);
  });
  it('has no exception that nothing needs', () => {
    const needed = new Set(strays.filter(isNoWord).map(({ path }) => path));
    expect(Object.keys(NO_WORDS).filter((path) => !needed.has(path))).toEqual([]);
  });
});

describe('wordsIn', () => {
  const texts = (source: string) => wordsIn('a.ts', source).map(({ text, record }) => [text, record]);

  it('finds what a function says, whole or in parts', () => {
    expect(texts('const f = (n: number) => `${n} places are still open`;')).toEqual([
      ['… places are still open', undefined],
    ]);
    expect(texts("function f(is: boolean) { return is ? 'not yours' : ''; }")).toEqual([['not yours', undefined]]);
    expect(texts('const f = (n: number) => `x${n > 1 ? ` and ${n} more rows` : 0}`;')).toEqual([
      ['and … more rows', undefined],
    ]);
  });
  it('finds a single word between tags, in a spoken attribute and as a label', () => {
    expect(texts('const f = (a: string) => html`<p class="some thing">${a} left</p>`;')).toEqual([
      ['… left', undefined],
    ]);
    expect(texts('const f = () => svg`<g aria-label="Wheel"></g>`;')).toEqual([['Wheel', undefined]]);
    expect(texts("const f = () => [{ label: 'Change', id: 'change' }];")).toEqual([['Change', undefined]]);
  });
  it('knows the record that holds a text, however its type is given', () => {
    expect(
      texts("export const A = { b: { c: 'not measured', d: (n: string) => `${n} of bump travel` } } as const;"),
    ).toEqual([
      ['not measured', 'A'],
      ['… of bump travel', 'A'],
    ]);
    expect(texts("const A: Record<string, string> = { b: 'not measured' };")).toEqual([['not measured', 'A']]);
    expect(texts("const A = { b: 'not measured' } satisfies object;")).toEqual([['not measured', 'A']]);
    expect(texts("const A = ['not measured'];")).toEqual([['not measured', undefined]]);
  });
  it('passes over what nobody reads', () => {
    for (const source of [
      "import a from './not a word.js';",
      "type A = 'not measured';",
      "const f = () => ({ 'not measured': 1 });",
      "const f = () => console.warn('it was not measured', 1);",
      "const f = () => { throw new TypeError('it was not measured'); };",
      "const f = (e: Element) => e.closest('details summary');",
      'const f = () => css`p { margin: 0 auto } /* as it was */`;',
      'const f = () => html`<p class="note more" data-state="is open"></p>`;',
      '/** As it was measured. */ const a = 1; // not a word',
    ]) {
      expect(texts(source), source).toEqual([]);
    }
  });
});
