import { cross, distance, dot, length, middle, scale, subtract, unit, type Vec } from '../math/vector.js';
import { InputError } from '../quantity/problem.js';
import type { Arm, Corner, Damper, Vector3, WishboneCorner } from './corner.js';
import type { ArmPoint, ArmShape, BodyPoints, CarrierPoints, DamperEnd, LinkLengths } from './link-parts.js';
import type { LimitingLink, Linkage, Reach } from './linkage.js';
import { ARM_ANGLE, CLOSED, POSE_SIZE, poseAt, TRAVEL, WHEEL, WHEEL_RATE } from './pose.js';
import { armCircle, makeSolver } from './solver.js';
import { findReach, linkThatRanOut, moveTo, openReach } from './travel.js';

/** Travel, mm, that a linkage must at least be able to move both ways to be one. */
const LEAST_TRAVEL_MM = 1;

/** The outboard unit spin axis of a left wheel with this camber (top outward positive) and toe-in, degrees (ISO 8855 projections). */
export function spinAxis(camberDeg: number, toeDeg: number): Vector3 {
  const radians = Math.PI / 180;
  return unit([Math.tan(toeDeg * radians), 1, -Math.tan(camberDeg * radians)]);
}

/** Everything a linkage is made of, before the solver has seen it. */
export type Raw = Pick<
  Linkage,
  'kind' | 'body' | 'carrier' | 'lengths' | 'damperEnd' | 'branch' | 'loadedRadius' | 'wheelCentreZ'
>;

const cannotClose = (path: LimitingLink): InputError =>
  new InputError([{ code: 'cannot-close', path, value: undefined }]);

const shapeOf = (arm: Arm): ArmShape => {
  const axis = unit(subtract(arm.front, arm.rear));
  const toBall = subtract(arm.ball, middle(arm.front, arm.rear));
  const station = dot(toBall, axis);
  return { station, radius: length(subtract(toBall, scale(axis, station))) };
};

/** The angle of an arm's ball joint on its circle. */
const angleOf = (arm: Arm): number => {
  const circle = armCircle(arm.front, arm.rear, shapeOf(arm));
  const radius = subtract(arm.ball, circle.centre);
  return Math.atan2(dot(radius, circle.up), dot(radius, circle.out));
};

/** A point that turns with an arm, in the arm's own frame at the angle it has now. */
function inArm(arm: Arm, point: Vec): ArmPoint {
  const shape = shapeOf(arm);
  const circle = armCircle(arm.front, arm.rear, shape);
  const axis = unit(subtract(arm.front, arm.rear));
  const station = dot(subtract(point, middle(arm.front, arm.rear)), axis);
  const away = subtract(subtract(point, circle.centre), scale(axis, station - shape.station));
  const angle = angleOf(arm);
  const out = dot(away, circle.out);
  const up = dot(away, circle.up);
  return {
    station,
    radius: out * Math.cos(angle) + up * Math.sin(angle),
    rise: up * Math.cos(angle) - out * Math.sin(angle),
  };
}

function damperEndOf(corner: WishboneCorner, { low, on = 'lowerArm' }: Damper): DamperEnd {
  if (on === 'carrier') return { on, at: subtract(low, corner.wheelCentre) };
  return { on, at: inArm(corner[on], low) };
}

/** Which root of the upper arm's equation the corner's own points are: the sign of A sin φ − B cos φ. */
function upperBranch({ lowerArm, upperArm }: WishboneCorner): 1 | -1 {
  const { centre, out, up } = armCircle(upperArm.front, upperArm.rear, shapeOf(upperArm));
  const toLower = subtract(lowerArm.ball, centre);
  const toUpper = subtract(upperArm.ball, centre);
  const turn = dot(toLower, out) * dot(toUpper, up) - dot(toLower, up) * dot(toUpper, out);
  return turn >= 0 ? 1 : -1;
}

/**
 * Takes a corner apart into body points, carrier points and link lengths, on the assembly that the points themselves are.
 *
 * @throws InputError `cannot-close` when the links cannot move from where they are: ball joint on the pivot axis, tie rod in
 *   line with the steering axis, ball joint beyond the top mount along the damper's axis, upper arm stretched towards the lower
 *   ball joint, or an end of reach closer than 1 mm.
 * @param options `isOpen`: its ends of reach, and those of what parts make of it, are not looked for: see `openReach`
 */
