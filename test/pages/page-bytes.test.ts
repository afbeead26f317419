import { beforeAll, describe, expect, it } from 'vitest';
import { LIMITS, measurePages, PAGES } from '../bench/page-bytes.mjs';

/*
 * What a reader of a page of ours downloads, counted in a browser: requests and scripts until the first answer, and scripts until nothing
 * more comes. They are the same on every machine. `node test/bench/page-bytes.mjs` prints them.
 */

type Measured = Record<'requests' | 'answer' | 'idle', number>;
const limits = LIMITS as Record<string, { aim?: Measured; limit: Measured }>;

it('every page with an element has limits, and aims within them', () => {
  expect(Object.keys(limits).sort()).toEqual([...PAGES].sort());
  for (const { aim, limit } of Object.values(limits)) {
    for (const name of ['requests', 'answer', 'idle'] as const)
      expect(aim?.[name] ?? 0).toBeLessThanOrEqual(limit[name]);
  }
});

describe.each(Object.keys(limits))('%s', (path) => {
  it.each(['requests', 'answer', 'idle'] as const)('keeps its limit: %s', (name) => {
    expect(measured[path]![name]).toBeGreaterThan(0);
    expect(measured[path]![name]).toBeLessThanOrEqual(limits[path]!.limit[name]);
  });
});

let measured: Record<string, Measured>;
beforeAll(async () => {
  measured = await measurePages();
});
