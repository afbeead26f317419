import { InputError } from './problem.js';

/** What comes of `run`, or undefined where it refuses what it is given; any other error is thrown on. */
export function unlessRefused<T>(run: () => T): T | undefined {
  try {
    return run();
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}
