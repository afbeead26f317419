import type { StrutCorner, StrutPointKey, Vector3 } from '../linkage/corner.js';
import { DEG } from '../math/angle.js';
import { type AssumableKey, BUMP_STEER_OVER_MM, type Driveway, type DrivewayKey } from './driveway.js';

/** Half of the pivots' distance, and how far behind the arm the tie rod lies, mm. Neither changes anything. */
export const HALF_BASE_MM = 130;
/** Where each point of the strut is; `inner`: the tie rod's inner end, but for the HALF_BASE_MM that it lies behind. */
type Points = Record<'pivot' | 'inner' | 'ball' | 'top' | 'low' | 'wheel', Vector3>;

/**
 * The strut that was measured, as hard points of a left corner: plane in front view, leaned back in side view by its caster τ. The
 * arm's pivot axis is parallel to x, the ball joint below the wheel's centre (x = 0), and the damper's axis parallel to the steering
 * axis in side view. The tie rod is a copy of the arm behind it, but for the height of its inner end, which makes the bump steer
 * what it is. With λ the damper's lean, o the ball joint's offset, H the top mount's height over the ball joint B, and κ the kingpin
 * inclination:
 *
 *     pivot   y_B − √(L² − (z_B − z_P)²)                    low    foot of B on the damper's axis: B + o (sin λ tan τ, −cos λ, −sin λ)
 *     top     −H tan τ, y_B − H tan λ − o/cos λ             λ from κ: λ = κ − asin(o cos κ / H), from H tan κ = H tan λ + o/cos λ
 *     inner   beside the pivot, at rodHeight
 *
 * Toe is 0, and so is camber where it was not measured. The wheel's own lean is left out of the track (some mm).
 */
export function drivewayCorner(driveway: Driveway): StrutCorner {
  const { pivot, inner, ball, top, low, wheel } = pointsOf(driveway);
  const at = ([x, y, z]: Vector3, ahead: number): Vector3 => [x + ahead, y, z];
  return {
    kind: 'strut',
    wheelCentre: wheel,
    loadedRadius: wheel[2],
    camber: driveway.camber?.value ?? 0,
    toe: 0,
    lowerArm: { front: at(pivot, HALF_BASE_MM), rear: at(pivot, -HALF_BASE_MM), ball },
    strut: { top, low },
    tieRod: { inner: at(inner, -HALF_BASE_MM), outer: at(ball, -HALF_BASE_MM) },
  };
}

function numbers({ taken, kingpin }: Driveway) {
  const { armLength, pivotHeight, ballHeight, topHeight, ballOffset, damperLean } = taken;
  const { hubOffset, caster, bumpSteer } = taken;
  const rise = ballHeight.value - pivotHeight.value;
  const length = armLength.value;
  const height = topHeight.value - ballHeight.value;
  const offset = ballOffset.value;
  const inclination = (kingpin?.value ?? 0) * DEG;
  const sine = (offset * Math.cos(inclination)) / height;
  const lean = kingpin ? inclination - Math.asin(sine) : damperLean.value * DEG;
  return {
    rise,
    length,
    reach: Math.sqrt(length * length - rise * rise),
    height,
    offset,
    inclination,
    sine,
    cos: Math.cos(lean),
    sin: Math.sin(lean),
    back: Math.tan(caster.value * DEG),
    toe: (bumpSteer.value * DEG) / BUMP_STEER_OVER_MM,
    hub: hubOffset.value,
  };
}

/**
 * How far over the ball joint the rod's inner end lies, mm, so that the wheel toes in by `toe` radians a mm of travel where it stands.
 *
 * Per mm of the ball joint's rise its velocity is (0, −m, 1), m the arm's rise over its reach, and the carrier turns by ω about it: with
 * −ω_z = k, and the point of the damper's axis at the top mount moving along that axis, two linear equations give ω_x and ω_y. The
 * wheel's centre rises by 1 + ω_x · hub. The rod lies across the velocity of its outer end, HALF_BASE_MM behind the ball joint.
 */
function rodHeight({ rise, reach, height, offset, cos, sin, back, toe, hub }: ReturnType<typeof numbers>): number {
  const across = (height * sin + offset) / cos;
  const lean = sin / cos / (1 + back * back);
  const arm = rise / reach;
  const whole = height + lean * across;
  const turn = (lean - arm) / whole;
  const steer = (toe * (1 + turn * hub)) / (1 - toe * back * hub);
  const pitch = (steer * across) / height - (back * (1 + (arm * across) / height)) / whole / (1 + back * back);
  return (reach * (HALF_BASE_MM * steer - arm)) / (1 + HALF_BASE_MM * pitch);
}

