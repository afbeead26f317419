import type { Vec } from '../../math/vector.js';
import { InputError, type Problem } from '../../quantity/problem.js';

/** Objects and functions say nothing to a person, and some cannot leave the worker. */
function shown(value: unknown): unknown {
  return ['object', 'function', 'symbol'].includes(typeof value) ? undefined : value;
}

function problemOf(value: unknown, path: string): Problem | undefined {
  if (value === undefined || value === null) return { code: 'missing', path, value };
  if (typeof value !== 'number') return { code: 'not-a-number', path, value: shown(value) };
  return Number.isFinite(value) ? undefined : { code: 'not-finite', path, value };
}

/** @throws InputError with every number that is none. */
export function checkNumbers(numbers: Record<string, unknown>): void {
  const problems = Object.entries(numbers).flatMap(([path, value]) => problemOf(value, path) ?? []);
  if (problems.length > 0) throw new InputError(problems);
}

/** @throws InputError when it is not three finite numbers: `path`, or `path.0` to `path.2`. */
export function checkVector(value: unknown, path: string): asserts value is Vec {
  if (value === undefined || value === null) throw new InputError([{ code: 'missing', path, value }]);
  if (!Array.isArray(value) || value.length !== 3) wrongShape(path, value);
  checkNumbers({ [`${path}.0`]: value[0], [`${path}.1`]: value[1], [`${path}.2`]: value[2] });
}

/** @throws InputError as `checkVector`, and `no-direction` for the zero vector. */
export function checkDirection(value: unknown, path: string): asserts value is Vec {
  checkVector(value, path);
  const size = Math.hypot(...value);
  if (!(size > 0) || size === Number.POSITIVE_INFINITY)
    throw new InputError([{ code: 'no-direction', path, value: size }]);
}

/** What a part was asked for; @throws InputError when that is no record. */
export function given<T>(options: T, path: string): T {
  if (options === undefined || options === null) throw new InputError([{ code: 'missing', path, value: options }]);
  return typeof options === 'object' ? options : wrongShape(path, options);
}

/** @throws InputError `wrong-shape` for a name that is none of these. */
export function checkName(value: unknown, names: readonly string[], path: string): void {
  if (!names.includes(value as string)) wrongShape(path, value);
}

/** @throws InputError `wrong-shape` for what is neither true nor false: the text "false" would count as true. */
export function checkFlag(value: unknown, path: string): void {
  if (typeof value !== 'boolean') wrongShape(path, value);
}

/** @throws InputError `wrong-shape`, always. */
export function wrongShape(path: string, value: unknown): never {
  throw new InputError([{ code: 'wrong-shape', path, value: shown(value) }]);
}
