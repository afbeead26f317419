/*
 * The arc of a tie rod's outer joint on a strut that is flat in front view, wheel held straight, and what a rod would lack to follow it.
 * Nothing is imported from core/.
 *
 * Method: the arm's angle gives the ball joint; the damper's axis passes through ball joint and top mount, so the knuckle turns as the
 * line between them does; the outer joint turns with it. The arm's angle for a travel by bisection. The instant centre is where the
 * arm's line meets the line through the top mount square to the damper. Source: plane kinematics, as in any textbook of mechanisms.
 */
export type PlanePoint = readonly [y: number, z: number];

export interface PlaneStrutWithRod {
  /** mm, y outboard, z up. */
  pivot: PlanePoint;
  ball: PlanePoint;
  top: PlanePoint;
  wheelCentre: PlanePoint;
  outerJoint: PlanePoint;
}

/** The strut of derived_strut_planar.json with the outer joint of bump_steer_planar.csv. */
export const PLANE_STRUT: PlaneStrutWithRod = {
  pivot: [340, 200],
  ball: [700, 185],
  top: [585, 835],
  wheelCentre: [745, 310],
  outerJoint: [640, 262],
};

const direction = ([y, z]: PlanePoint, [toY, toZ]: PlanePoint) => Math.atan2(toZ - z, toY - y);
const apart = ([y, z]: PlanePoint, [toY, toZ]: PlanePoint) => Math.hypot(toY - y, toZ - z);

/** Ball joint, wheel centre and outer joint at a travel of the wheel centre, mm, bump positive. */
export function planeStrutAt(strut: PlaneStrutWithRod, travel: number) {
  const { pivot, ball, top, wheelCentre, outerJoint } = strut;
  const length = apart(pivot, ball);
  const start = direction(pivot, ball);
  const at = (angle: number) => {
    const here: PlanePoint = [pivot[0] + length * Math.cos(angle), pivot[1] + length * Math.sin(angle)];
    const turn = direction(here, top) - direction(ball, top);
    const carried = ([y, z]: PlanePoint): PlanePoint => [
      here[0] + (y - ball[0]) * Math.cos(turn) - (z - ball[1]) * Math.sin(turn),
      here[1] + (y - ball[0]) * Math.sin(turn) + (z - ball[1]) * Math.cos(turn),
    ];
    return { ball: here, wheelCentre: carried(wheelCentre), outerJoint: carried(outerJoint) };
  };
  let [low, high] = [start - 0.5, start + 0.5];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (at(middle).wheelCentre[1] - wheelCentre[1] < travel) low = middle;
    else high = middle;
  }
  return at((low + high) / 2);
}

/** By how much a rod from this inner end would have to be longer at a travel for the wheel not to steer, mm. */
export function rodMisfit(strut: PlaneStrutWithRod, inner: PlanePoint, travel: number): number {
  return apart(inner, planeStrutAt(strut, travel).outerJoint) - apart(inner, strut.outerJoint);
}

/** Where the arm's line and the line through the top mount square to the damper meet, mm. */
export function planeInstantCentre({ pivot, ball, top }: PlaneStrutWithRod): PlanePoint {
  const arm = [pivot[0] - ball[0], pivot[1] - ball[1]] as const;
  const damper = [top[0] - ball[0], top[1] - ball[1]] as const;
  const along =
    (damper[0] * (top[0] - ball[0]) + damper[1] * (top[1] - ball[1])) / (damper[0] * arm[0] + damper[1] * arm[1]);
  return [ball[0] + along * arm[0], ball[1] + along * arm[1]];
}