function pointsOf(driveway: Driveway): Points {
  const { taken } = driveway;
  const all = numbers(driveway);
  const { reach, height, offset, cos, sin, back } = all;
  const wheel = taken.track.value / 2;
  const y = wheel - taken.hubOffset.value;
  const z = taken.ballHeight.value;
  return {
    pivot: [0, y - reach, taken.pivotHeight.value],
    inner: [0, y - reach, z + rodHeight(all)],
    ball: [0, y, z],
    top: [-height * back, y - (height * sin + offset) / cos, taken.topHeight.value],
    low: [offset * sin * back, y - offset * cos, z - offset * sin],
    wheel: [0, wheel, taken.wheelCentreHeight.value],
  };
}

/** A point's displacement per mm or degree of a measurement. */
export type PointDerivatives = Partial<Record<StrutPointKey, Vector3>>;

/**
 * Derivatives of the points of `drivewayCorner` with respect to each measurement it reads, all others held: mm per mm, mm per degree
 * for an angle. Static camber moves no point. Exact, but for the height of the rod's inner end: a central difference.
 */
export function drivewayDerivatives(driveway: Driveway): Partial<Record<DrivewayKey, PointDerivatives>> {
  const { rise, length, reach, height, offset, inclination, sine, cos, sin, back } = numbers(driveway);
  // Per radian of the lean.
  const topTurn = -(height + offset * sin) / (cos * cos);
  const moved = (by: Partial<Points>, lean = 0): PointDerivatives => {
    const at = (name: keyof Points): Vector3 => by[name] ?? [0, 0, 0];
    const [topX, topY, topZ] = at('top');
    const [lowX, lowY, lowZ] = at('low');
    const [, pivotY] = at('pivot');
    return {
      'lowerArm.front': at('pivot'),
      'lowerArm.rear': at('pivot'),
      'tieRod.inner': [0, pivotY, at('ball')[2]],
      'lowerArm.ball': at('ball'),
      'tieRod.outer': at('ball'),
      'strut.top': [topX, topY + lean * topTurn, topZ],
      'strut.low': [lowX + lean * offset * cos * back, lowY + lean * offset * sin, lowZ - lean * offset * cos],
      wheelCentre: at('wheel'),
    };
  };
  // How the lean follows when the kingpin inclination is what was read.
  const { kingpin } = driveway;
  const root = height * Math.sqrt(1 - sine * sine);
  const leanOfHeight = kingpin ? sine / root : 0;
  const leanOfOffset = kingpin ? -Math.cos(inclination) / root : 0;
  const aside: Vector3 = [0, -1, 0];
  const half: Vector3 = [0, 0.5, 0];
  const up: Vector3 = [0, 0, 1];
  const along = sin / cos;
  const upright = DEG * (1 + back * back);
  const derivatives: Record<Exclude<AssumableKey, 'damperLean'>, PointDerivatives> = {
    armLength: moved({ pivot: [0, -length / reach, 0] }),
    pivotHeight: moved({ pivot: [0, -rise / reach, 1] }),
    ballHeight: moved({ pivot: [0, rise / reach, 0], ball: up, top: [back, along, 0], low: up }, -leanOfHeight),
    wheelCentreHeight: moved({ wheel: up }),
    topHeight: moved({ top: [-back, -along, 1] }, leanOfHeight),
    ballOffset: moved({ top: [0, -1 / cos, 0], low: [sin * back, -cos, -sin] }, leanOfOffset),
    hubOffset: moved({ pivot: aside, ball: aside, top: aside, low: aside }),
    track: moved({ pivot: half, ball: half, top: half, low: half, wheel: half }),
    caster: moved({ top: [-height * upright, 0, 0], low: [offset * sin * upright, 0, 0] }),
    bumpSteer: moved({}),
  };
  const found: Partial<Record<DrivewayKey, PointDerivatives>> = kingpin
    ? { ...derivatives, kingpin: moved({}, DEG * (1 + (offset * Math.sin(inclination)) / root)) }
    : { ...derivatives, damperLean: moved({}, DEG) };
  for (const key of Object.keys(found) as DrivewayKey[]) {
    const [x, y, z] = found[key]!['tieRod.inner']!;
    found[key] = { ...found[key], 'tieRod.inner': [x, y, z + rodHeightSlope(driveway, key)] };
  }
  return found;
}

/** Over which the rod's height is differenced, mm or degrees. */
const DIFFERENCE = 1e-3;

function rodHeightSlope({ taken, kingpin, ...rest }: Driveway, key: DrivewayKey): number {
  const [down, up] = [-DIFFERENCE, DIFFERENCE].map((by) => {
    const shifted = (name: DrivewayKey, value: number) => (name === key ? value + by : value);
    const all = Object.entries(taken).map(([name, one]) => [
      name,
      { ...one, value: shifted(name as AssumableKey, one.value) },
    ]);
    return rodHeight(
      numbers({
        ...rest,
        taken: Object.fromEntries(all) as Driveway['taken'],
        ...(kingpin && { kingpin: { ...kingpin, value: shifted('kingpin', kingpin.value) } }),
      }),
    );
  });
  return (up! - down!) / (2 * DIFFERENCE);
}
