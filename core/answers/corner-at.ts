import { moveWithToeHeld } from '../linkage/held-toe.js';
import type { Linkage } from '../linkage/linkage.js';
import { ARM_ANGLE, BALL, POSE_SIZE, SPIN, TIE_OUTER, TRAVEL, UPPER } from '../linkage/pose-layout.js';
import { toeIn, withRodEnd } from '../linkage/rod-ends.js';
import { sweepTravel } from '../linkage/sweep.js';
import { ToeWindow } from '../linkage/toe-window.js';
import { findReach, moveTo, openReach } from '../linkage/travel.js';
import { cross, dot, scale, subtract } from '../math/vector.js';

const DEGREES = 180 / Math.PI;

/** Angles of the steered wheel on the ground at which its inclination is told, degrees. */
const [SHALLOW, FULL] = [15, 30];

/** What is asked of a corner besides where it stands. */
export interface Asked {
  /** Bump, mm. */
  over: number;
  /** Droop and bump, mm, over which bump steer is told. */
  window: readonly [number, number];
  /** Whether the tie rod is known. */
  isToeTold: boolean;
}

/**
 * A corner at a ride height with toe set there: mm and degrees, signs as in `TravelSweep`. NaN where a link runs out.
 */
export interface CornerFigures {
  /** Static camber. */
  camber: number;
  /** Kingpin inclination, degrees. */
  kingpin: number;
  /** mm, positive with the contact outboard of the steering axis. */
  scrubRadius: number;
  /** Degrees. */
  caster: number;
  /** mm. */
  casterTrail: number;
  /** Contact centre from the car's centreline. */
  halfTrack: number;
  /** Above the ground, mm. */
  rollCentreHeight: number;
  /** What bump changes of camber. */
  camberChange: number;
  /** Peak to peak over the window. Left out where the tie rod is not known. */
  bumpSteer?: number;
  /**
   * Inclination to the road of the wheel steered so far on the ground, the body level and the wheel centre as high as straight ahead:
   * the outer wheel of a turn, and the inner one.
   */
  inclinationAt15: number;
  /** Steered by 30°, degrees. */
  inclinationAt30: number;
  /** Of the inner wheel, degrees. */
  innerAt15: number;
  /** Of the inner wheel, degrees. */
  innerAt30: number;
}

/** A corner at its ride height, toe set there by the rod's length. */
export interface Standing {
  /** Its rod is set, its ends of reach known; its home is the ride height. */
  linkage: Linkage;
  travel: number;
  pose: Float64Array;
}

/**
 * The position at a travel with toe held, whatever rod that takes.
 *
 * @param toe degrees, toe-in positive
 * @returns undefined beyond reach
 */
export function heldAtTravel(linkage: Linkage, travel: number, toe: number, near = linkage.home) {
  const pose = new Float64Array(POSE_SIZE);
  pose[ARM_ANGLE] = near;
  pose[TRAVEL] = travel;
  return moveWithToeHeld(pose, linkage, toe / DEGREES) ? pose : undefined;
}

/** Camber of a position, degrees, top outward positive. */
export const camberOfPose = (pose: Float64Array): number => Math.atan2(-pose[SPIN + 2]!, pose[SPIN + 1]!) * DEGREES;

/** @returns undefined where no rod leads to that toe, or beyond reach */
export function standingWithToe(linkage: Linkage, travel: number, toe: number): Standing | undefined {
  const pose = heldAtTravel(linkage, travel, toe);
  const set = pose && withRodEnd(linkage, pose, 'outerEnd', 0);
  if (!set) return undefined;
  const reach = findReach(set);
  return Number.isNaN(reach.bump) ? undefined : { linkage: { ...set, reach }, travel, pose };
}

/** Toe-in, degrees, of another corner where it stands with the rod that was set on this one; NaN where it does not join there. */
export function toeWithRodOf({ linkage: { solver } }: Standing, { linkage: other, travel, pose }: Standing): number {
  const moved = pose.slice();
  moved[TRAVEL] = travel;
  const linkage = { ...other, solver: { ...other.solver, tieRod: solver.tieRod } };
  return moveTo(moved, linkage, openReach(linkage.home)) ? toeIn(moved) : Number.NaN;
}

