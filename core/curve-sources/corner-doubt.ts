import { type Corner, type HardPointKey, hardPointKeys, type PlusMinus, type Vector3 } from '../linkage/corner.js';
import type { CornerSource } from '../linkage/corner-source.js';
import { sweepDerivatives } from '../linkage/derivatives.js';
import type { Linkage } from '../linkage/linkage.js';
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

/** Every coordinate whose ± was stated, each for itself. */
export function cornerSources(corner: Corner): CornerSource[] {
  const plusMinus: PlusMinus = corner.plusMinus ?? {};
  return hardPointKeys(corner).flatMap((key) => {
    const standard = (plusMinus[key] ?? plusMinus.other ?? 0) / NORMAL_95;
    if (!(standard > 0)) return [];
    return AXES.map((name, axis) => ({
      id: `${key}.${name}`,
      label: `${POINT_LABELS[key]}, ${name}`,
      dof: Number.POSITIVE_INFINITY,
      moves: { [key]: [0, 1, 2].map((at) => (at === axis ? standard : 0)) as unknown as Vector3 },
    }));
  });
}

/**
 * How a corner's doubt shows in camber and toe over travel: Σ ∂angle/∂coordinate × what a source moves it by (first order: GUM 5.1.2),
 * by the linkage's exact derivatives. Of a static camber that is in doubt the whole curve is; everything else leaves it alone at travel 0.
 *
 * @param linkage built from the corner
 * @param travel mm, all within reach
 * @returns gives `parts` of one of the angles, row by row, travels × sources, degrees
 */
export function cornerDoubt(
  corner: Corner,
  linkage: Linkage,
  travel: Float64Array,
  sources: readonly CornerSource[],
): (angle: 'camber' | 'toe') => Float64Array {
  const swept = sources.length > 0 ? sweepDerivatives(corner, linkage, travel) : undefined;
  return (angle) => {
    const parts = new Float64Array(travel.length * sources.length);
    if (!swept) return parts;
    const { keys, [angle]: derivatives } = swept;
    sources.forEach(({ moves, camber = 0 }, s) => {
      const moved = keys.flatMap((key, k) => (moves[key] ?? []).map((mm, axis) => [3 * k + axis, mm] as const));
      for (let i = 0; i < travel.length; i++) {
        let part = angle === 'camber' ? camber : 0;
        for (const [at, mm] of moved) part += derivatives[3 * i * keys.length + at]! * mm;
        parts[i * sources.length + s] = part;
      }
    });
    return parts;
  };
}
