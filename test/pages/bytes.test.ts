import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { BUDGETS, committed, compressor, measure, SHEETS, sameSize } from '../bench/bytes.mjs';

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
});
