import type { LinkedSet } from '../../core/document/linked-sets.js';
import type { Problem } from '../../core/quantity/problem.js';

/** What is wrong with parts, told by the place of their set. */
export const inSet = (problem: Problem, { index }: LinkedSet): Problem =>
  /^(?:parts|alignment)\b/.test(problem.path) ? { ...problem, path: `setups.${index}.${problem.path}` } : problem;
