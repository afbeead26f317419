import { doubtOf, gapOf } from '../../../core/answers/clearance-gaps.js';
import { envelopeOf } from '../../../core/answers/envelope-of.js';
import { lowering, wheelMotion } from '../../../core/answers/from-source.js';
import type { CamberSource } from '../../../core/curve-sources/source.js';
import { EXAMPLE_FITMENT } from '../../../core/document/example-fitment.js';
import type { DrivewayMeasurements } from '../../../core/driveway/driveway.js';
import {
  type Corner,
  hardPoint,
  STRUT_POINT_KEYS,
  type StrutCorner,
  withHardPoint,
} from '../../../core/linkage/corner.js';
import { compareWheels } from '../../../core/wheel/compare-wheels.js';
import { type Envelope, Poses } from '../../../core/wheel/gaps.js';
import type { ClockPosition, FixedTo, Place } from '../../../core/wheel/place.js';
import { type Placed, placed } from '../../../core/wheel/placed.js';
import { aheadOf, type WheelMotion } from '../../../core/wheel/wheel-motion.js';
import type { Claim } from '../study-limits.js';
import { type Level, readOffMore, six, withErrors } from './coverage.js';
import { type CarKind, normal, ORDINARY, randomCar, randomNumbers } from './random-car.js';

/** 97.5 % quantile of the normal distribution (tables; NIST/SEMATECH e-Handbook 1.3.6.7.1: 1.960). */
const NORMAL = 1.959964;

/** What a tyre meets in an arch, seen square from outside a left wheel: forward is 9 o'clock. Common practice, no source. */
const SPOTS = {
  lip: { clock: [10, 14], distance: [300, 420], out: [-15, 40], from: 'outer', fixedTo: 'body' },
  'liner front': { clock: [8.2, 10], distance: [290, 420], out: [-170, 10], from: 'outer', fixedTo: 'body' },
  'liner rear': { clock: [2, 3.8], distance: [290, 420], out: [-170, 10], from: 'outer', fixedTo: 'body' },
  'rail front': { clock: [8.2, 10], distance: [150, 310], out: [-110, -10], from: 'inner', fixedTo: 'body' },
  'rail rear': { clock: [2, 3.8], distance: [150, 310], out: [-110, -10], from: 'inner', fixedTo: 'body' },
  perch: { clock: [11, 13], distance: [240, 310], out: [-40, -5], from: 'inner', fixedTo: 'carrier' },
} as const satisfies Record<
  string,
  {
    clock: readonly [number, number];
    distance: readonly [number, number];
    out: readonly [number, number];
    from: 'outer' | 'inner';
    fixedTo: FixedTo;
  }
>;
export type SpotKind = keyof typeof SPOTS;
export const SPOT_KINDS = Object.keys(SPOTS) as SpotKind[];

/** How far it is steered when a gap is looked at, as a share of full lock; `worst`: the tightest of the whole answer. */
export const STEERED = ['ahead', 'half', 'lock', 'worst'] as const;
export type Steered = (typeof STEERED)[number];

export interface GapRow {
  spot: SpotKind;
  steered: Steered;
  travel: number;
  truth: number;
  gap: number;
  plusMinus: number;
}

export interface GapStudy {
  seed: number;
  cars: number;
  kind?: CarKind | undefined;
  /** Of each measure of a place, 95 %, mm. */
  placePlusMinus?: number;
  /** How sure of everything in the driveway; drawn for each measurement when left out. */
  level?: Level | undefined;
  /** What was measured besides the six and static camber. */
  also?: readonly (keyof DrivewayMeasurements)[];
  /** Static camber was not read. */
  withoutCamber?: boolean;
  /** What the motion is made from; default the driveway. Hard points are each ±3 mm, a curve is that of camber without an error. */
  by?: 'driveway' | 'points' | 'curve';
}

/** From full droop to solid, mm from reference height. */
const DROOP = -45;
const BUMP = 65;
const TRAVELS = [-45, -20, 0, 25, 50, 65];
/** Gaps that somebody would ask about, mm, the tightest of the whole travel. */
const ASKED: readonly [number, number] = [-8, 30];

const between = (random: () => number, [least, most]: readonly [number, number]) => least + (most - least) * random();

/** Of each coordinate of a hard point, 95 %, mm. */
const POINT_PLUS_MINUS = 3;

