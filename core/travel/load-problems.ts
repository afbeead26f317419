import { numberProblem } from '../quantity/number-problem.js';
import type { Problem } from '../quantity/problem.js';
import type { CornerLoads } from './travel-limits.js';

/** Common practice, no source: wide enough for any road car. */
const RANGES = {
  springRate: [1, 1000],
  stopRate: [1, 5000],
  gasForce: [0, 5000],
  cornerMass: [50, 3000],
  unsprungMass: [1, 1000],
  tyreRate: [10, 2000],
  loadFactor: [1, 6],
} as const satisfies Record<Exclude<keyof CornerLoads, 'stopPoints'>, readonly [number, number]>;

const NEEDED = ['springRate', 'cornerMass', 'unsprungMass'] as const;

/** What is wrong with loads: what is needed and missing, what is impossible, and points of a stop that do not rise. */
export function loadProblems(loads: CornerLoads): Problem[] {
  const problems: Problem[] = [];
  for (const [key, [least, most]] of Object.entries(RANGES)) {
    const value = loads[key as keyof typeof RANGES];
    if (value === undefined && !(NEEDED as readonly string[]).includes(key)) continue;
    const problem = numberProblem(`loads.${key}`, value, least, most);
    if (problem) problems.push(problem);
  }
  const { cornerMass, unsprungMass, stopPoints = [] } = loads;
  if (problems.length === 0 && unsprungMass! >= cornerMass!) {
    problems.push({ code: 'out-of-range', path: 'loads.unsprungMass', value: unsprungMass, limit: cornerMass! });
  }
  let before: readonly [number, number] = [0, 0];
  stopPoints.forEach((point, index) => {
    const [at, force] = point;
    if (!(at > before[0] && force >= before[1])) {
      problems.push({ code: 'wrong-shape', path: `loads.stopPoints.${index}`, value: point });
    }
    before = point;
  });
  return problems;
}
