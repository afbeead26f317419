import type { Problem } from '../quantity/problem.js';
import { DRIVEWAY_FIELDS, type DrivewayKey, isAngle } from './driveway.js';

const MM_PER_INCH = 25.4;

/** What is wrong with the size of a measurement by itself: no car has it, or it looks like inches. mm or degrees. */
export function sizeProblem(key: DrivewayKey, value: number): Problem | undefined {
  const { least, most } = DRIVEWAY_FIELDS[key];
  if (value >= least && value <= most) return undefined;
  const mm = value * MM_PER_INCH;
  const code = !isAngle(key) && value < least && mm >= least && mm <= most ? 'looks-like-inches' : 'out-of-range';
  return { code, path: `${key}.value`, value, limit: value < least ? least : most };
}
