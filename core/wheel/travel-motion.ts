import type { Curve } from '../curve/curve.js';
import type { Vector3 } from '../linkage/corner.js';
import { DEG } from '../math/angle.js';
import { type Moved, travelsBetween } from './rack-motion.js';
import type { MotionDoubt, WheelMotion } from './wheel-motion.js';

/** Where a wheel is at a travel: how far its centre has gone forward and outboard, mm, and its camber and toe, degrees. */
interface At {
  forward: number;
  outboard: number;
  camber: number;
  toe: number;
}

/**
 * What a gauge on the hub tells nothing of, by one standard uncertainty at a travel t: how far the wheel goes off a straight way
 * sideways, its way fore and aft, and its toe. All of this, and the arc, from random three-dimensional cars, seed 9001
 * (test/core/driveway/random-car.ts).
 */
const UNREAD: readonly { id: string; label: string; off(t: number): Partial<At> }[] = [
  { id: 'motion.arc', label: 'sideways motion', off: (t) => ({ outboard: 0.0008 * t * t }) },
  { id: 'motion.forward', label: 'fore and aft motion', off: (t) => ({ forward: 0.043 * t }) },
  { id: 'motion.toe', label: 'bump steer', off: (t) => ({ toe: 0.006 * t }) },
  { id: 'motion.toeBend', label: 'bump steer', off: (t) => ({ toe: 2.2e-4 * t * t }) },
];
/** Standard uncertainty of the sideways motion, mm a mm: of one that was given, by a plumb line over 40 mm, and of none. */
const SIDEWAYS = { given: 0.025, assumed: 0.045 };
/** Level links take the wheel along an arc, inboard both ways: mm a mm². */
const ARC = -0.0011;

/**
 * The motion that a camber curve alone tells of: sideways as much as is said, straight, else along the arc of common links.
 *
 * @param sideways how far the wheel goes outboard for each mm of bump; undefined: nobody said
 */
export function travelMotion(
  curve: Curve,
  sideways: number | undefined,
  from: WheelMotion['from'],
): Moved & Pick<WheelMotion, 'doubts'> {
  const [low, high] = curve.domain;
  const travel = travelsBetween(low, high);
  const toe = Float64Array.of(0);
  const aside = (t: number) => (sideways === undefined ? ARC * t * t : sideways * t);
  const over = (off: (t: number) => Partial<At>): Moved => {
    const at = [...travel].map((t) => ({ t, ...{ forward: 0, outboard: 0, camber: 0, toe: 0, ...off(t) } }));
    const vectors = (of: (at: At & { t: number }) => Vector3) => Float64Array.from(at.flatMap((one) => [...of(one)]));
    return {
      travel,
      rack: toe,
      toe,
      centre: vectors(({ t, forward, outboard }) => [forward, aside(t) + outboard, t]),
      spin: vectors(({ t, camber, toe: turn }) => {
        const lean = (curve.value(t) + camber) * DEG;
        return [Math.sin(turn * DEG), Math.cos(turn * DEG) * Math.cos(lean), -Math.cos(turn * DEG) * Math.sin(lean)];
      }),
    };
  };
  const doubt = sideways === undefined ? SIDEWAYS.assumed : SIDEWAYS.given;
  const sources = [
    ...curve.data.sources.map((source, k) => ({
      ...source,
      off: (t: number) => ({ camber: curve.estimate(t).parts[k] ?? 0 }),
    })),
    ...[
      { id: 'motion.sideways', label: 'sideways motion', off: (t: number) => ({ outboard: doubt * t }) },
      ...UNREAD,
    ].map((source) => ({ ...source, dof: Number.POSITIVE_INFINITY })),
  ];
  const doubts = sources.map(
    ({ off, ...source }): MotionDoubt => ({ ...source, by: 1, motion: { from, ...over(off) } }),
  );
  return { ...over(() => ({})), doubts };
}