function withPointErrors(corner: StrutCorner, random: () => number): Corner {
  let read: Corner = { ...corner, plusMinus: { other: POINT_PLUS_MINUS } };
  for (const key of STRUT_POINT_KEYS) {
    const [x, y, z] = hardPoint(corner, key).map((at) => at + (normal(random) * POINT_PLUS_MINUS) / NORMAL);
    read = withHardPoint(read, key, [x!, y!, z!]);
  }
  return read;
}

/** The tightest of a grid of travels and steers, and where: two answers that are compared are looked at in the same poses. */
function tightest(moved: { poses: Poses; envelope: Envelope }, one: Placed) {
  const { toe } = moved.poses.motion;
  let found = { gap: Number.POSITIVE_INFINITY, travel: 0, steer: 0 };
  for (let travel = DROOP; travel <= BUMP; travel += 10) {
    for (let j = 0; j < toe.length; j += 2) {
      const gap = gapOf(moved, one, travel, toe[j]!);
      if (gap < found.gap) found = { gap, travel, steer: toe[j]! };
    }
  }
  return found;
}

const aPlace = (kind: SpotKind, at: ClockPosition, plusMinus: number): Place => ({
  name: kind,
  fixedTo: SPOTS[kind].fixedTo,
  is: 'bodywork',
  at,
  plusMinus,
});

/**
 * Random three-dimensional cars, each measured once in the driveway, and in its arch places that a new wheel comes near: the gaps
 * that the driveway's answer states, beside those of the true corner steered to the same toe.
 */
export function gapRows({
  seed,
  cars,
  kind = ORDINARY,
  placePlusMinus = 5,
  level,
  also = [],
  withoutCamber,
  by = 'driveway',
}: GapStudy): GapRow[] {
  const random = randomNumbers(seed);
  const rows: GapRow[] = [];
  const sourceOf = (corner: StrutCorner): CamberSource => {
    if (by === 'points') return { kind: 'corner', corner: withPointErrors(corner, random) };
    if (by === 'curve')
      return { kind: 'curve', curve: lowering({ source: { kind: 'corner', corner }, drop: 0 }).curve };
    const more = readOffMore(corner);
    const known = [...(withoutCamber ? [] : (['camber'] as const)), ...also];
    const exact = { ...six(corner), ...Object.fromEntries(known.map((key) => [key, more[key]!])) };
    return { kind: 'driveway', driveway: withErrors(exact, random, level) };
  };
  for (let n = 0; n < cars; ) {
    const corner = randomCar(random, kind);
    const lock = between(random, [30, 38]);
    const truth = wheelMotion({ source: { kind: 'corner', corner }, lock });
    if (!reaches(truth, lock)) continue;
    const motion = wheelMotion({ source: sourceOf(corner), lock });
    if (by !== 'curve' && !reaches(motion, lock)) continue;
    n++;
    const after = { ...EXAMPLE_FITMENT.after, offset: between(random, [30, 48]) };
    const wheels = compareWheels(EXAMPLE_FITMENT.before, after);
    const before = envelopeOf(wheels.before, 0);
    const envelope = envelopeOf(wheels.after, wheels.plane);
    const [truePoses, poses] = [new Poses(truth), new Poses(motion)];
    const trueMoved = { poses: truePoses, envelope };
    const moved = { poses, envelope };
    for (const spot of SPOT_KINDS) {
      const { at, one: trueOne } = drawPlace(spot, random, before, trueMoved);
      const read: ClockPosition = {
        ...at,
        distance: at.distance + (normal(random) * placePlusMinus) / NORMAL,
        out: at.out + (normal(random) * placePlusMinus) / NORMAL,
      };
      const one = placed(aPlace(spot, read, placePlusMinus), before, poses, 0, true);
      const { rack, toe } = motion;
      const worst = tightest(moved, one);
      rows.push({
        spot,
        steered: 'worst',
        travel: worst.travel,
        truth: tightest(rack.length > 1 ? trueMoved : { ...trueMoved, poses: new Poses(aheadOf(truth)) }, trueOne).gap,
        gap: worst.gap,
        plusMinus: doubtOf(moved, one, worst.travel, worst.steer),
      });
      const spots = [
        ['lock', 0],
        ['half', 5],
        ['ahead', rack.indexOf(0)],
        ['half', 15],
        ['lock', rack.length - 1],
      ] as const;
      for (const [steered, j] of rack.length > 1 ? spots : [['ahead', 0] as const]) {
        for (const travel of TRAVELS) {
          rows.push({
            spot,
            steered,
            travel,
            truth: gapOf(trueMoved, trueOne, travel, toe[j]! + (by === 'points' ? 0 : corner.toe)),
            gap: gapOf(moved, one, travel, toe[j]!),
            plusMinus: doubtOf(moved, one, travel, toe[j]!),
          });
        }
      }
    }
  }
  return rows;
}

