import { buildLinkage, reachOf } from '../../../core/linkage/build-linkage.js';
import { type Corner, hardPoint } from '../../../core/linkage/corner.js';
import type { Linkage } from '../../../core/linkage/linkage.js';
import { motionOf } from '../../../core/linkage/motion.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';

/*
 * What must hold for every corner that can be typed in. Plain checks that throw, so that a test runs them on some hundreds of
 * random corners and the bench on tens of thousands.
 */

type Triple = readonly [number, number, number];
const LENGTH_MM = 1e-9;
const JUST_MM = 1e-6;

function hold(condition: boolean, what: string, ...figures: number[]): void {
  if (!condition) throw new Error(`${what} ${figures.join(' ')}`);
}

const apart = (a: Triple, b: Triple) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
const at = (list: Float64Array, i: number): Triple => [list[3 * i]!, list[3 * i + 1]!, list[3 * i + 2]!];

/** Distance of a point from the line through two others. */
function fromLine(point: Triple, a: Triple, b: Triple): number {
  const d = [b[0] - a[0], b[1] - a[1], b[2] - a[2]] as const;
  const v = [point[0] - a[0], point[1] - a[1], point[2] - a[2]] as const;
  const cross = Math.hypot(d[1] * v[2] - d[2] * v[1], d[2] * v[0] - d[0] * v[2], d[0] * v[1] - d[1] * v[0]);
  return cross / apart(a, b);
}

/** Travels over the whole reach, ends included up to a millionth of a millimetre. */
export function travelsOf(linkage: Linkage, count: number): number[] {
  const { droop, bump } = reachOf(linkage);
  const [low, high] = [droop + JUST_MM, bump - JUST_MM];
  return Array.from({ length: count }, (_, i) => low + ((high - low) * i) / (count - 1));
}

/** Every link keeps its length, the carrier its shape, and a strut's axis runs through its top mount. */
export function lengthsKept(corner: Corner): void {
  const linkage = buildLinkage(corner);
  const travels = travelsOf(linkage, 15);
  const motion = motionOf(linkage, Float64Array.from(travels));
  const point = (key: Parameters<typeof hardPoint>[1]) => hardPoint(corner, key) as Triple;
  const upperBuilt = corner.kind === 'strut' ? corner.strut.top : corner.upperArm.ball;
  travels.forEach((travel, i) => {
    const [ball, upper, outer, wheel] = [motion.ball, motion.upper, motion.tieOuter, motion.wheelCentre].map((l) =>
      at(l, i),
    ) as [Triple, Triple, Triple, Triple];
    const same = (now: number, built: number, what: string) =>
      hold(Math.abs(now - built) < LENGTH_MM, what, travel, now, built);
    same(
      apart(ball, point('lowerArm.front')),
      apart(point('lowerArm.ball'), point('lowerArm.front')),
      'lower arm, front',
    );
    same(apart(ball, point('lowerArm.rear')), apart(point('lowerArm.ball'), point('lowerArm.rear')), 'lower arm, rear');
    same(apart(outer, point('tieRod.inner')), apart(point('tieRod.outer'), point('tieRod.inner')), 'tie rod');
    same(apart(ball, outer), apart(point('lowerArm.ball'), point('tieRod.outer')), 'carrier, ball to tie rod');
    same(apart(ball, wheel), apart(point('lowerArm.ball'), point('wheelCentre')), 'carrier, ball to wheel');
    same(apart(outer, wheel), apart(point('tieRod.outer'), point('wheelCentre')), 'carrier, tie rod to wheel');
    if (corner.kind === 'strut') {
      const low = at(motion.low, i);
      const built = [corner.strut.low, corner.strut.top] as const;
      // Where the axis' two points have come together, the line through them says nothing.
      if (apart(low, upper) > 10) {
        same(
          fromLine(ball, low, upper),
          fromLine(point('lowerArm.ball'), ...built),
          'damper axis, from the ball joint',
        );
        same(
          fromLine(wheel, low, upper),
          fromLine(point('wheelCentre'), ...built),
          'damper axis, from the wheel centre',
        );
      }
      same(apart(low, wheel), apart(corner.strut.low, corner.wheelCentre), 'carrier, damper to wheel');
    } else {
      same(apart(upper, ball), apart(upperBuilt, point('lowerArm.ball')), 'kingpin');
      same(apart(upper, corner.upperArm.front), apart(upperBuilt, corner.upperArm.front), 'upper arm, front');
      same(apart(upper, corner.upperArm.rear), apart(upperBuilt, corner.upperArm.rear), 'upper arm, rear');
      same(apart(upper, wheel), apart(upperBuilt, corner.wheelCentre), 'carrier, upper joint to wheel');
    }
  });
}

