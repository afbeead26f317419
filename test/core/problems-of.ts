import { InputError, type Problem } from '../../core/quantity/problem.js';

/** What is wrong with what is run; none where it runs through. What is no InputError is thrown on. */
export function problemsOf(run: () => unknown): Problem[] {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  return [];
}
