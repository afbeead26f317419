import type { Problem } from '../../core/quantity/problem.js';

const isSame = (a: Problem, b: Problem): boolean => a.path === b.path && a.code === b.code && a.value === b.value;

/**
 * Everything that is wrong, each thing once. What cannot be read explains more than what the solver says of the value that stands in
 * for it: of a path the first source that names it is heard.
 */
export function allProblems(...sources: readonly Problem[][]): Problem[] {
  const all: Problem[] = [];
  for (const source of sources) {
    const named = new Set(all.map(({ path }) => path));
    for (const problem of source) {
      if (!named.has(problem.path) && !all.some((one) => isSame(one, problem))) all.push(problem);
    }
  }
  return all;
}