/** Travel 0 is the static position, the order of travels does not matter, and reach ends where it says. */
export function travelsHold(corner: Corner): void {
  const linkage = buildLinkage(corner);
  const zero = sweepTravel(linkage, [0]);
  hold(Math.abs(zero.camber[0]! - corner.camber) < 1e-9, 'static camber', zero.camber[0]!, corner.camber);
  hold(Math.abs(zero.toe[0]! - corner.toe) < 1e-9, 'static toe', zero.toe[0]!, corner.toe);
  const travels = travelsOf(linkage, 9);
  const forth = sweepTravel(linkage, travels);
  const back = sweepTravel(linkage, travels.toReversed());
  travels.forEach((travel, i) => {
    hold(forth.reached[i] === 1, 'within reach', travel);
    const j = travels.length - 1 - i;
    // Near the very end a travel decides its angle by a square root: there a millionth of a millimetre is seen.
    const tolerance = i === 0 || j === 0 ? 1e-3 : 1e-9;
    hold(Math.abs(forth.camber[i]! - back.camber[j]!) < tolerance, 'order of travels, camber', travel);
    hold(Math.abs(forth.toe[i]! - back.toe[j]!) < tolerance, 'order of travels, toe', travel);
  });
  const { droop, bump } = reachOf(linkage);
  const beyond = sweepTravel(linkage, [droop - JUST_MM, bump + JUST_MM, Number.NaN, Number.POSITIVE_INFINITY]);
  for (const [name, values] of Object.entries(beyond)) {
    if (name === 'travel') continue;
    for (const value of values as ArrayLike<number> & Iterable<number>) {
      hold(name === 'reached' ? value === 0 : Number.isNaN(value), `beyond reach, ${name}`, value);
    }
  }
}

/** A step of the spin axis that stays this large however near two travels are, is a jump to the other assembly. Radians. */
const JUMP = 5e-4;
const HALVINGS = 26;

/**
 * Neighbouring travels give neighbouring positions right up to the ends: what differs is halved until it is small, or is a jump.
 * Of the spin axis itself, because far out a wheel may turn past 90°, where its projections wrap round.
 */
export function noJumps(corner: Corner): void {
  const linkage = buildLinkage(corner);
  const read = (travel: number): Triple => at(motionOf(linkage, Float64Array.of(travel)).spin, 0);
  const continuous = (from: number, to: number, a: Triple, b: Triple, halvings: number): void => {
    if (apart(a, b) < JUMP) return;
    hold(halvings > 0, 'a jump at', from, to, ...a, ...b);
    const middle = (from + to) / 2;
    const between = read(middle);
    continuous(from, middle, a, between, halvings - 1);
    continuous(middle, to, between, b, halvings - 1);
  };
  const travels = travelsOf(linkage, 60);
  const readings = travels.map(read);
  for (let i = 1; i < travels.length; i++) {
    continuous(travels[i - 1]!, travels[i]!, readings[i - 1]!, readings[i]!, HALVINGS);
  }
}

/** d²(camber)/d(travel)² at ride height, degrees per mm². */
export function curvature(corner: Corner): number {
  const { camberRate } = sweepTravel(buildLinkage(corner), [-5, 5]);
  return (camberRate[1]! - camberRate[0]!) / 10;
}
