import { type Corner, type HardPointKey, hardPointKeys, type PlusMinus } from '../linkage/corner.js';
import { sweepDerivatives } from '../linkage/derivatives.js';
import type { Linkage } from '../linkage/linkage.js';
import type { Source } from '../uncertainty/estimate.js';
import { NORMAL_95 } from '../uncertainty/normal.js';

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
  'strut.low': 'low point of the damper',
  'tieRod.inner': 'tie rod, inner end',
  'tieRod.outer': 'tie rod, outer end',
  wheelCentre: 'wheel centre',
};

/**
 * How each coordinate's doubt shows in camber over travel. Every coordinate is an independent source; its part at a travel is
 * ∂camber/∂coordinate × standard uncertainty (first order: GUM 5.1.2), by the linkage's exact derivatives. Static camber is what
 * was measured, so the parts are those of the change: all zero at travel 0.
 *
 * @param linkage built from the corner
 * @param travel mm, all within reach
 * @returns `parts` row by row, travels × sources, degrees; both empty when the corner states no doubt.
 */
export function cornerDoubt(
  corner: Corner,
  linkage: Linkage,
  travel: Float64Array,
): { sources: Source[]; parts: Float64Array } {
  const plusMinusOf = (key: HardPointKey) =>
    (corner.plusMinus as PlusMinus | undefined)?.[key] ?? corner.plusMinus?.other ?? 0;
  const doubted = hardPointKeys(corner)
    .map((key, index) => ({ key, index, standard: plusMinusOf(key) / NORMAL_95 }))
    .filter(({ standard }) => standard > 0);
  if (doubted.length === 0) return { sources: [], parts: new Float64Array() };

  const sources = doubted.flatMap(({ key }) =>
    AXES.map((name) => ({
      id: `${key}.${name}`,
      label: `${POINT_LABELS[key]}, ${name}`,
      dof: Number.POSITIVE_INFINITY,
    })),
  );
  const { camber, keys } = sweepDerivatives(corner, linkage, travel);
  const parts = new Float64Array(travel.length * sources.length);
  for (let i = 0; i < travel.length; i++) {
    doubted.forEach(({ index, standard }, at) => {
      for (let axis = 0; axis < AXES.length; axis++) {
        parts[i * sources.length + at * AXES.length + axis] = camber[(i * keys.length + index) * 3 + axis]! * standard;
      }
    });
  }
  return { sources, parts };
}
