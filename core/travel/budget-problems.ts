import { numberChecks } from '../quantity/number-problem.js';
import type { Problem } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import type { BudgetRequest } from './budget-request.js';
import type { TravelLimits } from './travel-limits.js';

const LARGEST_MM = 400;

/** Common practice, no source: wide enough for any road car. */
const RANGES = {
  stopGap: [0, LARGEST_MM],
  stopGapPlusMinus: [0, QUANTITIES.plusMinusLength.max],
  stopLength: [0, LARGEST_MM],
  stopTrimmed: [0, LARGEST_MM],
  stopUsable: [0.05, 0.95],
  strokeBump: [0, LARGEST_MM],
  strokeDroop: [0, LARGEST_MM],
  springBind: [0, LARGEST_MM],
  shaftBump: [0, LARGEST_MM],
  shaftDroop: [0, LARGEST_MM],
  motionRatio: [0.2, 1.5],
} as const satisfies Record<keyof TravelLimits, readonly [number, number]>;

const ALONG_ROD = ['stopGap', 'strokeBump', 'strokeDroop', 'springBind'] as const;

/** What is wrong with a request. */
export function budgetProblems(request: BudgetRequest): Problem[] {
  const { limits, path, bumpTravel, measuredAt, drop, lowered } = request;
  const problems: Problem[] = [];
  const check = numberChecks(problems);
  const { min, max } = QUANTITIES.drop;
  check('drop', drop, min, max);
  if (measuredAt !== undefined) check('measuredAt', measuredAt, min, max);
  if (bumpTravel !== undefined) check('bumpTravel', bumpTravel, 0, LARGEST_MM);
  for (const [key, [least, most]] of Object.entries(RANGES)) {
    const value = limits[key as keyof TravelLimits];
    if (value !== undefined) check(`limits.${key}`, value, least, most);
  }
  const { stopLength, stopTrimmed, motionRatio } = limits;
  if (stopTrimmed! > stopLength! && stopTrimmed! <= LARGEST_MM)
    problems.push({ code: 'out-of-range', path: 'limits.stopTrimmed', value: stopTrimmed, limit: stopLength! });
  if (motionRatio !== undefined || !ALONG_ROD.some((key) => limits[key] !== undefined)) return problems;
  if (!path) return [...problems, { code: 'missing', path: 'limits.motionRatio', value: undefined }];
  // From where what is along the rod is counted.
  const [at, from] = lowered === 'dampers' ? ['drop', drop] : ['measuredAt', measuredAt ?? 0];
  const [low, high] = [path.travel[0]!, path.travel.at(-1)!];
  if ((from < low || from > high) && !problems.some(({ path: known }) => known === at))
    problems.push({ code: 'outside-domain', path: at as string, value: from, limit: from < low ? low : high });
  return problems;
}
