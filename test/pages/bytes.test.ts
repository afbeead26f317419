import { describe, expect, it } from 'vitest';
import { BUDGETS, committed, compressor, measure, sameSize } from '../bench/bytes.mjs';

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
