import { buildLinkage } from '../linkage/build-linkage.js';
import { type Corner, type HardPointKey, hardPoint, hardPointKeys, withHardPoint } from '../linkage/corner.js';
import { sweepTravel } from '../linkage/sweep.js';
import type { Source } from '../uncertainty/estimate.js';

/** Half-width of a 95 % interval ÷ standard uncertainty, normal distribution. */
const NORMAL_95 = 1.959963984540054;
/** Central differences: far above rounding, far below any bend of the linkage. */
const NUDGE_MM = 0.01;

const AXES = ['forward', 'sideways', 'height'] as const;

const POINT_LABELS: Record<HardPointKey, string> = {
  'lowerArm.front': 'lower arm, front pivot',
  'lowerArm.rear': 'lower arm, rear pivot',
  'lowerArm.ball': 'ball joint',
  'upperArm.front': 'upper arm, front pivot',
  'upperArm.rear': 'upper arm, rear pivot',
  'upperArm.ball': 'upper ball joint',
  'damper.top': 'damper, upper end',
  'damper.low': 'damper, lower end',
  'strut.top': 'top mount',
  'strut.low': 'second point on the damper',
  'tieRod.inner': 'tie rod, inner end',
  'tieRod.outer': 'tie rod, outer end',
  wheelCentre: 'wheel centre',
};

/**
 * How each coordinate's doubt shows in camber over travel. Every coordinate is an independent source; its part at a travel is
 * ∂camber/∂coordinate × standard uncertainty, by central differences through the closed form (first order: GUM 5.1.2).
 * Static camber is what was measured, so the parts are those of the change: all zero at travel 0.
 *
 * @param travel mm, all well within reach: the nudged corners must reach them too
 * @returns `parts` row by row, travels × sources, degrees; both empty when the corner states no doubt.
 * @throws InputError `cannot-close` when the corner is so near to its end that a hundredth of a millimetre decides.
 */
export function cornerDoubt(corner: Corner, travel: Float64Array): { sources: Source[]; parts: Float64Array } {
  const sources: Source[] = [];
  const columns: Float64Array[] = [];
  for (const key of hardPointKeys(corner)) {
    const plusMinus = corner.plusMinus?.[key] ?? corner.plusMinus?.other ?? 0;
    if (!(plusMinus > 0)) continue;
    const standard = plusMinus / NORMAL_95;
    for (const [axis, name] of AXES.entries()) {
      const above = camberNudged(corner, key, axis, NUDGE_MM, travel);
      const below = camberNudged(corner, key, axis, -NUDGE_MM, travel);
      sources.push({ id: `${key}.${name}`, label: `${POINT_LABELS[key]}, ${name}`, dof: Number.POSITIVE_INFINITY });
      columns.push(above.map((value, i) => ((value - below[i]!) / (2 * NUDGE_MM)) * standard));
    }
  }
  const parts = new Float64Array(travel.length * sources.length);
  columns.forEach((column, s) => {
    column.forEach((part, i) => {
      parts[i * sources.length + s] = part;
    });
  });
  return { sources, parts };
}

function camberNudged(corner: Corner, key: HardPointKey, axis: number, by: number, travel: Float64Array): Float64Array {
  const point = [...hardPoint(corner, key)!] as [number, number, number];
  point[axis]! += by;
  return sweepTravel(buildLinkage(withHardPoint(corner, key, point)), travel).camber;
}
