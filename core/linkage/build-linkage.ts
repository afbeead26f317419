import { add, cross, dot, length, scale, subtract, unit } from '../math/vector.js';
import { InputError } from '../quantity/problem.js';
import type { Corner, Vector3 } from './corner.js';
import type { Linkage, Reach } from './linkage.js';
import { CLOSED, POSE_SIZE, poseAt, WHEEL_RATE } from './pose.js';
import { findReach } from './travel.js';

/** Travel, mm, that a linkage must at least be able to move both ways to be one. */
const LEAST_TRAVEL_MM = 1;

/** The outboard unit spin axis of a left wheel with this camber (top outward positive) and toe-in, degrees (ISO 8855 projections). */
export function spinAxis(camberDeg: number, toeDeg: number): Vector3 {
  const radians = Math.PI / 180;
  return unit([Math.tan(toeDeg * radians), 1, -Math.tan(camberDeg * radians)]);
}

/**
 * Takes a corner apart into body points, carrier points and link lengths, on the assembly that the points themselves are.
 *
 * @throws InputError `cannot-close` when the links cannot move from where they are: ball joint on the pivot axis, tie rod in
 *   line with the steering axis, ball joint beyond the top mount along the damper's axis, or an end of reach closer than 1 mm.
 */
export function buildLinkage(corner: Corner): Linkage {
  const { lowerArm, strut, tieRod } = corner;
  const ball = lowerArm.ball;

  let armAxis = unit(subtract(lowerArm.front, lowerArm.rear));
  const armCentre = add(lowerArm.rear, scale(armAxis, dot(subtract(ball, lowerArm.rear), armAxis)));
  const radius = subtract(ball, armCentre);
  const arm = length(radius);
  const armOut = scale(radius, 1 / arm);
  let armUp = cross(armAxis, armOut);
  // Pivots named the other way round turn the axis; the sense "positive raises the ball joint" must not depend on names.
  if (armUp[2] < 0) {
    armAxis = scale(armAxis, -1);
    armUp = scale(armUp, -1);
  }

  const damperAxis = unit(subtract(strut.top, strut.low));
  const toLow = subtract(strut.low, ball);
  const low = dot(toLow, damperAxis);
  const damperFoot = subtract(toLow, scale(damperAxis, low));
  // The solver takes the assembly with the top mount above the ball joint's foot on the axis. Below it there is no strut.
  if (!(dot(subtract(strut.top, ball), damperAxis) > 0)) {
    throw new InputError([{ code: 'cannot-close', path: 'strut', value: strut }]);
  }

  const steering = unit(subtract(strut.top, ball));
  const tieOuter = subtract(tieRod.outer, ball);
  const tieInner = subtract(tieRod.inner, ball);
  const turn = dot(cross(tieInner, tieOuter), steering);

  const linkage: Linkage = {
    kind: 'strut',
    corner,
    body: { armCentre, armAxis, top: strut.top, tieInner: tieRod.inner },
    carrier: {
      damperAxis,
      damperFoot,
      low,
      tieOuter,
      wheelCentre: subtract(corner.wheelCentre, ball),
      spin: spinAxis(corner.camber, corner.toe),
    },
    lengths: { arm, tieRod: length(subtract(tieRod.outer, tieRod.inner)) },
    armOut,
    armUp,
    branch: turn >= 0 ? 1 : -1,
    loadedRadius: corner.loadedRadius,
    wheelCentreZ: corner.wheelCentre[2],
    reach: undefined as unknown as Reach,
  };
  const pose = new Float64Array(POSE_SIZE);
  const reach =
    poseAt(pose, linkage, 0, 0) === CLOSED && Number.isFinite(pose[WHEEL_RATE + 2]!) ? findReach(linkage) : undefined;
  if (!reach || !(reach.bump >= LEAST_TRAVEL_MM) || !(reach.droop <= -LEAST_TRAVEL_MM)) {
    const link = !reach ? 'tieRod' : reach.bump < LEAST_TRAVEL_MM ? reach.bumpEndedBy : reach.droopEndedBy;
    throw new InputError([{ code: 'cannot-close', path: link, value: corner[link] }]);
  }
  return { ...linkage, reach };
}

/** The ends of wheel travel that the links allow, mm (droop negative), and the link that runs out at each. */
export function reachOf(linkage: Linkage): Pick<Reach, 'droop' | 'bump' | 'droopEndedBy' | 'bumpEndedBy'> {
  const { droop, bump, droopEndedBy, bumpEndedBy } = linkage.reach;
  return { droop, bump, droopEndedBy, bumpEndedBy };
}