export function buildLinkage(corner: Corner, options?: { isOpen?: boolean }): Linkage {
  const { lowerArm, tieRod, wheelCentre } = corner;
  const fromWheel = (point: Vector3): Vector3 => subtract(point, wheelCentre);
  const upperPoint = corner.kind === 'strut' ? corner.strut.top : corner.upperArm.ball;
  const steering = subtract(upperPoint, lowerArm.ball);
  const turn = dot(cross(subtract(tieRod.inner, lowerArm.ball), subtract(tieRod.outer, lowerArm.ball)), steering);

  let body: BodyPoints = { lowerFront: lowerArm.front, lowerRear: lowerArm.rear, tieInner: tieRod.inner };
  let carrier: CarrierPoints = {
    lowerBall: fromWheel(lowerArm.ball),
    tieOuter: fromWheel(tieRod.outer),
    wheelCentre: [0, 0, 0],
    spin: spinAxis(corner.camber, corner.toe),
  };
  let lengths: LinkLengths = { lowerArm: shapeOf(lowerArm), tieRod: distance(tieRod.outer, tieRod.inner) };
  let damperEnd: DamperEnd | undefined;
  let branch: Linkage['branch'] = { tieRod: turn >= 0 ? 1 : -1, upperArm: 1 };
  if (corner.kind === 'strut') {
    const { top, low } = corner.strut;
    const damperAxis = unit(subtract(top, low));
    // The solver takes the assembly with the top mount above the ball joint's foot on the axis. Below it there is no strut.
    if (!(dot(steering, damperAxis) > 0)) throw cannotClose('strut');
    body = { ...body, top };
    carrier = { ...carrier, damperLow: fromWheel(low), damperAxis };
  } else {
    const { upperArm, damper } = corner;
    body = { ...body, upperFront: upperArm.front, upperRear: upperArm.rear, ...(damper && { damperTop: damper.top }) };
    carrier = { ...carrier, upperBall: fromWheel(upperArm.ball) };
    lengths = { ...lengths, upperArm: shapeOf(upperArm) };
    branch = { ...branch, upperArm: upperBranch(corner) };
    if (damper) damperEnd = damperEndOf(corner, damper);
  }
  const raw: Raw = {
    kind: corner.kind,
    body,
    carrier,
    lengths,
    ...(damperEnd && { damperEnd }),
    branch,
    loadedRadius: corner.loadedRadius,
    wheelCentreZ: wheelCentre[2],
  };
  return assemble(raw, angleOf(lowerArm), options?.isOpen);
}

/**
 * Puts the parts of a linkage together, at the ride height they are to have: the lower arm's angle is found at which the wheel
 * centre is at `wheelCentreZ`.
 *
 * @param near an arm angle close to it, radians
 * @param isOpen its ends of reach are not looked for: see `openReach`
 * @throws InputError `cannot-close` with the link that does not join as path
 */
export function assemble(raw: Raw, near: number, isOpen = false): Linkage {
  const solver = makeSolver(raw.body, raw.carrier, raw.lengths, raw.damperEnd);
  const sketch: Linkage = { ...raw, solver, home: near, reach: undefined as unknown as Reach };
  const pose = new Float64Array(POSE_SIZE);
  pose[ARM_ANGLE] = near;
  const closing = poseAt(pose, sketch);
  if (closing !== CLOSED) throw cannotClose(linkThatRanOut(closing));
  // The other links give the carrier a rate; a tie rod in one plane with the steering axis does not hold it.
  if (!Number.isFinite(pose[WHEEL_RATE + 2]!)) throw cannotClose('tieRod');
  const reach = isOpen ? openReach(near) : findReach(sketch);
  if (!(reach.bump >= LEAST_TRAVEL_MM) || !(reach.droop <= -LEAST_TRAVEL_MM)) {
    throw cannotClose(reach.bump < LEAST_TRAVEL_MM ? reach.bumpEndedBy : reach.droopEndedBy);
  }
  const built: Linkage = { ...sketch, reach };
  // The points as built are the reference; only a part moves the arm away from where it was.
  if (Math.abs(pose[WHEEL + 2]! - raw.wheelCentreZ) < 1e-9) return built;
  pose[ARM_ANGLE] = near;
  pose[TRAVEL] = 0;
  // A part so large that the ride height cannot be had any more.
  if (!moveTo(pose, built, reach)) throw cannotClose(reach.bump < 0 ? reach.bumpEndedBy : reach.droopEndedBy);
  return { ...built, home: pose[ARM_ANGLE]! };
}

/** The ends of wheel travel that the links allow, mm (droop negative), and the link that runs out at each. */
export function reachOf(linkage: Linkage): Pick<Reach, 'droop' | 'bump' | 'droopEndedBy' | 'bumpEndedBy'> {
  const { droop, bump, droopEndedBy, bumpEndedBy } = linkage.reach;
  return { droop, bump, droopEndedBy, bumpEndedBy };
}
