import type { Problem } from '../quantity/problem.js';
import { MOST_READINGS, type Reading } from '../readings/reading.js';
import { isList } from './check.js';

const FEWEST_HEIGHTS = 2;
const MOST_DEGREE = 10;

/** All that keeps readings from being fitted, but for what only the fit itself finds out. */
export function fitProblems(
  readings: unknown,
  { degree = 'auto', maxDegree = 1 }: { degree?: unknown; maxDegree?: unknown },
): Problem[] {
  const problems: Problem[] = [];
  for (const [path, value] of Object.entries({ ...(degree !== 'auto' && { degree }), maxDegree })) {
    if (!Number.isInteger(value)) problems.push({ code: 'not-a-number', path, value });
    else if ((value as number) < 1) problems.push({ code: 'out-of-range', path, value, limit: 1 });
    else if ((value as number) > MOST_DEGREE) problems.push({ code: 'out-of-range', path, value, limit: MOST_DEGREE });
  }
  if (!isList(readings)) return [...problems, { code: 'wrong-shape', path: 'readings', value: readings }];
  if (readings.length > MOST_READINGS) {
    return [...problems, { code: 'out-of-range', path: 'readings', value: readings.length, limit: MOST_READINGS }];
  }
  (readings as ArrayLike<Reading> as Reading[]).forEach((reading, i) => {
    for (const field of ['travel', 'value'] as const) {
      const value = (reading as Reading | null | undefined)?.[field];
      const path = `readings.${i}.${field}`;
      if (value === undefined) problems.push({ code: 'missing', path, value });
      else if (typeof value !== 'number') problems.push({ code: 'not-a-number', path, value });
      else if (!Number.isFinite(value)) problems.push({ code: 'not-finite', path, value });
    }
  });
  if (problems.length > 0) return problems;
  const heights = new Set((readings as ArrayLike<Reading> as Reading[]).map(({ travel }) => travel)).size;
  const needed = degree === 'auto' ? FEWEST_HEIGHTS : (degree as number) + 1;
  if (heights < needed) problems.push({ code: 'too-few', path: 'readings', value: heights, limit: needed });
  return problems;
}
