import { add, cross, dot, length, middle, scale, subtract, unit, type Vec } from '../math/vector.js';
import type { ArmShape, BodyPoints, CarrierPoints, DamperEnd, LinkLengths } from './link-parts.js';

/** The circle that an arm's ball joint runs on. `out` is angle 0, `up` 90°: out is level-most outboard, up rises. */
export interface Circle {
  readonly centre: Vec;
  readonly out: Vec;
  readonly up: Vec;
  readonly radius: number;
}

/** Body points, carrier points and lengths in the form in which a position needs them. Vectors of the carrier start at its lower ball joint. */
export interface Solver {
  readonly lower: Circle;
  /** Wishbone. */
  readonly upper: Circle | undefined;
  /** Wishbone: unit vector from lower to upper ball joint, and their distance. */
  readonly kingpin: Vec;
  readonly kingpinLength: number;
  /** Strut: foot of the lower ball joint on the sliding axis, the axis, and the place of its second point along it from that foot. */
  readonly damperFoot: Vec;
  readonly damperAxis: Vec;
  readonly damperLow: number;
  readonly top: Vec;
  readonly tieInner: Vec;
  readonly tieOuter: Vec;
  readonly tieRod: number;
  readonly wheelCentre: Vec;
  readonly spin: Vec;
  /** Wishbone with a damper. On an arm: the foot of its end on the pivot axis, and its place in the arm's turning frame. */
  readonly damper:
    | {
        readonly top: Vec;
        readonly on: DamperEnd['on'];
        readonly base: Vec;
        readonly radius: number;
        readonly rise: number;
      }
    | undefined;
}

const OUTBOARD: Vec = [0, 1, 0];
const ZERO: Vec = [0, 0, 0];

/** The circle of an arm. Its sense, "positive raises the ball joint", does not depend on which pivot is named the front one. */
export function armCircle(front: Vec, rear: Vec, shape: ArmShape): Circle {
  const axis = unit(subtract(front, rear));
  const across = subtract(OUTBOARD, scale(axis, dot(OUTBOARD, axis)));
  const out = unit(across);
  const up = cross(axis, out);
  return {
    centre: add(middle(front, rear), scale(axis, shape.station)),
    out,
    up: up[2] < 0 ? scale(up, -1) : up,
    radius: shape.radius,
  };
}

export function makeSolver(
  body: BodyPoints,
  carrier: CarrierPoints,
  lengths: LinkLengths,
  damperEnd: DamperEnd | undefined,
): Solver {
  const fromBall = (point: Vec): Vec => subtract(point, carrier.lowerBall);
  const { upperFront, upperRear } = body;
  const upper =
    upperFront && upperRear && lengths.upperArm ? armCircle(upperFront, upperRear, lengths.upperArm) : undefined;
  const toUpper = carrier.upperBall ? fromBall(carrier.upperBall) : ZERO;
  const kingpinLength = length(toUpper);
  const damperAxis = carrier.damperAxis ?? ZERO;
  const toLow = carrier.damperLow ? fromBall(carrier.damperLow) : ZERO;
  const damperLow = dot(toLow, damperAxis);
  return {
    lower: armCircle(body.lowerFront, body.lowerRear, lengths.lowerArm),
    upper,
    kingpin: upper ? scale(toUpper, 1 / kingpinLength) : ZERO,
    kingpinLength,
    damperFoot: subtract(toLow, scale(damperAxis, damperLow)),
    damperAxis,
    damperLow,
    top: body.top ?? ZERO,
    tieInner: body.tieInner,
    tieOuter: fromBall(carrier.tieOuter),
    tieRod: lengths.tieRod,
    wheelCentre: fromBall(carrier.wheelCentre),
    spin: carrier.spin,
    damper: damperEnd && body.damperTop ? damperOf(body, carrier, damperEnd, body.damperTop) : undefined,
  };
}

function damperOf(body: BodyPoints, carrier: CarrierPoints, end: DamperEnd, top: Vec): Solver['damper'] {
  if (end.on === 'carrier') return { top, on: end.on, base: subtract(end.at, carrier.lowerBall), radius: 0, rise: 0 };
  const [front, rear] = end.on === 'lowerArm' ? [body.lowerFront, body.lowerRear] : [body.upperFront!, body.upperRear!];
  const base = add(middle(front, rear), scale(unit(subtract(front, rear)), end.at.station));
  return { top, on: end.on, base, radius: end.at.radius, rise: end.at.rise };
}
