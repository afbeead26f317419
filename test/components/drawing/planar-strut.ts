import type { FrontViewPose } from '../../../components/drawing/strut-front-view.js';

/**
 * A strut as a plane mechanism, for tests of the drawing alone: arm about its pivot, carrier held by the ball joint and by an axis that
 * slides through the top mount. Invented; it shares nothing with core/linkage.
 */
export type Plane = readonly [number, number];

export interface PlanarStrut {
  armPivot: Plane;
  ball: Plane;
  top: Plane;
  low: Plane;
  tieInner: Plane;
  tieOuter: Plane;
  wheelCentre: Plane;
  radius: number;
  camber: number;
  tyreWidth?: number;
}

/** Invented. */
export const exampleStrut: PlanarStrut = {
  armPivot: [343, 199],
  ball: [700, 185],
  top: [585, 835],
  low: [632, 470],
  tieInner: [345, 268],
  tieOuter: [660, 262],
  wheelCentre: [745, 310],
  radius: 310,
  camber: -0.5,
};

const turn = (point: Plane, centre: Plane, angle: number): Plane => {
  const [a, b] = [point[0] - centre[0], point[1] - centre[1]];
  return [centre[0] + a * Math.cos(angle) - b * Math.sin(angle), centre[1] + a * Math.sin(angle) + b * Math.cos(angle)];
};

/** The pose at a travel (mm), by bisection on the arm's angle. */
export function poseAt(strut: PlanarStrut, travel: number): FrontViewPose {
  const { armPivot, ball, top, low } = strut;
  const offset = (from: Plane, axis: number) =>
    (top[0] - from[0]) * Math.sin(axis) - (top[1] - from[1]) * Math.cos(axis);
  const axis = Math.atan2(top[1] - low[1], top[0] - low[0]);
  const aside = offset(ball, axis);
  const pose = (arm: number) => {
    const now = turn(ball, armPivot, arm);
    const reach = Math.hypot(top[0] - now[0], top[1] - now[1]);
    const spin = Math.atan2(top[1] - now[1], top[0] - now[0]) + Math.asin(aside / reach) - axis;
    const carried = (point: Plane): Plane => {
      const turned = turn(point, ball, spin);
      return [turned[0] + now[0] - ball[0], turned[1] + now[1] - ball[1]];
    };
    return { now, spin, carried, wheelCentre: carried(strut.wheelCentre) };
  };
  let [down, up] = [-0.6, 0.6];
  for (let i = 0; i < 60; i++) {
    const middle = (down + up) / 2;
    if (pose(middle).wheelCentre[1] - strut.wheelCentre[1] < travel) down = middle;
    else up = middle;
  }
  const { now, spin, carried, wheelCentre } = pose(down);
  const along: Plane = [now[0] - armPivot[0], now[1] - armPivot[1]];
  const across: Plane = [Math.sin(axis + spin), -Math.cos(axis + spin)];
  const cross = along[0] * across[1] - along[1] * across[0];
  const share = ((top[0] - armPivot[0]) * across[1] - (top[1] - armPivot[1]) * across[0]) / cross;
  const groundZ = wheelCentre[1] - strut.radius;
  return {
    armPivot,
    armFront: [armPivot[0] - 4, armPivot[1] + 5],
    armRear: [armPivot[0] + 3, armPivot[1] - 5],
    ball: now,
    top,
    low: carried(low),
    tieInner: strut.tieInner,
    tieOuter: carried(strut.tieOuter),
    wheelCentre,
    camberDeg: strut.camber - (spin * 180) / Math.PI,
    groundZ,
    referenceGroundZ: strut.wheelCentre[1] - strut.radius,
    instantCentre: [armPivot[0] + share * along[0], armPivot[1] + share * along[1]],
    loadedRadius: strut.radius,
    ...(strut.tyreWidth ? { tyreWidth: strut.tyreWidth } : {}),
  };
}
