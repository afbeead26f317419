import { EXAMPLE_CORNER } from '../../core/document/example-corner.js';
import { independentAxle } from '../reference/independent-axle.js';
import { type IndependentChange, withChange } from '../reference/independent-joint.js';
import { figuresAt, secantRoot, standingWith, strutToPlane } from '../reference/independent-static-camber.js';
import type { IndependentCorner, Point } from '../reference/independent-strut.js';
import { DROP, ROLL } from './worked-turn.js';

/*
 * The worked numbers of the page on ways to add camber, by test/reference/independent-static-camber.ts and independent-axle.ts, which
 * share nothing with core/; only the example's hard points come from there.
 */

const stock: IndependentCorner = EXAMPLE_CORNER;
/** Static camber that is to be added, degrees. */
export const BY = -1;
/** By how much the car is lowered for comparison, mm. */
export const LOWERED = 40;
/** Bump over which camber gain, and either way over which bump steer, is told, mm. */
export const OVER = 40;
/** Angles of the steered wheel on the ground, degrees. */
export const STEERS = [15, 30] as const;

/** On the damper's line, 60 mm over the wheel centre, from it: whole mm. Common practice, no source. */
export const PIVOT_BOLT: Point = (() => {
  const { strut, wheelCentre } = stock;
  const share = (wheelCentre[2] + 60 - strut.low[2]) / (strut.top[2] - strut.low[2]);
  return [0, 1, 2].map((i) =>
    Math.round(strut.low[i]! + share * (strut.top[i]! - strut.low[i]!) - wheelCentre[i]!),
  ) as unknown as Point;
})();

/** What each way does with an amount, mm or degrees, and an amount near what a degree takes. */
const CHANGES = {
  topMount: { of: (mm) => ({ topBy: [0, mm, 0] }), near: -12 },
  knuckleBolts: { of: (degrees) => ({ knuckleTurnedBy: { degrees, bolt: PIVOT_BOLT } }), near: 1.4 },
  knuckle: { of: (degrees) => ({ spinCamberBy: degrees }), near: -1 },
  longerArm: { of: (mm) => ({ armLongerBy: mm }), near: 12 },
  ballJoint: { of: (mm) => ({ ballBy: [0, mm, 0] }), near: -12 },
} as const satisfies Record<string, { of: (amount: number) => IndependentChange; near: number }>;
export type Way = keyof typeof CHANGES;
export const WAYS = Object.keys(CHANGES) as Way[];

const kept = new Map<string, unknown>();
/** Worked out once: a way's figures take a second. */
function once<T>(name: string, work: () => T): T {
  if (!kept.has(name)) kept.set(name, work());
  return kept.get(name) as T;
}

/** The example, `drop` lower, toe set again. */
const asItIs = (drop = 0): IndependentCorner => once(`as ${drop}`, () => standingWith(stock, {}, drop));

/** How much of a way adds a degree, mm or degrees. */
export const amountOf = (way: Way, drop = 0): number =>
  once(`amount ${way} ${drop}`, () => {
    const { of, near } = CHANGES[way];
    const miss = (amount: number) => standingWith(stock, of(amount), drop).camber - asItIs(drop).camber - BY;
    return secantRoot(miss, 0, near);
  });

/** The corner with so much of it on, toe set again. */
export const cornerWith = (way: Way, drop = 0): IndependentCorner =>
  once(`corner ${way} ${drop}`, () => standingWith(stock, CHANGES[way].of(amountOf(way, drop)), drop));

const measured = (name: string, corner: () => IndependentCorner) =>
  once(`figures ${name}`, () => figuresAt(corner(), OVER, [-OVER, OVER]));
type Figures = ReturnType<typeof figuresAt>;

export const stockFigures = (): Figures => measured('stock', () => asItIs());

const less = (after: Figures, before: Figures) =>
  Object.fromEntries(
    Object.entries(after).map(([name, value]) => [name, value - before[name as keyof Figures]]),
  ) as unknown as Figures;

