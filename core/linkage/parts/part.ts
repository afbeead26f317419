import type { Vec } from '../../math/vector.js';
import { InputError, type Problem } from '../../quantity/problem.js';
import { assemble, type Raw } from '../build-linkage.js';
import type { Linkage } from '../linkage.js';

/**
 * A part: a linkage in, the linkage with that part out. It changes body points, carrier points or link lengths, and nothing
 * else; the wheel then finds a new place at the same ride height, with whatever camber and toe that gives.
 *
 * @throws InputError `cannot-close` when the changed links do not join at ride height.
 */
export type Part = (linkage: Linkage) => Linkage;

/** Puts parts on, one after another. */
export function withParts(linkage: Linkage, ...parts: Part[]): Linkage {
  return parts.reduce((built, part) => part(built), linkage);
}

/** The linkage with something about it changed, put together anew at its ride height. */
export function rebuilt(linkage: Linkage, change: Partial<Raw>): Linkage {
  const { kind, body, carrier, lengths, damperEnd, branch, loadedRadius, wheelCentreZ, home } = linkage;
  const raw = { kind, body, carrier, lengths, ...(damperEnd && { damperEnd }), branch, loadedRadius, wheelCentreZ };
  return assemble({ ...raw, ...change }, home);
}

function problemOf(value: unknown, path: string): Problem | undefined {
  if (value === undefined || value === null) return { code: 'missing', path, value };
  if (typeof value !== 'number')
    return { code: 'not-a-number', path, value: typeof value === 'string' ? value : undefined };
  return Number.isFinite(value) ? undefined : { code: 'not-finite', path, value };
}

/** @throws InputError with every number that is none. */
export function checkNumbers(numbers: Record<string, unknown>): void {
  const problems = Object.entries(numbers).flatMap(([path, value]) => problemOf(value, path) ?? []);
  if (problems.length > 0) throw new InputError(problems);
}

/** @throws InputError when it is not three finite numbers. */
export function checkVector(value: unknown, path: string): asserts value is Vec {
  if (!Array.isArray(value) || value.length !== 3) {
    throw new InputError([{ code: value === undefined ? 'missing' : 'wrong-shape', path, value: undefined }]);
  }
  checkNumbers(Object.fromEntries(value.map((x, axis) => [`${path}.${axis}`, x])));
}

/** @throws InputError `wrong-shape`: this kind of corner has no such part. */
export function notOnThisKind(path: string, linkage: Linkage): never {
  throw new InputError([{ code: 'wrong-shape', path, value: linkage.kind }]);
}
