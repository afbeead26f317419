import { lowering } from '../../../core/answers/from-source.js';
import type { LoweringAnswer } from '../../../core/answers/lowering.js';
import { type DrivewayMeasurements, HOW_SURE, isAngle } from '../../../core/driveway/driveway.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { StrutCorner } from '../../../core/linkage/corner.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import type { Claim } from '../study-limits.js';
import { type CarKind, normal, ORDINARY, randomCar, randomNumbers } from './random-car.js';

const DEGREES = 180 / Math.PI;
/** 97.5 % quantile of the normal distribution (tables; NIST/SEMATECH e-Handbook 1.3.6.7.1: 1.960). */
const NORMAL = 1.959964;

/** Seeds of the tests and of the bench. The method's doubt was fitted to another one. */
export const SEEDS = [1, 2, 3] as const;

type Exact = { [key in keyof DrivewayMeasurements]: number };

/** mm of bump over which bump steer is read. */
const BUMP_MM = 25;

/** What a person reads off a three-dimensional car in front view, without error. */
export function readOff({ lowerArm, strut, wheelCentre }: StrutCorner): Exact {
  const { front, rear, ball } = lowerArm;
  const { top, low } = strut;
  // Where the transverse plane through the ball joint cuts the pivot axis.
  const share = (ball[0] - rear[0]) / (front[0] - rear[0]);
  const pivotY = rear[1] + share * (front[1] - rear[1]);
  const pivotHeight = rear[2] + share * (front[2] - rear[2]);
  return {
    armLength: Math.hypot(ball[1] - pivotY, ball[2] - pivotHeight),
    pivotHeight,
    ballHeight: ball[2],
    wheelCentreHeight: wheelCentre[2],
    topHeight: top[2],
    damperLean: Math.atan2(low[1] - top[1], top[2] - low[2]) * DEGREES,
    kingpin: Math.atan2(ball[1] - top[1], top[2] - ball[2]) * DEGREES,
  };
}

/** What an alignment sheet, a plumb line and a toe gauge tell besides. */
export function readOffMore(corner: StrutCorner): Exact {
  const { lowerArm, strut, wheelCentre } = corner;
  const [x, , z] = lowerArm.ball;
  const { toe } = sweepTravel(buildLinkage(corner), [0, BUMP_MM]);
  return {
    caster: Math.atan2(x - strut.top[0], strut.top[2] - z) * DEGREES,
    hubOffset: wheelCentre[1] - lowerArm.ball[1],
    bumpSteer: toe[1]! - toe[0]!,
    camber: corner.camber,
  };
}

/** Of a toe gauge, degrees, 95 %: common practice, no source. */
const TOE_GAUGE = 0.1;
/** Of a camber gauge. */
const CAMBER_GAUGE = 0.1;

export type Level = 0 | 1 | 2;

/** Measured with normal errors of the stated ±, each ± drawn among the usual ones where no level is asked for. */
export function withErrors(exact: Exact, random: () => number, level?: Level): DrivewayMeasurements {
  return Object.fromEntries(
    (Object.entries(exact) as [keyof Exact, number][]).map(([key, value]) => {
      const levels = Object.values(HOW_SURE[isAngle(key) ? 'angle' : 'length']);
      const told = levels[level ?? Math.floor(random() * levels.length)]!;
      const plusMinus = key === 'bumpSteer' ? TOE_GAUGE : key === 'camber' ? CAMBER_GAUGE : told;
      return [key, { value: value + (normal(random) * plusMinus) / NORMAL, plusMinus }];
    }),
  );
}

/** With the same ± on all lengths, and another on the angle. */
export const measure = (exact: Exact, lengthMm: number, angleDeg: number): DrivewayMeasurements =>
  Object.fromEntries(
    Object.entries(exact).map(([key, value]) => [
      key,
      { value, plusMinus: isAngle(key as keyof Exact) ? angleDeg : lengthMm },
    ]),
  );

export type Lean = 'damperLean' | 'kingpin';