/** Everything that is told of a corner where it stands. */
export function figuresOf({ linkage, travel, pose }: Standing, { over, window, isToeTold }: Asked): CornerFigures {
  const swept = sweepTravel(linkage, [travel, travel + over]);
  const here = (name: 'camber' | 'kingpin' | 'scrubRadius' | 'caster' | 'casterTrail' | 'halfTrack') => swept[name][0]!;
  const leaning = (steer: number) => inclinationSteered(linkage, travel, pose, steer);
  return {
    camber: here('camber'),
    kingpin: here('kingpin'),
    scrubRadius: here('scrubRadius'),
    caster: here('caster'),
    casterTrail: here('casterTrail'),
    halfTrack: here('halfTrack'),
    rollCentreHeight: swept.rollCentreHeight[0]!,
    camberChange: swept.camber[1]! - swept.camber[0]!,
    ...(isToeTold && { bumpSteer: bumpSteerOf(linkage, travel, window) }),
    // A left wheel is the outer one of a turn to the right.
    inclinationAt15: leaning(-SHALLOW),
    inclinationAt30: leaning(-FULL),
    innerAt15: leaning(SHALLOW),
    innerAt30: leaning(FULL),
  };
}

function bumpSteerOf(linkage: Linkage, travel: number, window: readonly [number, number]): number {
  const over = new ToeWindow(travel, window);
  return over.sweep(linkage) ? over.spread : Number.NaN;
}

/**
 * Inclination of the left wheel pointing `steer` (ISO 8855, degrees, positive to the left), the wheel centre as high as it stands. With
 * toe and travel prescribed the carrier's place does not depend on the rod: no rack is searched for, the rod only has to join.
 *
 * @returns degrees; NaN where the rod does not
 */
function inclinationSteered(linkage: Linkage, travel: number, standing: Float64Array, steer: number): number {
  const pose = heldAtTravel(linkage, travel, -steer, standing[ARM_ANGLE]!);
  return pose && rodJoins(linkage, pose) ? Math.asin(-pose[SPIN + 2]!) * DEGREES : Number.NaN;
}

/** Whether a rack position holds the wheel there on the assembly that the corner is: the rod's end is moved along y until it fits. */
function rodJoins({ solver, branch }: Linkage, pose: Float64Array): boolean {
  const at = (offset: number) => [pose[offset]!, pose[offset + 1]!, pose[offset + 2]!] as const;
  const [ball, upper, outer] = [at(BALL), at(UPPER), at(TIE_OUTER)];
  const [dx, , dz] = subtract(outer, solver.tieInner);
  const across = solver.tieRod ** 2 - dx ** 2 - dz ** 2;
  if (!(across > 0)) return false;
  const side = Math.sign(outer[1] - solver.tieInner[1]);
  const inner = [solver.tieInner[0], outer[1] - side * Math.sqrt(across), solver.tieInner[2]] as const;
  const turn = dot(cross(subtract(inner, ball), subtract(outer, ball)), subtract(upper, ball));
  return turn * branch.tieRod > 0;
}

/**
 * By how much further the wheel can go into bump until the damper is as short as another stands: so much more bump is left than of that
 * one on the same damper and stop. mm at the wheel.
 *
 * @param length of the other's damper, mm
 * @returns undefined of a corner without a damper; NaN beyond reach
 */
export function bumpUntil({ linkage, travel }: Standing, length: number): number | undefined {
  if (linkage.kind !== 'strut' && !linkage.damperEnd) return undefined;
  let by = 0;
  for (let i = 0; i < 20; i++) {
    const { damperLength, motionRatio } = sweepTravel(linkage, [travel + by]);
    const step = (damperLength[0]! - length) / motionRatio[0]!;
    by += step;
    if (!(Math.abs(step) > 1e-9)) break;
  }
  return by;
}

/** Of the damper where the corner stands, mm; NaN without one. */
export const damperLengthOf = ({ linkage, travel }: Standing): number =>
  sweepTravel(linkage, [travel]).damperLength[0]!;

/**
 * From the strut's axis to the middle plane of the wheel, square to it, mm: taken where the axis passes the tyre's edge, the loaded
 * radius from the wheel centre. A tyre of any width is nearer to the strut by as much as this is less.
 *
 * @returns undefined of a wishbone, and of a strut that passes the tyre nowhere
 */
export function strutToWheelPlane({ carrier, loadedRadius }: Linkage): number | undefined {
  const { damperLow, damperAxis, wheelCentre, spin } = carrier;
  if (!damperLow || !damperAxis) return undefined;
  const from = subtract(damperLow, wheelCentre);
  const along = -dot(from, damperAxis);
  const apart = loadedRadius ** 2 - (dot(from, from) - along ** 2);
  if (!(apart > 0)) return undefined;
  const place = subtract(from, scale(damperAxis, -(along + Math.sqrt(apart))));
  return -dot(place, spin);
}
