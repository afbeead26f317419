import type { Problem } from '../quantity/problem.js';

/** Adds a problem for every element that is not a finite number. */
export function checkFinite(problems: Problem[], path: string, values: ArrayLike<unknown>): void {
  for (let i = 0; i < values.length; i++) {
    const value = values[i];
    if (typeof value !== 'number') problems.push({ code: 'not-a-number', path: `${path}.${i}`, value });
    else if (!Number.isFinite(value)) problems.push({ code: 'not-finite', path: `${path}.${i}`, value });
  }
}

/** Adds a problem unless `domain` is two finite travels, the lower one first. */
export function checkDomain(problems: Problem[], path: string, domain: unknown): void {
  if (!isList(domain) || domain.length !== 2) {
    problems.push({ code: 'wrong-shape', path, value: domain });
    return;
  }
  const before = problems.length;
  checkFinite(problems, path, domain);
  const [low, high] = domain as [number, number];
  if (problems.length === before && !(low < high)) {
    problems.push({ code: 'out-of-range', path: `${path}.1`, value: high, limit: low });
  }
}

export const isList = (value: unknown): value is ArrayLike<unknown> =>
  Array.isArray(value) || value instanceof Float64Array;
