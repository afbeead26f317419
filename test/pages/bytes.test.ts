import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { BUDGETS, committed, compressor, measure, SHEETS, sameSize } from '../bench/bytes.mjs';
import { inside, page, textOf } from './site-source.js';

const sizes = measure();
const before = committed();

describe('what a reader downloads', () => {
  it.each(Object.entries(sizes))('%s weighs what test/bench/bytes.json says, neither more nor less', (name, now) => {
    const was = before.sizes[name as keyof typeof sizes];
    expect(
      sameSize(now, was, before.compressor === compressor),
      `${name} was ${was?.bytes} bytes (${was?.brotli} brotli) and is ${now.bytes} (${now.brotli}). If that is meant, run "npm run bytes -- --write" and commit test/bench/bytes.json.`,
    ).toBe(true);
  });

  it.each(Object.entries(BUDGETS))('%s keeps within its limit', (name, { limit }) => {
    expect(sizes[name as keyof typeof sizes].brotli).toBeLessThanOrEqual(limit);
  });
});

describe('the files of the small entry', () => {
  const dist = fileURLToPath(new URL('../../dist/cdn/', import.meta.url));
  const { entry, integrity, needs } = JSON.parse(readFileSync(`${dist}chunks.json`, 'utf8')) as {
    entry: string;
    integrity: Record<string, string>;
    needs: Record<string, string[]>;
  };
  const scripts = readdirSync(dist).filter((file) => file.endsWith('.js') && file !== entry);

  it('are each known by their hash, and asked for by somebody', () => {
    expect(Object.keys(integrity).sort()).toEqual(scripts.sort());
    expect([...new Set(Object.values(needs).flat())].sort()).toEqual(scripts);
  });

  const sheets = SHEETS as { tag: string; app: string }[];
  it.each(sheets)('$tag has its first answer in one file, and no hash of another element’s', ({ app }) => {
    expect(needs[app]).toHaveLength(1);
    const code = readFileSync(`${dist}${needs[app]![0]}`, 'utf8');
    const others = sheets.filter((one) => one.app !== app).flatMap((one) => needs[one.app]!);
    expect(others.filter((file) => code.includes(file))).toEqual([]);
  });

  // With what follows the first answers, as a server sends it.
  it('are less than the standalone file for one or two kinds of element, near it for three and four, and more for five, as authors are told', () => {
    const names = sheets.map(({ app }) => app.replace(/-app$/, ''));
    // Each file is sent in many combinations, and pressed once.
    const sent = new Map(
      [entry, ...scripts].map((file) => [file, brotliCompressSync(readFileSync(`${dist}${file}`)).length]),
    );
    const weight = (kinds: string[]) =>
      [...new Set([entry, ...kinds.flatMap((kind) => [...needs[`${kind}-app`]!, ...needs[`${kind}/${kind}-body`]!])])]
        .map((file) => sent.get(file)!)
        .reduce((sum, bytes) => sum + bytes);
    const pairs = names.flatMap((one, i) => names.slice(i + 1).map((other) => [one, other]));
    const oneMore = (kinds: string[]) => names.slice(names.indexOf(kinds.at(-1)!) + 1).map((next) => [...kinds, next]);
    const triples = pairs.flatMap(oneMore);
    const fours = triples.flatMap(oneMore);
    const fives = fours.flatMap(oneMore);
    expect(fives.length).toBeGreaterThan(0);
    const whole = sizes.standalone!.brotli;
    for (const kinds of [...names.map((name) => [name]), ...pairs])
      expect(weight(kinds), kinds.join()).toBeLessThan(whole);
    for (const kinds of triples) expect(weight(kinds), kinds.join()).toBeLessThan(1.05 * whole);
    // A third less or more.
    for (const kinds of fours) expect(Math.abs(weight(kinds) / whole - 1), kinds.join()).toBeLessThan(1 / 3);
    for (const kinds of fives) expect(weight(kinds), kinds.join()).toBeGreaterThan(whole);
    const told = textOf(inside(page('put-it-in-your-article/index.html'), 'p', 'id="which-file"'));
    expect(told).toContain('less to download with one or two kinds');
    expect(told).toContain('With three or four it is about the same or less');
    expect(told).toContain('five or more kinds is better served by the one file');
  });
});
