import { type IndependentChange, withChange } from './independent-joint.js';
import { type IndependentCorner, type IndependentPose, independentStrut, independentStrutSweep, type Point } from './independent-strut.js';

/*
 * A second computation of what a way of adding static camber changes, from the solvers of independent-strut.ts and independent-joint.ts
 * (generic Newton on the constraints). Nothing is imported from core/: the amount by the secant rule, the rack of a ground steer by
 * walking it and bisection, the roll centre by central differences of the contact point, bump steer by sweeping every half millimetre and a
 * parabola through the three readings about each extreme.
 */

const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Point, b: Point) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const DEGREES = 180 / Math.PI;

/** The corner as its points lie at a travel, mm. */
export function cornerAtTravel(corner: IndependentCorner, travel: number): IndependentCorner {
  const [pose] = independentStrutSweep(corner, [travel]);
  return {
    ...corner,
    wheelCentre: pose!.wheelCentre,
    camber: pose!.camber,
    toe: pose!.toe,
    lowerArm: { ...corner.lowerArm, ball: pose!.ball },
    strut: { ...corner.strut, low: pose!.low },
    tieRod: { ...corner.tieRod, outer: pose!.tieOuter },
  };
}

/** The corner with something changed, lowered by a drop, toe set there to that of the corner as it is. */
export const standingWith = (corner: IndependentCorner, change: IndependentChange, drop: number): IndependentCorner =>
  withChange(cornerAtTravel(withChange(corner, change), drop), { toe: corner.toe });

/** The root of a smooth function by the secant rule from two places. */
export function secantRoot(miss: (x: number) => number, from: number, to: number): number {
  let [a, b] = [from, to];
  let [missA, missB] = [miss(a), miss(b)];
  for (let i = 0; i < 40 && Math.abs(missB) > 1e-10; i++) {
    const next = b - (missB * (b - a)) / (missB - missA);
    [a, missA] = [b, missB];
    b = next;
    missB = miss(b);
  }
  return b;
}

/** Inclination of the left wheel steered to so much toe-in by the rack, the wheel centre as high as it stands; degrees. */
export function inclinationWithToe(corner: IndependentCorner, toe: number): number {
  const strut = independentStrut(corner);
  const at = (rack: number): IndependentPose | undefined => (strut.solve(0, rack) ? strut.pose() : undefined);
  const rest = at(0)!.toe;
  const way = Math.sign(toe - rest);
  const isBefore = (pose: IndependentPose) => (pose.toe - toe) * way < 0;
  let step = Math.sign(at(1)!.toe - rest) * way;
  let low = 0;
  // Near the last angle a little rack turns the wheel a long way: there the steps are short.
  for (let next = at(step); !next || isBefore(next); next = at(low + step)) {
    if (next) low += step;
    else step /= 2;
    if (Math.abs(step) < 1e-4 || Math.abs(low) > 200) throw new RangeError(`No rack gives ${toe} degrees of toe.`);
  }
  let high = low + step;
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (isBefore(at(middle)!)) low = middle;
    else high = middle;
  }
  return at(high)!.inclination;
}

/** Everything of a corner where its points lie, mm and degrees, by the names of the answer. */
export function figuresAt(corner: IndependentCorner, over: number, [low, high]: readonly [number, number]) {
  const [here, bump] = independentStrutSweep(corner, [0, over]);
  const [before, after] = independentStrutSweep(corner, [-0.02, 0.02]);
  const steps = Array.from({ length: 2 * (high - low) + 1 }, (_, i) => low + i / 2);
  const out = independentStrutSweep(corner, steps.filter((t) => t >= 0));
  const down = independentStrutSweep(corner, steps.filter((t) => t < 0).reverse());
  const toes = [...down.reverse(), ...out].map(({ toe }) => toe);
  const { contact, ball } = here!;
  const axis = minus(corner.strut.top, ball);
  const foot = (contact[2] - ball[2]) / axis[2];
  const slope = (after!.contact[1] - before!.contact[1]) / (after!.contact[2] - before!.contact[2]);
  return {
    camber: here!.camber,
    kingpin: here!.kingpin,
    caster: here!.caster,
    scrubRadius: contact[1] - (ball[1] + foot * axis[1]),
    casterTrail: ball[0] + foot * axis[0] - contact[0],
    halfTrack: contact[1],
    rollCentreHeight: contact[1] * slope,
    camberChange: bump!.camber - here!.camber,
    bumpSteer: highest(toes) + highest(toes.map((toe) => -toe)),
    inclinationAt15: inclinationWithToe(corner, 15),
    inclinationAt30: inclinationWithToe(corner, 30),
    innerAt15: inclinationWithToe(corner, -15),
    innerAt30: inclinationWithToe(corner, -30),
  };
}

/** Of evenly spaced values, the top of the parabola through the highest and its neighbours among it. */
function highest(values: readonly number[]): number {
  const at = values.indexOf(Math.max(...values));
  const [before, top, after] = [values[at - 1], values[at]!, values[at + 1]];
  if (before === undefined || after === undefined) return top;
  const bend = before - 2 * top + after;
  return bend === 0 ? top : top - (after - before) ** 2 / (8 * bend);
}

const damperLength = ({ strut }: IndependentCorner) => Math.hypot(...minus(strut.top, strut.low));

/** How much further into bump until the damper is as short as the other's, mm. */
export function bumpUntilAsShort(corner: IndependentCorner, other: IndependentCorner): number {
  const miss = (travel: number) => damperLength(cornerAtTravel(corner, travel)) - damperLength(other);
  return secantRoot(miss, 0, 1);
}

/** From the damper's line to the wheel's middle plane where the line passes the loaded radius from the wheel centre, mm. */
export function strutToPlane({ strut, wheelCentre, loadedRadius, camber, toe }: IndependentCorner): number {
  const along = minus(strut.top, strut.low);
  const place = (share: number): Point => [0, 1, 2].map((i) => strut.low[i]! + share * along[i]!) as unknown as Point;
  const away = (share: number) => Math.hypot(...minus(place(share), wheelCentre)) - loadedRadius;
  // From the nearest point of the line outward.
  let low = dot(minus(wheelCentre, strut.low), along) / dot(along, along);
  let high = low + 3;
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2;
    if (away(middle) < 0) low = middle;
    else high = middle;
  }
  const spin: Point = [Math.tan(toe / DEGREES), 1, -Math.tan(camber / DEGREES)];
  return dot(minus(wheelCentre, place(low)), spin) / Math.hypot(...spin);
}
