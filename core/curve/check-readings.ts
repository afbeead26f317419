import { numberProblem } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { DOUBT_KEYS, MOST_DOUBTS } from '../readings/doubts.js';
import { MOST_READINGS, type Reading } from '../readings/reading.js';
import type { FitOptions } from './fit-options.js';

/** The highest degree that can be asked for. */
export const MOST_DEGREE = 10;
/** Beyond this, mm or degrees, squares might overflow. */
const MOST = 1e9;

/** Throws InputError with everything that is wrong with readings or options, each by itself. */
export function checkReadings(readings: readonly Reading[], options: FitOptions): void {
  const problems: Problem[] = [];
  const add = (code: Problem['code'], path: string, value: unknown, limit?: number) =>
    problems.push({ code, path, value, ...(limit !== undefined && { limit }) });

  const { degree = 'auto', maxDegree = 1, quantity = 'camber', inOrder = false, plain = false } = options;
  if (quantity !== 'camber' && quantity !== 'toe') add('wrong-shape', 'quantity', quantity);
  if (typeof inOrder !== 'boolean') add('wrong-shape', 'inOrder', inOrder);
  if (typeof plain !== 'boolean') add('wrong-shape', 'plain', plain);
  for (const key of DOUBT_KEYS) {
    const problem = options[key] === undefined ? undefined : numberProblem(key, options[key], 0, MOST_DOUBTS[key]);
    if (problem) problems.push(problem);
  }
  for (const [path, value] of [
    ['degree', degree],
    ['maxDegree', maxDegree],
  ] as const) {
    if (value === 'auto' && path === 'degree') continue;
    if (typeof value !== 'number') add('not-a-number', path, value);
    else if (!(value >= 1)) add('out-of-range', path, value, 1);
    else if (value > MOST_DEGREE) add('out-of-range', path, value, MOST_DEGREE);
    else if (!Number.isInteger(value)) add('wrong-shape', path, value);
  }

  if (!Array.isArray(readings)) add('wrong-shape', 'readings', readings);
  else if (readings.length > MOST_READINGS) add('out-of-range', 'readings', readings.length, MOST_READINGS);
  else {
    [...readings].forEach((reading: Partial<Reading> | null | undefined, i) => {
      const at = `readings.${i}`;
      if (typeof reading !== 'object' || !reading) {
        add('wrong-shape', at, reading);
        return;
      }
      for (const key of ['travel', 'value'] as const) {
        const value: unknown = reading[key];
        if (value === undefined) add('missing', `${at}.${key}`, value);
        else if (typeof value !== 'number') add('not-a-number', `${at}.${key}`, value);
        else if (!Number.isFinite(value)) add('not-finite', `${at}.${key}`, value);
        else if (Math.abs(value) > MOST) add('out-of-range', `${at}.${key}`, value, Math.sign(value) * MOST);
      }
      const { pass, going, again } = reading;
      if (again !== undefined && typeof again !== 'boolean') add('wrong-shape', `${at}.again`, again);
      if (pass !== undefined && typeof pass !== 'string') add('wrong-shape', `${at}.pass`, pass);
      if (going !== undefined && going !== 'up' && going !== 'down') add('wrong-shape', `${at}.going`, going);
    });
  }
  if (problems.length > 0) throw new InputError(problems);
}
