import { withChange } from './independent-joint.js';
import { type IndependentCorner, type IndependentPose, independentStrutSweep, type Point } from './independent-strut.js';

/*
 * An axle by another way than core/: each corner moved by the generic Newton solver of independent-strut.ts, the right one
 * mirrored, both turned into one rolled frame whose vertical is the road's, and the wheels' lowest points there brought to one
 * height by the secant rule. Computed here, no published source. Imports nothing from core/.
 */

export interface IndependentAxle {
  travelLeft: number;
  travelRight: number;
  /** Wheel plane to the road's normal, degrees, positive top outward. */
  inclinationLeft: number;
  inclinationRight: number;
  /** To the body, degrees: camber positive top outward, and where the wheel plane points, positive to the left. */
  camberLeft: number;
  camberRight: number;
  steerLeft: number;
  steerRight: number;
  /** Contact centres in the rolled frame: across and up. */
  left: [across: number, up: number];
  right: [across: number, up: number];
  /** Where the normals to both contact centres' paths in the body meet: along the road from below the body's origin, above the road. */
  rollCentre: [across: number, up: number];
  /** Of the body's origin over the road. */
  bodyHeight: number;
}

const PATH_STEP_MM = 0.05;

/** Turned about the x axis by the right hand: y towards z. */
const rolled = ([x, y, z]: Point, radians: number): Point => [
  x,
  y * Math.cos(radians) - z * Math.sin(radians),
  y * Math.sin(radians) + z * Math.cos(radians),
];
const mirror = ([x, y, z]: Point): Point => [x, -y, z];

function onRoad(pose: IndependentPose, radius: number, radians: number, isRight: boolean) {
  const place = (point: Point) => rolled(isRight ? mirror(point) : point, radians);
  const centre = place(pose.wheelCentre);
  const spin = place(pose.spin);
  // Lowest point of a circle about `spin`: the steepest way down in its plane.
  const flat = Math.sqrt(1 - spin[2] ** 2);
  return {
    pose,
    inclination: (Math.asin(-spin[2]) * 180) / Math.PI,
    contact: [
      centre[1] + (radius * spin[2] * spin[1]) / flat,
      centre[2] - radius * flat,
    ] as [number, number],
  };
}

/** A corner's pose at a travel, reached in small steps. */
function poseAt(corner: IndependentCorner, travel: number, rack: number): IndependentPose {
  const steps = Math.max(1, Math.ceil(Math.abs(travel) / 10));
  const travels = Array.from({ length: steps }, (_, i) => (travel * (i + 1)) / steps);
  return independentStrutSweep(corner, travels, { rack }).at(-1)!;
}

/** @param heave mean wheel travel, mm; roll degrees, right side down positive; rack mm to the left */
export function independentAxle(corner: IndependentCorner, heave: number, roll: number, rack: number): IndependentAxle {
  const radians = (roll * Math.PI) / 180;
  const at = (difference: number) => ({
    left: onRoad(poseAt(corner, heave + difference, rack), corner.loadedRadius, radians, false),
    right: onRoad(poseAt(corner, heave - difference, -rack), corner.loadedRadius, radians, true),
  });
  const gap = (difference: number) => {
    const { left, right } = at(difference);
    return left.contact[1] - right.contact[1];
  };
  // Secant rule.
  let [before, now] = [-1, 1];
  let [gapBefore, gapNow] = [gap(before), gap(now)];
  for (let i = 0; i < 20 && Math.abs(gapNow) > 1e-11; i++) {
    const next = now - (gapNow * (now - before)) / (gapNow - gapBefore);
    [before, gapBefore] = [now, gapNow];
    now = next;
    gapNow = gap(now);
  }
  const { left, right } = at(now);
  // Paths of the contact centres in the body, seen along the road as it lies now, by central differences.
  const [earlier, later] = [at(now - PATH_STEP_MM), at(now + PATH_STEP_MM)];
  const across = (side: 'left' | 'right') => later[side].contact[0] - earlier[side].contact[0];
  const up = (side: 'left' | 'right') => later[side].contact[1] - earlier[side].contact[1];
  // Each normal: (across − a) dAcross + (up − b) dUp = 0. Two lines, Cramer's rule.
  const determinant = across('left') * up('right') - across('right') * up('left');
  const [c, d] = [
    left.contact[0] * across('left') + left.contact[1] * up('left'),
    right.contact[0] * across('right') + right.contact[1] * up('right'),
  ];
  const centreAcross = (c * up('right') - d * up('left')) / determinant;
  const centreUp = (across('left') * d - across('right') * c) / determinant;
  return {
    rollCentre: [centreAcross, centreUp - left.contact[1]],
    bodyHeight: -left.contact[1],
    travelLeft: heave + now,
    travelRight: heave - now,
    inclinationLeft: left.inclination,
    inclinationRight: right.inclination,
    camberLeft: left.pose.camber,
    camberRight: right.pose.camber,
    steerLeft: -left.pose.toe,
    steerRight: right.pose.toe,
    left: left.contact,
    right: right.contact,
  };
}

/** The corner as it stands at a travel, its points where they then are: what an alignment is set on. */
export function independentCornerAt(corner: IndependentCorner, travel: number): IndependentCorner {
  const { ball, low, tieOuter, wheelCentre, camber, toe } = poseAt(corner, travel, 0);
  return {
    ...corner,
    wheelCentre,
    camber,
    toe,
    lowerArm: { ...corner.lowerArm, ball },
    strut: { ...corner.strut, low },
    tieRod: { ...corner.tieRod, outer: tieOuter },
  };
}

/** Camber set at the top mount where the corner stands, toe held by the tie rod: the mount's place across the car by the secant rule. */
export function independentCamberSet(corner: IndependentCorner, camber: number): IndependentCorner {
  const at = (mm: number) => withChange(corner, { topBy: [0, mm, 0] });
  let [before, now] = [-1, 1];
  let [missBefore, miss] = [at(before).camber - camber, at(now).camber - camber];
  for (let i = 0; i < 20 && Math.abs(miss) > 1e-10; i++) {
    const next = now - (miss * (now - before)) / (miss - missBefore);
    [before, missBefore] = [now, miss];
    now = next;
    miss = at(now).camber - camber;
  }
  return at(now);
}

/** The axle in a turn to the left at the rack, mm to the left, that brings the mean of both wheels to an angle: by the secant rule. */
export function independentTurn(corner: IndependentCorner, heave: number, roll: number, meanSteer: number): IndependentAxle {
  const at = (rack: number) => independentAxle(corner, heave, roll, rack);
  const miss = ({ steerLeft, steerRight }: IndependentAxle) => (steerLeft + steerRight) / 2 - meanSteer;
  let [before, now] = [0, 5];
  let [missBefore, axle] = [miss(at(before)), at(now)];
  for (let i = 0; i < 20 && Math.abs(miss(axle)) > 1e-10; i++) {
    const next = now - (miss(axle) * (now - before)) / (miss(axle) - missBefore);
    [before, missBefore] = [now, miss(axle)];
    now = next;
    axle = at(now);
  }
  return axle;
}
