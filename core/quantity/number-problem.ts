import type { Problem } from './problem.js';

/** What keeps a value from being a number between two ends, the ends included; undefined when nothing does. */
export function numberProblem(path: string, value: unknown, least: number, most: number): Problem | undefined {
  if (isMissing(value)) return { code: 'missing', path, value };
  if (typeof value !== 'number') return { code: 'not-a-number', path, value: shown(value) };
  if (!Number.isFinite(value)) return { code: 'not-finite', path, value };
  if (value >= least && value <= most) return undefined;
  return { code: 'out-of-range', path, value, limit: value < least ? least : most };
}

/** Collects what keeps values from being numbers between two ends. */
export const numberChecks =
  (problems: Problem[]) =>
  (path: string, value: unknown, least: number, most: number): void => {
    const problem = numberProblem(path, value, least, most);
    if (problem) problems.push(problem);
  };

export const isMissing = (value: unknown): boolean => value === undefined || value === null || value === '';

/** Objects, functions and symbols say nothing to a person, and some cannot leave the worker. */
export const shown = (value: unknown): unknown =>
  value === null || !['object', 'function', 'symbol'].includes(typeof value) ? value : undefined;