/** Whether a motion has its lock, and every pose in the range. */
function reaches({ toe, travel, rack, centre }: WheelMotion, lock: number): boolean {
  const ahead = toe[rack.indexOf(0)]!;
  if (![toe[0]!, toe.at(-1)!].every((angle) => Math.abs(Math.abs(angle - ahead) - lock) < 0.1)) return false;
  return travel.every(
    (t, i) =>
      t < DROOP - 2.5 || t > BUMP + 2.5 || rack.every((_, j) => !Number.isNaN(centre[3 * (i * rack.length + j)]!)),
  );
}

/** A place of that kind whose tightest gap is one that somebody would ask about. */
function drawPlace(
  spot: SpotKind,
  random: () => number,
  before: Envelope,
  trueMoved: { poses: Poses; envelope: Envelope },
): { at: ClockPosition; one: Placed } {
  const { clock, distance, out, from } = SPOTS[spot];
  for (;;) {
    const hour = between(random, clock);
    const at: ClockPosition = {
      clock: hour > 12 ? hour - 12 : hour,
      distance: between(random, distance),
      out: between(random, out),
      from,
    };
    const one = placed(aPlace(spot, at, 0), before, trueMoved.poses, 0, true);
    // The old wheel is clear of it where the car stands.
    if (gapOf({ poses: trueMoved.poses, envelope: before }, one, 0, trueMoved.poses.ahead) < 5) continue;
    const { gap } = tightest(trueMoved, one);
    if (gap > ASKED[0] && gap < ASKED[1]) return { at, one };
  }
}

export interface GapCell {
  count: number;
  /** Share of true gaps within the ±. */
  covered: number;
  /** Share of true gaps smaller than the stated gap less its ±: the side that matters. */
  short: number;
  /** Half of the ± are smaller. */
  medianPlusMinus: number;
  /** Stated less true gap: mean, root mean square and the most, mm. */
  bias: number;
  rms: number;
  most: number;
}

export function cellOf(rows: readonly GapRow[]): GapCell {
  const error = rows.map(({ gap, truth }) => gap - truth);
  const share = (is: (row: GapRow) => boolean) => rows.filter(is).length / rows.length;
  const sorted = rows.map(({ plusMinus }) => plusMinus).sort((a, b) => a - b);
  return {
    count: rows.length,
    covered: share(({ gap, truth, plusMinus }) => Math.abs(gap - truth) <= plusMinus),
    short: share(({ gap, truth, plusMinus }) => truth < gap - plusMinus),
    medianPlusMinus: sorted[sorted.length >> 1]!,
    bias: error.reduce((a, b) => a + b, 0) / rows.length,
    rms: Math.sqrt(error.reduce((a, b) => a + b * b, 0) / rows.length),
    most: error.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY),
  };
}

/** Of 100 true gaps so many are smaller than the stated one less its ±, at most: the promise, and of one kind of steering. */
const MOST_SHORT = 0.03;
const MOST_SHORT_IN_A_CELL = 0.04;

/**
 * What the ± of a gap promises, of rows of all seeds together.
 *
 * @param isWithin false where only the whole is promised: hard points with a stated ±
 */
export function gapClaims(rows: readonly GapRow[], isWithin = true): Claim[] {
  // The errors of a place are drawn once for all poses of it: every place has one `worst`.
  const draws = rows.filter(({ steered }) => steered === 'worst').length;
  const claim = (of: readonly GapRow[], what: string, most: number): Claim[] =>
    of.length > 0 ? [{ what: `${what}, short`, share: cellOf(of).short, draws, most }] : [];
  const poses = isWithin ? rows.filter(({ steered }) => steered !== 'worst') : rows;
  return [
    { what: 'all poses, covered', share: cellOf(poses).covered, draws, least: 0.93 },
    ...claim(poses, 'all poses', isWithin ? MOST_SHORT : MOST_SHORT_IN_A_CELL),
    // The tightest of the whole answer is chosen among many poses.
    ...(isWithin ? STEERED : []).flatMap((at) =>
      claim(
        rows.filter(({ steered }) => steered === at),
        at,
        MOST_SHORT_IN_A_CELL,
      ),
    ),
  ];
}