/** By how much each figure is more than of the car as it is, `drop` lower. */
export const changeOf = (way: Way, drop = 0): Figures =>
  less(
    measured(`${way} ${drop}`, () => cornerWith(way, drop)),
    measured(`stock ${drop}`, () => asItIs(drop)),
  );
export const loweredChange = (): Figures =>
  less(
    measured('lowered', () => asItIs(LOWERED)),
    stockFigures(),
  );

/** Toe-in before it is set again, degrees. */
export const toeBefore = (way: Way): number =>
  withChange(stock, { ...CHANGES[way].of(amountOf(way)), toe: 'kept' }).toe;

/** By how much longer the tie rod is then set, mm. */
export function rodChange(way: Way): number {
  const length = ({ tieRod }: IndependentCorner) =>
    Math.hypot(...[0, 1, 2].map((i) => tieRod.outer[i]! - tieRod.inner[i]!));
  return length(cornerWith(way)) - length(stock);
}

/** By how much further the strut is from the wheel's middle plane beside the tyre's edge, mm. */
export const gapChange = (way: Way): number => strutToPlane(cornerWith(way)) - strutToPlane(asItIs());

/** What arrives on the road of it, on the outer wheel at `ROLL`, steering straight, degrees. */
export const onRoad = (way: Way): number => {
  const leans = (corner: IndependentCorner) => independentAxle(corner, 0, ROLL, 0).inclinationRight;
  return once(`road ${way}`, () => leans(cornerWith(way)) - leans(asItIs()));
};

/** What a degree of kingpin inclination leans a wheel out when it is steered, small angles: 1° × (1 − cos steer). */
const liftOf = (steer: number) => 1 - Math.cos((steer * Math.PI) / 180);

/** By data-name. */
export function workedWays(): Record<string, { unit: string; value: () => number }> {
  const degrees = (value: () => number) => ({ unit: '°', value });
  const mm = (value: () => number) => ({ unit: 'mm', value });
  const figures = (name: string, of: () => Figures) => ({
    [`ways.${name}-kingpin`]: degrees(() => of().kingpin),
    [`ways.${name}-caster`]: degrees(() => of().caster),
    [`ways.${name}-scrub`]: mm(() => of().scrubRadius),
    [`ways.${name}-half-track`]: mm(() => of().halfTrack),
    [`ways.${name}-gain`]: degrees(() => of().camberChange),
    [`ways.${name}-bump-steer`]: degrees(() => of().bumpSteer),
    [`ways.${name}-roll-centre`]: mm(() => of().rollCentreHeight),
    [`ways.${name}-camber`]: degrees(() => of().camber),
    [`ways.${name}-30`]: degrees(() => of().inclinationAt30),
    [`ways.${name}-inner-30`]: degrees(() => of().innerAt30),
  });
  const ofWay = (way: Way) => ({
    ...figures(way, () => changeOf(way)),
    [`ways.${way}-amount`]: {
      unit: way === 'knuckleBolts' || way === 'knuckle' ? '°' : 'mm',
      value: () => amountOf(way),
    },
    [`ways.${way}-toe-before`]: degrees(() => toeBefore(way)),
    [`ways.${way}-rod`]: mm(() => rodChange(way)),
    [`ways.${way}-gap`]: mm(() => gapChange(way)),
    [`ways.${way}-road`]: degrees(() => onRoad(way)),
    [`ways.${way}-low-bump-steer`]: degrees(() => changeOf(way, DROP).bumpSteer),
  });
  return {
    ...figures('stock', stockFigures),
    ...figures('lowered', loweredChange),
    ...Object.assign({}, ...WAYS.map(ofWay)),
    'ways.lift-15': degrees(() => liftOf(15)),
    'ways.lift-30': degrees(() => liftOf(30)),
  };
}
