import { type Corner, type HardPointKey, hardPoint, hardPointKeys } from '../linkage/corner.js';
import { DEG } from '../math/angle.js';
import { add, length, scale, subtract, type Vec } from '../math/vector.js';
import type { Quantity } from '../quantity/quantities.js';

/** What about a corner is hardly ever seen on a road or club car. */
export type QueryCode =
  | 'track'
  /** Of a point above the ground. */
  | 'height'
  /** Between the wheel centre's height and the loaded radius, which are one length measured twice. */
  | 'radius-differs'
  /** Of an arm, from its pivot axis straight outboard to its ball joint, or of the tie rod. */
  | 'length'
  /** Of the same in front view, positive: rising to the wheel. */
  | 'slope'
  /** Of a strut in front view, positive: top inboard. */
  | 'damper-lean'
  | 'caster'
  | 'kingpin'
  | 'scrub-radius';

/** A figure to look at again. Not an error: the corner is answered all the same. */
export interface Query {
  code: QueryCode;
  /** The hard point or number most likely wrong. */
  path: HardPointKey | 'loadedRadius';
  /** mm or degrees. */
  value: number;
  quantity: Extract<Quantity, 'coordinate' | 'linkAngle'>;
  /** The end of the usual range that it lies beyond. */
  limit: number;
}

const MM = 'coordinate';
const DEGREES = 'linkAngle';
type Limits = readonly [least: number, most: number, quantity: Query['quantity']];

/** Wide enough that no sensible road or club car lies outside. Common practice, no source. */
const LIMITS: Record<QueryCode, Limits> = {
  track: [900, 2100, MM],
  // Of the wheel centre; of other points in `POINTS`.
  height: [220, 450, MM],
  'radius-differs': [0, 40, MM],
  length: [120, 700, MM],
  slope: [-25, 25, DEGREES],
  'damper-lean': [-3, 30, DEGREES],
  caster: [-10, 20, DEGREES],
  kingpin: [-2, 25, DEGREES],
  'scrub-radius': [-120, 120, MM],
};

/**
 * Where a point usually is from the wheel centre, mm, which tells which of several points is off (fore and aft: at the wheel
 * centre); then the limits of its height as shares of the wheel centre's. Common practice, no source.
 */
type Usual = readonly [sideways: number, up: number, lowest?: number, highest?: number];
const PIVOT: Usual = [-380, -110, 0.25, 1.3];
const UPPER_PIVOT: Usual = [-290, 170];
const POINTS: Partial<Record<HardPointKey, Usual>> = {
  'lowerArm.front': PIVOT,
  'lowerArm.rear': PIVOT,
  'lowerArm.ball': [-45, -125, 1 / 3, 0.9],
  'upperArm.front': UPPER_PIVOT,
  'upperArm.rear': UPPER_PIVOT,
  'upperArm.ball': [-60, 190, 1, 4],
  'strut.top': [-160, 520, 1, 4],
  'strut.low': [-110, 160],
  'tieRod.inner': [-390, -40],
  'tieRod.outer': [-80, -50],
};
/** Height of a usual wheel centre, mm. */
const USUAL_RADIUS_MM = 310;
/** A point is told to be off when it is so by this much more than every other, mm. */
const CLEARLY_MM = 40;

/** Of a pivot axis along the car, mm. */
const LEAST_RUN_MM = 50;

const X = 0;
const Y = 1;
const Z = 2;

/** Angle of rise over run, degrees. */
const angle = (rise: number, run: number) => Math.atan2(rise, run) / DEG;

/**
 * What in a corner hints at a slip of the keys although its links join: at most one query a point. A point out of place comes
 * before what follows from it, and what follows from it is not asked about again.
 *
 * @param corner as `readCorner` gives it
 */
export function unusualOf(corner: Corner): Query[] {
  const { wheelCentre, loadedRadius } = corner;
  const radius = wheelCentre[Z];
  const queries: Query[] = [];
  const at = (key: HardPointKey) => hardPoint(corner, key)!;
  const isNamed = (key: string) => queries.some(({ path }) => path === key);
  const ask = (code: QueryCode, value: number, path: Query['path'], [least, most, quantity] = LIMITS[code]) => {
    if ((value < least || value > most) && !isNamed(path)) {
      queries.push({ code, path, value, quantity, limit: value < least ? least : most });
    }
  };
  /** Asks about what several points make together, at the one that is clearly most out of place along an axis, else the first. */
  const askOf = (code: QueryCode, value: number, axis: number, keys: HardPointKey[]) => {
    if (keys.some(isNamed)) return;
    const off = (key: HardPointKey) => Math.abs(at(key)[axis]! - wheelCentre[axis]! - (POINTS[key]?.[axis - 1] ?? 0));
    const path = keys.find((key) => keys.every((other) => other === key || off(key) > off(other) + CLEARLY_MM));
    ask(code, value, path ?? keys[0]!);
  };

  ask('track', 2 * wheelCentre[Y], 'wheelCentre');
  ask('height', radius, 'wheelCentre');
  const isRadiusOff = Math.abs(loadedRadius - USUAL_RADIUS_MM) > Math.abs(radius - USUAL_RADIUS_MM);
  ask('radius-differs', Math.abs(radius - loadedRadius), isRadiusOff ? 'loadedRadius' : 'wheelCentre');
  // Heights are judged by the wheel centre's.
  if (!isNamed('wheelCentre')) {
    for (const key of hardPointKeys(corner)) {
      const [, , lowest = 0, highest = 1 / 0] = POINTS[key] ?? [0, 0];
      ask('height', at(key)[Z], key, [lowest * radius, highest * radius, MM]);
    }
  }
  const link = (...keys: HardPointKey[]) => {
    const [outer, inner, rear = inner] = keys.map(at) as [Vec, Vec, Vec?];
    const [run] = subtract(rear, inner);
    // An axis across the car has no place straight inboard of the ball joint.
    const share = Math.abs(run) < LEAST_RUN_MM ? 0.5 : (outer[X] - inner[X]) / run;
    const vector = subtract(outer, add(inner, scale(subtract(rear, inner), share)));
    askOf('length', length(vector), Y, keys);
    askOf('slope', angle(vector[Z], vector[Y]), Z, keys);
  };
  link('lowerArm.ball', 'lowerArm.front', 'lowerArm.rear');
  let upper: HardPointKey = 'strut.top';
  if (corner.kind === 'strut') {
    const [, y, z] = subtract(corner.strut.low, corner.strut.top);
    askOf('damper-lean', angle(y, -z), Y, [upper, 'strut.low']);
  } else {
    upper = 'upperArm.ball';
    link(upper, 'upperArm.front', 'upperArm.rear');
  }
  link('tieRod.outer', 'tieRod.inner');

  const ball = at('lowerArm.ball');
  const [x, y, z] = subtract(at(upper), ball);
  const joints: HardPointKey[] = [upper, 'lowerArm.ball'];
  askOf('caster', angle(-x, z), X, joints);
  askOf('kingpin', angle(-y, z), Y, joints);
  // The tyre touches the ground below the wheel centre, but for camber; the steering axis meets it at z = 0.
  const contact = wheelCentre[Y] - loadedRadius * Math.sin(corner.camber * DEG);
  askOf('scrub-radius', contact - ball[Y] + (ball[Z] * y) / z, Y, ['wheelCentre', ...joints]);
  return queries;
}