/** Six measurements; the front-view angle is the lean, or the kingpin inclination in its own field. */
export function six(corner: StrutCorner, lean: Lean = 'damperLean'): Exact {
  const { damperLean, kingpin, ...heights } = readOff(corner);
  return { ...heights, ...(lean === 'kingpin' ? { kingpin: kingpin! } : { damperLean: damperLean! }) };
}

/** What is in the band of six measurements besides them. */
const UNMEASURED = ['method', 'caster', 'bumpSteer', 'ballOffset', 'hubOffset'];

export interface Coverage {
  /** Shares of cars whose true change lies inside the band that was shown, and inside the one of what was measured alone. */
  covered: number;
  asMeasured: number;
  /** The same of the camber rate at the new height. */
  rateCovered: number;
  /** Mean half-width of the band, degrees. */
  plusMinus: number;
  /** Root mean square of error, degrees. */
  error: number;
}

export interface Study {
  seed: number;
  kind?: CarKind | undefined;
  cars: number;
  lean?: Lean;
  /** How sure of everything; drawn for each measurement when left out. */
  level?: Level | undefined;
  /** What is measured besides the six. */
  also?: readonly (keyof DrivewayMeasurements)[];
  /** Lowered by this much, mm, uniform. */
  drops?: readonly [least: number, most: number];
}

/**
 * Random three-dimensional cars, each measured once in the driveway with normal errors of the stated ±, and lowered: how often
 * does the band hold the true camber change?
 */
export function coverage({ seed, cars, kind = ORDINARY, lean, level, also = [], drops = [25, 40] }: Study): Coverage {
  const random = randomNumbers(seed);
  const total: Coverage = { covered: 0, asMeasured: 0, rateCovered: 0, plusMinus: 0, error: 0 };
  for (let n = 0; n < cars; n++) {
    const corner = randomCar(random, kind);
    const drop = drops[0] + (drops[1] - drops[0]) * random();
    const more = readOffMore(corner);
    const exact = { ...six(corner, lean), ...Object.fromEntries(also.map((key) => [key, more[key]!])) };
    const driveway = withErrors(exact, random, level);
    const { change, rateAfter, contributions } = lowering({ source: { kind: 'driveway', driveway }, drop });
    const { camber, camberRate } = sweepTravel(buildLinkage(corner), [0, drop]);
    const error = Math.abs(change.value - (camber[1]! - camber[0]!));
    const plusMinus = change.plusMinus!;
    if (error <= plusMinus) total.covered += 1 / cars;
    const unmeasured = UNMEASURED.filter((id) => !(id in driveway)).map((id) => shareOf(contributions, id));
    if (error <= plusMinus * Math.sqrt(1 - unmeasured.reduce((a, b) => a + b))) total.asMeasured += 1 / cars;
    if (Math.abs(rateAfter.value - camberRate[1]!) <= rateAfter.plusMinus!) total.rateCovered += 1 / cars;
    total.plusMinus += plusMinus / cars;
    total.error += error ** 2 / cars;
  }
  return { ...total, error: Math.sqrt(total.error) };
}

/** Of variance. */
export const shareOf = (contributions: LoweringAnswer['contributions'], id: string): number =>
  contributions.find((contribution) => contribution.id === id)?.share ?? 0;

/** Of a study: the share of true changes that the band holds, with the limits that are claimed for all cars of such a study. */
export const heldClaim = ({ covered }: Pick<Coverage, 'covered'>, draws: number, [least, most]: Limits): Claim => ({
  what: 'covered',
  share: covered,
  draws,
  least,
  most,
});

export type Limits = readonly [least: number, most: number];
export const WITHIN: Limits = [0.93, 0.97];
/** Where everything is measured with care, what is not measured is most of the band, and that is assumed to be wide. */
export const WITH_CARE: Limits = [0.93, 0.98];
/** Of cars with much caster whose bump steer is as small as that of others: what is assumed of it is wide. */
export const AT_LEAST: Limits = [0.93, 0.99];
/** Of the camber rate at the new height. */
export const RATE_LEAST = 0.91;
/** Of the band that holds what was measured and nothing else. */
export const AS_MEASURED_MOST = { mixed: 0.9, careful: 0.7 };
/** Where nobody gave what is beyond the assumptions. */
export const BEYOND_MOST = { caster: 0.9, bumpSteer: 0.75 };
