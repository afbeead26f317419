import type { Vector3 } from './corner.js';
import type { RackSide } from './toe-adjustment.js';

/** What a tape tells of a tie rod and of what it pulls on. */
export interface SteeringArm {
  /** Between the centres of the rod's two ball joints, mm. */
  rodLength: number;
  /** From the steering axis to the rod's line, mm: at the height of the outer joint, seen from above, square to the rod. */
  lever: number;
  /** Where the rod's outer joint lies, seen from the steering axis. */
  rack: RackSide;
}

/**
 * The same from hard points: the steering axis is the line through ball joint and top mount (upper ball joint of a wishbone).
 *
 * @returns undefined where the axis is level, or the rod has no length seen from above
 */
export function steeringArmOf(ball: Vector3, upper: Vector3, inner: Vector3, outer: Vector3): SteeringArm | undefined {
  const share = (outer[2] - ball[2]) / (upper[2] - ball[2]);
  const [fromX, fromY] = [0, 1].map((i) => outer[i]! - ball[i]! - share * (upper[i]! - ball[i]!)) as [number, number];
  const [alongX, alongY] = [outer[0] - inner[0], outer[1] - inner[1]];
  const length = Math.hypot(alongX, alongY);
  const lever = Math.abs(fromX * alongY - fromY * alongX) / length;
  if (!Number.isFinite(lever)) return undefined;
  return {
    rodLength: Math.hypot(length, outer[2] - inner[2]),
    lever,
    rack: fromX < 0 ? 'behind' : 'ahead',
  };
}
