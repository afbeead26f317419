import type { Problem } from '../quantity/problem.js';

/** What is wrong with what is no source at all. */
export const noSource = (source: unknown): Problem =>
  source === undefined || source === null
    ? { code: 'missing', path: 'source', value: source }
    : { code: 'wrong-shape', path: 'source.kind', value: (source as { kind?: unknown }).kind };
